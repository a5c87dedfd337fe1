import { median } from "simple-statistics";
import type { Catch } from "../data/types.ts";
import { defaults } from "../results/defaults.ts";
import { refuseUnknownOptions, requireModelOptions } from "../results/options.ts";
import type { VarianceLaw } from "../statistics/through-origin.ts";
import { type AcrossFills, acrossFills, relativeSpreadOf } from "./across-fills.ts";
import { type PooledScatter, pooledScatter } from "./catch-scatter.ts";
import { estimateFill, type FillEstimate } from "./fill-estimate.ts";
import { type HistoryChoices, historyOf, type MeterHistory } from "./history.ts";
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
  /** Whether it has moved, and which of its fills are of one level. */
  readonly history: MeterHistory;
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
 * Builds the one model from catches: bin × product, its fills reduced to totals, pooled catch scatter, what has moved
 * since, and the analysis across fills of one level. A meter without two fills of one level borrows its fill-to-fill
 * spread from the other meters, on the relative scale, and says so.
 *
 * @param given    level, tolerance and the scale's division; what is missing is taken from `defaults`, the division as
 *                 unknown
 * @param history  how to read the order of fills; default: asked after every fill, no meter opened in between
 * @throws         OptionError for a level or tolerance outside (0, 1), a division not above zero, or, where a default
 *                 would hide it, an unknown name
 */
export function fitModel(
  catches: readonly Catch[],
  given: Partial<ModelOptions> = {},
  history: HistoryChoices = {},
): Model {
  const options = resolveModelOptions(given);
  const heaviestCatchKg = heaviestOf(catches);
  const meters = metersOf(catches).map((meter) => ({
    ...meter,
    history: historyOf(meter, options.level, history),
  }));
  return {
    kind: "model",
    options,
    meters: meters.map((meter) => {
      const scatter = pooledScatter(meter.fills);
      const borrowed = relativeSpreadOf(meters.filter((other) => other !== meter));
      const stretches = meter.history.stretches.map(({ fills }) => fills);
      return {
        ...meter,
        scatter,
        across: acrossFills(stretches, scatter, options.level, borrowed),
        turnsPerCatch: median(newestFill(meter).catches.map(({ turns }) => turns)),
        heaviestCatchKg,
      };
    }),
  };
}

/** The options of a result, which may hold more than these, are taken as they are; a typo would leave one out. */
function resolveModelOptions(given: Partial<ModelOptions>): ModelOptions {
  const needed = { level: defaults.level, tolerance: defaults.tolerance, scaleDivisionKg: null };
  const names = Object.keys(needed);
  if (!names.every((name) => name in given)) refuseUnknownOptions(given, [...names, "varianceLaw"]);
  const { level, tolerance, scaleDivisionKg, varianceLaw }: ModelOptions = { ...needed, ...given };
  const options = { level, tolerance, scaleDivisionKg };
  const resolved = varianceLaw === undefined ? options : { ...options, varianceLaw };
  requireModelOptions(resolved);
  return resolved;
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
