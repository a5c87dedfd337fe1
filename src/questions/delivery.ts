import type { ChosenScatter } from "../model/catch-scatter.ts";
import { estimateFill, type FillVariance } from "../model/fill-estimate.ts";
import { type Fill, newestFill } from "../model/meters.ts";
import type { MeterModel, ModelOptions } from "../model/model.ts";
import type { Caution } from "../results/caution.ts";
import type { Estimate } from "../results/estimate.ts";
import { type LackOfFit, lackOfFit } from "../statistics/lack-of-fit.ts";
import {
  fitThroughOrigin,
  type VarianceLaw,
  variancePowers,
} from "../statistics/through-origin.ts";
import { deliveryCautions } from "./delivery/cautions.ts";
import { type ConstantMassCheck, constantMassCheck } from "./delivery/constant-mass.ts";
import { deliveryLine, type LinePoint, nextCatchEstimate } from "./delivery/line.ts";
import {
  inputOf,
  pointsOf,
  scatterByLaw,
  scatterOfOthers,
  standardErrorFrom,
  typicalTurns,
  weightingsOf,
} from "./delivery/parts.ts";

/** One catch beside what the fit says of it. */
export interface CatchPoint {
  readonly row: number;
  readonly catch: number;
  readonly turns: number;
  readonly netKg: number;
  readonly fittedKg: number;
  readonly residualKg: number;
  /** residual ÷ fitted. */
  readonly relativeResidual: number;
  readonly leverage: number;
}

/** The delivery by one weighting, from the fill's own catches alone and before the scale's division. */
export interface WeightedDelivery {
  readonly law: VarianceLaw;
  /** kg/turn. */
  readonly delivery: number;
  readonly modelStandardError: number | null;
  readonly robustStandardError: number | null;
}

export interface DeliveryOptions extends ModelOptions {
  /** How catch scatter grows with turns; default "proportional" (ratio of sums). */
  readonly varianceLaw: VarianceLaw;
}

/** Delivery per turn of one fill of one bin. */
export interface Delivery {
  readonly kind: "delivery";
  readonly bin: string;
  readonly product: string;
  readonly fill: number;
  readonly takenAt: string | null;
  readonly options: DeliveryOptions;
  readonly input: {
    readonly catches: number;
    readonly turns: number;
    readonly massKg: number;
    readonly earlierFills: number;
    readonly leftOut: readonly {
      readonly catch: number;
      readonly row: number;
      readonly reason: string;
    }[];
  };
  /** Interval about this fill's delivery. */
  readonly estimate: Estimate<"kg/turn">;
  /** Which standard error the interval uses. */
  readonly standardErrorFrom: "model" | "robust" | "pooled scatter" | "none";
  readonly variance: FillVariance;
  readonly scatter: ChosenScatter;
  /** Catch scatter of a catch of typical turns, relative to its mass; null when unknown. */
  readonly scatterOfTypicalCatch: { readonly turns: number; readonly relative: number } | null;
  /** Net mass expected of one more catch of typical turns; interval about "next catch". */
  readonly nextCatch: { readonly turns: number; readonly estimate: Estimate<"kg"> };
  readonly points: readonly CatchPoint[];
  /** Fitted line with both bands, ready to draw. */
  readonly line: readonly LinePoint[];
  readonly constantMass: ConstantMassCheck | null;
  readonly lackOfFit: LackOfFit | null;
  readonly weightings: readonly WeightedDelivery[];
  readonly cautions: readonly Caution[];
}

/**
 * What does the meter deliver per turn with this fill, and how sure is that?
 *
 * Straight line of net mass on turns through the origin, weights 1/turns: the ratio of sums b = Σm/Σt. The interval
 * is b ± t·√(SE² + reading the scale²). SE rests on the catch scatter of all the meter's fills where there are any
 * (t on its degrees of freedom), else on the fill's own; with own scatter and unequal turns it is the larger of the
 * classical and the HC3 standard error.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  level, tolerance, the scale's division (kg, null: unknown) and the variance law; a law other than
 *                 "proportional" uses the fill's own scatter
 * @param fill     which fill; default the newest
 * @returns        kg/turn and kg; interval about this fill's delivery, and for the next catch of typical turns
 * Null when       one catch stands alone (caution one-catch); catches agree exactly and no division is known
 *                 (caution zero-scatter); the constant-mass check with fewer than 4 catches or turns within a factor 2
 * Assumes         catches of a fill independent; scatter variance about proportional to turns. Coverage for other
 *                 laws: reports/coverage.md
 * Source          Cochran, Sampling Techniques (ratio estimators); GUM (JCGM 100:2008) F.2.2; Long & Ervin 2000 (HC3)
 */
export function delivery(
  meter: MeterModel,
  options: DeliveryOptions,
  fill: Fill = newestFill(meter),
): Delivery {
  const { level, scaleDivisionKg, varianceLaw } = options;
  const scatter = scatterByLaw(fill, meter.scatter, varianceLaw);
  const estimated = estimateFill(fill, scatter, scaleDivisionKg, level, varianceLaw);
  const { estimate, fit, variance } = estimated;
  const catchVariance = scatter.source === "own" ? fit.residualVariance : scatter.variance;
  const turns = typicalTurns(fill);
  const line = {
    delivery: estimate.value,
    standardError: estimate.standardError,
    df: scatter.df,
    catchVariance,
    divisionKg: scaleDivisionKg,
    law: varianceLaw,
    level,
  };
  const checks = {
    constantMass: constantMassCheck(fill, scatterOfOthers(fill, meter.scatter), level),
    lackOfFit: lackOfFit(fitThroughOrigin(fit.points)),
  };
  const earlierFills = meter.fills.filter((other) => other.fill < fill.fill).length;
  return {
    kind: "delivery",
    bin: fill.bin,
    product: fill.product,
    fill: fill.fill,
    takenAt: fill.takenAt,
    options,
    input: inputOf(fill, earlierFills),
    estimate,
    standardErrorFrom: standardErrorFrom(scatter, variance),
    variance,
    scatter,
    scatterOfTypicalCatch:
      catchVariance === null
        ? null
        : {
            turns,
            relative:
              Math.sqrt(catchVariance * turns ** variancePowers[varianceLaw]) /
              (estimate.value * turns),
          },
    nextCatch: { turns, estimate: nextCatchEstimate(turns, line) },
    points: pointsOf(fill, estimated),
    line: deliveryLine(Math.max(...fill.catches.map((row) => row.turns)), line),
    ...checks,
    weightings: weightingsOf(fill),
    cautions: deliveryCautions({
      ...checks,
      fill,
      earlierFills,
      scatter,
      pooled: meter.scatter,
      estimated,
      divisionKg: scaleDivisionKg,
      level,
    }),
  };
}
