import { median } from "simple-statistics";
import type { Catch } from "../data/types.ts";
import type { VarianceLaw } from "../statistics/through-origin.ts";
import { type AcrossFills, acrossFills, relativeSpreadOf } from "./across-fills.ts";
import { type PooledScatter, pooledScatter } from "./catch-scatter.ts";
import { estimateFill, type FillEstimate } from "./fill-estimate.ts";
import { type Fill, type Meter, metersOf, newestFill } from "./meters.ts";

/** What the model needs to be told beyond the catches; everything resolved, nothing optional. */
export interface ModelOptions {
  /** Confidence level of every interval, a fraction. */
  readonly level: number;
  /** Rate error that can be accepted, a fraction. */
  readonly tolerance: number;
  /** The scale's division, kg; null when unknown. */
  readonly scaleDivisionKg: number | null;
  /** How catch scatter grows with turns; default "proportional", the ratio of sums. */
  readonly varianceLaw?: VarianceLaw;
}

/** One meter with what its fills say together. Every answer of the library starts from this. */
export interface MeterModel extends Meter {
  readonly scatter: PooledScatter;
  readonly across: AcrossFills;
  /** Typical turns of a catch of the newest fill. */
  readonly turnsPerCatch: number;
  /** Heaviest catch of the log, of any meter, kg. */
  readonly heaviestCatchKg: number;
}

export interface Model {
  readonly kind: "model";
  readonly options: ModelOptions;
  readonly meters: readonly MeterModel[];
}

/**
 * Builds the one model from catches: bin × product, its fills reduced to totals, pooled catch scatter, and the
 * analysis across fills. A meter with a single fill borrows its fill-to-fill spread from the other meters, on the
 * relative scale, and says so.
 */
export function fitModel(catches: readonly Catch[], options: ModelOptions): Model {
  const meters = metersOf(catches);
  const heaviestCatchKg = heaviestOf(catches);
  return {
    kind: "model",
    options,
    meters: meters.map((meter) => {
      const scatter = pooledScatter(meter.fills);
      const borrowed = relativeSpreadOf(meters.filter((other) => other !== meter));
      return {
        ...meter,
        scatter,
        across: acrossFills(meter.fills, scatter, options.level, borrowed),
        turnsPerCatch: median(newestFill(meter).catches.map(({ turns }) => turns)),
        heaviestCatchKg,
      };
    }),
  };
}

function heaviestOf(catches: readonly Catch[]): number {
  return catches.reduce((heaviest, { netKg }) => Math.max(heaviest, netKg), 0);
}

/** The delivery of one fill of a meter, as every answer has it. */
export function estimateOf(
  meter: Pick<MeterModel, "scatter">,
  fill: Fill,
  options: ModelOptions,
): FillEstimate {
  return estimateFill(fill, meter.scatter, options);
}
