import { median } from "simple-statistics";
import type { Catch } from "../data/types.ts";
import { OptionError } from "../errors/errors.ts";
import type { VarianceLaw } from "../statistics/through-origin.ts";
import { type AcrossFills, acrossFills, relativeSpreadOf } from "./across-fills.ts";
import { type PooledScatter, scatterAt } from "./catch-scatter.ts";
import { constantMassOverBins, type StandingTest } from "./constant-mass.ts";
import { doubtedEstimate, type FillEstimate } from "./doubted-estimate.ts";
import { type Fill, type Meter, metersOf, newestFill } from "./meters.ts";
import { type NextCatchCurve, nextCatchCurve } from "./next-catch.ts";
import { lentScatter } from "./screening/lending.ts";
import { type MeterScreening, screenLog } from "./screening/screen-log.ts";
import { type WithAllCatches, withAllCatches } from "./with-all-catches.ts";

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
  /** Of the catches that may speak for the scatter of other fills. */
  readonly scatter: PooledScatter;
  readonly across: AcrossFills;
  /** Which catches stand out, and which of them are set aside: those are in no figure but `withAll`. */
  readonly screening: MeterScreening;
  /** What the fills would say with the catches that are set aside; null where none is. */
  readonly withAll: WithAllCatches | null;
  /** The newest fill's test of a constant mass among those of all bins; null where it cannot be told. */
  readonly constantMass: StandingTest | null;
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
 * Builds the one model from catches: bin × product, its fills screened for bad catches and reduced to totals, pooled
 * catch scatter, and the analysis across fills. A meter with a single fill borrows its fill-to-fill spread from the other meters, on the
 * relative scale, and says so.
 */
export function fitModel(catches: readonly Catch[], options: ModelOptions): Model {
  const screened = screenLog(metersOf(catches), options.scaleDivisionKg).map((found) => ({
    ...found,
    scatter: lentScatter(found.meter.fills),
  }));
  const meters = screened.map(({ meter }) => meter);
  const constantMass = constantMassOverBins(screened);
  return {
    kind: "model",
    options,
    meters: screened.map(({ meter, screening, scatter }, i) => {
      const borrowed = relativeSpreadOf(meters.filter((other) => other !== meter));
      return {
        ...meter,
        scatter,
        across: acrossFills(meter.fills, scatter, options.level, borrowed),
        screening,
        withAll: withAllCatches(screening, options.level, borrowed),
        constantMass: constantMass[i] ?? null,
        turnsPerCatch: median(newestFill(meter).catches.map(({ turns }) => turns)),
      };
    }),
  };
}

/** The delivery of one fill of a meter, as every answer has it. */
export function estimateOf(
  { scatter, screening }: Pick<MeterModel, "scatter" | "screening">,
  fill: Fill,
  options: ModelOptions,
): FillEstimate {
  const finding = screening.findings.find((one) => one.fill.fill === fill.fill) ?? null;
  return doubtedEstimate(fill, finding, scatter, options);
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
    scatter: scatterAt(nextFill.value, meter.scatter),
    divisionKg: options.scaleDivisionKg,
    turnsPerCatch: asked.turnsPerCatch ?? meter.turnsPerCatch,
    level: options.level,
    tolerance: options.tolerance,
    mostCatches: asked.mostCatches ?? catchesOnCurve,
    withHistory,
  });
}
