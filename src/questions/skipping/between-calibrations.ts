import type { AcrossFills } from "../../model/across-fills.ts";
import type { ErrorLaw } from "../../statistics/expected-loss.ts";
import { chanceAnyBeyond, type RepeatedLaw } from "../../statistics/repeated-exceedance.ts";
import { cautiousLaw } from "./distribution.ts";
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
 * Assumes  fills alike and unrelated: no trend, no wander. With wander the fills soon after a calibration are better and
 *          later ones worse than stated here.
 */
export function betweenCalibrations(
  { fills, spread, nextFill }: AcrossFills,
  law: ErrorLaw,
  { tolerance, acceptedRisk, assumed }: SkippingOptions,
): BetweenCalibrations | null {
  if (spread.standardDeviation === null) return null;
  const followsLastFill = assumed.source === "previous fill";
  const sharedVariance = followsLastFill ? 1 : 1 / fills;
  const location = followsLastFill ? 0 : law.location;
  const scale = followsLastFill
    ? (spread.standardDeviation.value / nextFill.value) * Math.sqrt(2)
    : law.scale;
  const risk = chanceAnyBeyond(repeated({ ...law, location, scale }, sharedVariance), tolerance);
  const wide = chanceAnyBeyond(
    repeated(cautiousLaw({ ...law, location, scale }), sharedVariance),
    tolerance,
  );
  const bound = (count: number) => Math.max(risk(count), wide(count));
  const mostFills = mostWithin(risk, acceptedRisk);
  const one = risk(1);
  return {
    tolerance,
    acceptedRisk,
    points: fillsShown.map((count) => ({
      fills: count,
      chanceAny: risk(count),
      upperBound: bound(count),
      expectedOff: count * one,
    })),
    mostFills,
    mostFillsByBound: mostWithin(bound, acceptedRisk),
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
