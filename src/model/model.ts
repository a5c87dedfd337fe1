import { median } from "simple-statistics";
import type { Catch } from "../data/types.ts";
import { OptionError } from "../errors/errors.ts";
import { defaults } from "../results/defaults.ts";
import { refuseUnknownOptions, requireModelOptions } from "../results/options.ts";
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
 *
 * @param given  level, tolerance and the scale's division; what is missing is taken from `defaults`, the division as unknown
 * @throws       OptionError for a level or tolerance outside (0, 1), a division not above zero, or, where a default would
 *               hide it, an unknown name
 */
export function fitModel(catches: readonly Catch[], given: Partial<ModelOptions> = {}): Model {
  const options = resolveModelOptions(given);
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

/** The options of a result, which hold more than these three, are taken as they are; a typo would leave one out. */
function resolveModelOptions(given: Partial<ModelOptions>): ModelOptions {
  const resolved = { level: defaults.level, tolerance: defaults.tolerance, scaleDivisionKg: null };
  const names = Object.keys(resolved);
  if (!names.every((name) => name in given)) refuseUnknownOptions(given, names);
  const { level, tolerance, scaleDivisionKg }: ModelOptions = { ...resolved, ...given };
  requireModelOptions({ level, tolerance, scaleDivisionKg });
  return { level, tolerance, scaleDivisionKg };
}

/** How a curve is asked for. */
export interface CurveOptions {
  /** Default: the typical turns of the newest fill's catches. */
  readonly turnsPerCatch?: number;
  /** Default 8. */
  readonly mostCatches?: number;
  /** Default false; see `CurveInput`. Below six fills of the meter's own it is refused. */
  readonly withHistory?: boolean;
}

const fewestFillsForHistory = 6;

/**
 * The next-catch curve of a meter: how well the next fill's delivery is known after 0, 1, 2, … catches of it.
 *
 * @throws OptionError when `withHistory` is asked of fewer than six fills
 */
export function curveOf(
  meter: MeterModel,
  options: ModelOptions,
  asked: CurveOptions = {},
): NextCatchCurve {
  requireModelOptions(options);
  const { nextFill, spread, fills } = meter.across;
  const withHistory = asked.withHistory ?? false;
  if (withHistory && fills < fewestFillsForHistory)
    throw new OptionError("withHistory", true, `false below ${fewestFillsForHistory} fills`);
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
    turnsPerCatch: asked.turnsPerCatch ?? meter.turnsPerCatch,
    level: options.level,
    tolerance: options.tolerance,
    mostCatches: asked.mostCatches ?? catchesOnCurve,
    withHistory,
  });
}
