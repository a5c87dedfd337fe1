import type { NextFillError } from "../../model/rate-error.ts";
import type { ErrorLaw } from "../../statistics/expected-loss.ts";
import { chanceAnyBeyond, type RepeatedLaw } from "../../statistics/repeated-exceedance.ts";
import { boundOfShare, chanceOfError } from "./distribution.ts";
import type { BetweenCalibrations, SkippingOptions } from "./result.ts";

const mostFillsSearched = 50;
const fillsShown = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20] as const;

/**
 * How many fills between calibrations keep the risk under a limit?
 *
 * The drive stays at one value, whichever that is, so all skipped fills share its error against their mean, which k fills
 * tell with a variance of 1/k. Given the true mean and spread the fills are independent, so the chance that none of j is
 * off is the mean of the j-th power of the chance for one, over what is not known. One fill is the next fill: the last
 * fill's value is asked about as the value it is, not as that of any fill, so that one skipped fill has one chance.
 *
 * The bound takes the fills as independent, 1 − (1 − p)^j with p the bound for one fill: what they share can only make
 * "any of j" rarer.
 *
 * With so few fills that no small chance can be stated none is skipped, whatever the risk accepted: that a tolerance is
 * kept is more than they tell.
 *
 * Assumes  fills alike and unrelated: no trend, no wander. With wander the fills soon after a calibration are better and
 *          later ones worse than stated here.
 */
export function betweenCalibrations(
  error: NextFillError,
  { tolerance, acceptedRisk }: SkippingOptions,
): BetweenCalibrations {
  const { law, fills, leastChance: least } = error;
  const reckoned = chanceAnyBeyond(repeated(law, 1 / fills.n), tolerance);
  const next = chanceOfError(error, tolerance);
  const risk = (count: number) =>
    count === 1 ? next.either : Math.max(next.either, reckoned(count));
  const boundOfOne = boundOfShare(fills)(tolerance);
  // −expm1 keeps the digits of small chances.
  const boundOf = (count: number) => -Math.expm1(count * Math.log1p(-boundOfOne));
  const mostOf = (one: (count: number) => number) =>
    least === null && next.either <= acceptedRisk ? mostWithin(one, acceptedRisk) : 0;
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
        expectedOff: count * next.either,
      };
    }),
    mostFills,
    mostFillsByBound: Math.min(mostFills, mostOf(boundOf)),
    openEnded: mostFills === mostFillsSearched,
  };
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
