import type { NextFillError } from "../../model/rate-error.ts";
import { statedChance } from "../../model/skip-chance.ts";
import { chanceBeyond, type ErrorLaw, lawAtScaleLimit } from "../../statistics/expected-loss.ts";
import type { NormalSample } from "../../statistics/normal-sample.ts";
import { chanceAnyBeyond, type RepeatedLaw } from "../../statistics/repeated-exceedance.ts";
import { boundConfidence, boundOfShare } from "./distribution.ts";
import type { BetweenCalibrations, SkippingOptions } from "./result.ts";

const mostFillsSearched = 50;
const fillsShown = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20] as const;

/**
 * How many fills between calibrations keep the risk under a limit?
 *
 * A drive that stays at one value shares that value's error over all skipped fills; a drive set to the last calibrated
 * fill shares that fill's. Given the true spread the fills are independent, so the chance that none of j is off is the
 * mean of the j-th power of the chance for one, over what is not known: the spread and the shared error.
 *
 * The bound takes the fills as independent, 1 − (1 − p)^j with p the bound for one fill: what they share can only make
 * "any of j" rarer. Set to the last calibrated fill, the error is centred, so p is that of the spread at its upper limit.
 *
 * With so few fills that no small chance can be stated none is skipped, whatever the risk accepted: that a tolerance is
 * kept is more than they tell.
 *
 * Assumes  fills alike and unrelated: no trend, no wander. With wander the fills soon after a calibration are better and
 *          later ones worse than stated here.
 */
export function betweenCalibrations(
  { law, fills: sample, leastChance: least }: NextFillError,
  { tolerance, acceptedRisk, assumed }: SkippingOptions,
): BetweenCalibrations {
  const followsLastFill = assumed.source === "last fill";
  const sharedVariance = followsLastFill ? 1 : 1 / sample.n;
  const one = followsLastFill ? afterLastFill(sample) : law;
  const reckoned = chanceAnyBeyond(repeated(one, sharedVariance), tolerance);
  const risk = (count: number) => statedChance(reckoned(count), least);
  const boundOfOne = followsLastFill
    ? chanceBeyond(lawAtScaleLimit(one, boundConfidence), tolerance).either
    : boundOfShare(sample)(tolerance);
  // −expm1 keeps the digits of small chances.
  const boundOf = (count: number) => -Math.expm1(count * Math.log1p(-boundOfOne));
  const riskOfOne = risk(1);
  const mostOf = (one: (count: number) => number) =>
    least === null && riskOfOne <= acceptedRisk ? mostWithin(one, acceptedRisk) : 0;
  const mostFills = mostOf(risk);
  return {
    tolerance,
    acceptedRisk,
    points: fillsShown.map((count) => {
      const chanceAny = risk(count);
      return {
        fills: count,
        chanceAny,
        upperBound: Math.max(chanceAny, boundOf(count)),
        expectedOff: count * riskOfOne,
      };
    }),
    mostFills,
    mostFillsByBound: Math.min(mostFills, mostOf(boundOf)),
    openEnded: mostFills === mostFillsSearched,
  };
}

/** A fill's error against the fill before it, whichever that is: both differ from the mean, neither on purpose. */
function afterLastFill({ mean, standardDeviation, df }: NormalSample): ErrorLaw {
  return { location: 0, scale: (standardDeviation / (1 + mean)) * Math.sqrt(2), df };
}

/** The law of one fill, scale²= spread²·(1 + shared), taken apart into what is its own and what is shared. */
function repeated({ location, scale, df }: ErrorLaw, sharedVariance: number): RepeatedLaw {
  return { location, spread: scale / Math.sqrt(1 + sharedVariance), df, sharedVariance };
}

/** Largest count with a risk within the limit; the risk grows with the count. */
function mostWithin(risk: (count: number) => number, accepted: number): number {
  let low = 0;
  let high = mostFillsSearched + 1;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (risk(middle) <= accepted) low = middle;
    else high = middle;
  }
  return low;
}
