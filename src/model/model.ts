import { median } from "simple-statistics";
import type { Catch } from "../data/types.ts";
import { type AcrossFills, acrossFills, relativeSpreadOf } from "./across-fills.ts";
import { type PooledScatter, pooledScatter } from "./catch-scatter.ts";
import { type Meter, metersOf, newestFill } from "./meters.ts";
import { type NextCatchCurve, nextCatchCurve } from "./next-catch.ts";

/** What the model needs to be told beyond the catches; everything resolved, nothing optional. */
export interface ModelOptions {
  /** Confidence level of every interval, a fraction. */
  readonly level: number;
  /** Rate error that can be accepted, a fraction. */
  readonly tolerance: number;
  /** The scale's division, kg; null when unknown. */
  readonly scaleDivisionKg: number | null;
}

/** One meter with what its fills say together. Every answer of the library starts from this. */
export interface MeterModel extends Meter {
  readonly scatter: PooledScatter;
  readonly across: AcrossFills;
  /** Typical turns of a catch of the newest fill. */
  readonly turnsPerCatch: number;
}

export interface Model {
  readonly kind: "model";
  readonly options: ModelOptions;
  readonly meters: readonly MeterModel[];
}

/** Catches beyond this many are never worth a chart's width. */
const catchesOnCurve = 8;

/**
 * Builds the one model from catches: bin × product, its fills reduced to totals, pooled catch scatter, and the
 * analysis across fills. A meter with a single fill borrows its fill-to-fill spread from the other meters, on the
 * relative scale, and says so.
 */
export function fitModel(catches: readonly Catch[], options: ModelOptions): Model {
  const meters = metersOf(catches);
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
      };
    }),
  };
}

/** The next-catch curve of a meter: how well the next fill's delivery is known after 0, 1, 2, … catches of it. */
export function curveOf(
  meter: MeterModel,
  options: ModelOptions,
  turnsPerCatch: number = meter.turnsPerCatch,
  mostCatches: number = catchesOnCurve,
): NextCatchCurve {
  const { nextFill, spread } = meter.across;
  return nextCatchCurve({
    delivery: nextFill.value,
    history:
      nextFill.standardError === null || nextFill.df === null
        ? null
        : {
            standardError: nextFill.standardError,
            df: nextFill.df,
            borrowed: spread.source === "borrowed",
          },
    scatter: meter.scatter,
    divisionKg: options.scaleDivisionKg,
    turnsPerCatch,
    level: options.level,
    tolerance: options.tolerance,
    mostCatches,
  });
}
