import { median } from "simple-statistics";
import type { Catch } from "../data/types.ts";
import { OptionError } from "../errors/errors.ts";
import type { VarianceLaw } from "../statistics/through-origin.ts";
import { type AcrossFills, acrossFills, relativeSpreadOf } from "./across-fills.ts";
import { type PooledScatter, pooledScatter } from "./catch-scatter.ts";
import { estimateFill, type FillEstimate } from "./fill-estimate.ts";
import { type HistoryChoices, historyOf, type MeterHistory } from "./history.ts";
import { type Fill, type Meter, metersOf, newestFill } from "./meters.ts";
import { type NextCatchCurve, nextCatchCurve } from "./next-catch.ts";

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
}

export interface Model {
  readonly kind: "model";
  readonly options: ModelOptions;
  readonly meters: readonly MeterModel[];
}

/** Catches beyond this many are never worth a chart's width. */
const catchesOnCurve = 8;

/**
 * Builds the one model from catches: bin × product, its fills reduced to totals, pooled catch scatter, what has moved
 * since, and the analysis across fills of one level. A meter without two fills of one level borrows its fill-to-fill
 * spread from the other meters, on the relative scale, and says so.
 *
 * @param history  how to read the order of fills; default: asked after every fill, no meter opened in between
 */
export function fitModel(
  catches: readonly Catch[],
  options: ModelOptions,
  history: HistoryChoices = {},
): Model {
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
      };
    }),
  };
}

/** The delivery of one fill of a meter, as every answer has it. */
export function estimateOf(
  meter: Pick<MeterModel, "scatter">,
  fill: Fill,
  options: ModelOptions,
): FillEstimate {
  return estimateFill(fill, meter.scatter, options);
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
