import { max } from "simple-statistics";
import { fanLevels } from "../model/fan.ts";
import { type Fill, newestFill } from "../model/meters.ts";
import { estimateOf, type MeterModel } from "../model/model.ts";
import { wholePower } from "../numeric/powers.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import { variancePowers } from "../statistics/through-origin.ts";
import { gathered } from "./delivery/in-brief.ts";
import { deliveryLine, intervalPerTurn, nextCatchEstimate } from "./delivery/line.ts";
import { pointsOf, standardErrorFrom, weightingsOf } from "./delivery/parts.ts";
import type { Delivery, DeliveryOptions } from "./delivery/result.ts";

export type { CatchPoint, Delivery, DeliveryOptions, WeightedDelivery } from "./delivery/result.ts";

/**
 * What does the meter deliver per turn with this fill, and how sure is that?
 *
 * Straight line of net mass on turns through the origin, weights 1/turns: the ratio of sums b = Σm/Σt. The interval
 * is b ± H, H² = t²·SE² + z²·(reading the scale)². SE rests on the fill's own scatter together with what the meter's other
 * fills and the other meters lend (t on its degrees of freedom); where nobody lends and turns are unequal it is the larger of
 * the classical and the HC3 standard error. Beside it stands the interval with nobody but this meter speaking.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  level, tolerance, the scale's division (kg, null: unknown) and the variance law; a law other than
 *                 "proportional" uses the fill's own scatter
 * @param fill     which fill; default the newest
 * @returns        kg/turn and kg; interval about this fill's delivery, and for the next catch of typical turns
 * Null when       one catch stands alone (caution one-catch); catches agree exactly and no division is known
 *                 (caution zero-scatter-unscaled); the constant-mass check with fewer than 4 catches or turns within a factor 2
 * Assumes         catches of a fill independent; scatter variance about proportional to turns. Coverage for other
 *                 laws: reports/coverage.md
 * Source          Cochran, Sampling Techniques (ratio estimators); GUM (JCGM 100:2008) F.2.2; Long & Ervin 2000 (HC3)
 */
export function delivery(
  meter: MeterModel,
  options: DeliveryOptions,
  fill: Fill = newestFill(meter),
): Delivery {
  const { brief, estimated, checks } = gathered(meter, options, fill);
  const { estimate, fit, variance, scatter } = estimated;
  const { level, scaleDivisionKg, varianceLaw = "proportional" } = options;
  const catchVariance = scatter.source === "own" ? fit.residualVariance : scatter.variance;
  const { turns } = brief.nextCatch;
  const line = {
    delivery: estimate,
    scatter,
    catchVariance,
    divisionKg: scaleDivisionKg,
    law: varianceLaw,
    level,
  };
  return {
    kind: "delivery",
    bin: fill.bin,
    product: fill.product,
    fill: fill.fill,
    takenAt: fill.takenAt,
    options,
    input: brief.input,
    estimate,
    halfWidth: estimated.halfWidth,
    byItself: estimated.byItself,
    ifTypical: estimated.ifTypical,
    hull: estimated.hull,
    disagree: estimated.disagree,
    standardErrorFrom: standardErrorFrom(scatter, variance),
    variance,
    scatter,
    scatterOfTypicalCatch:
      catchVariance === null
        ? null
        : {
            turns,
            relative: relativeScatter(
              catchVariance * wholePower(turns, variancePowers[varianceLaw]),
              estimate.value * turns,
            ),
          },
    nextCatch: {
      turns,
      estimate: nextCatchEstimate(turns, line),
      fan: fanLevels.flatMap((one) => {
        const ofFill = estimateOf(meter, fill, { ...options, level: one }).estimate;
        const { interval } = nextCatchEstimate(turns, { ...line, delivery: ofFill, level: one });
        return interval === null ? [] : [intervalPerTurn(interval, turns)];
      }),
    },
    points: pointsOf(fill, estimated),
    line: deliveryLine(max(fill.catches.map((row) => row.turns)), line),
    ...checks,
    weightings: weightingsOf(fit),
    cautions: brief.cautions,
  };
}

/** Rounding leaves a little of no scatter. */
function relativeScatter(variance: number, massKg: number): number {
  const deviation = Math.sqrt(variance);
  return isDust(deviation, massKg) ? 0 : deviation / massKg;
}
