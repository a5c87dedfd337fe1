import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import type { About, Estimate, Interval, Unit } from "../results/estimate.ts";

/**
 * An estimate with its two-sided t interval, value ± t·standardError.
 *
 * @param standardError  in the unit of value; null or zero (to rounding) when unknown: then no interval is given,
 *                       because a zero width would pass for certainty
 */
export function tEstimate<U extends Unit>(
  value: number,
  unit: U,
  standardError: number | null,
  df: number,
  level: number,
  about: About,
): Estimate<U> {
  if (standardError === null || isDust(standardError, value)) return unknownEstimate(value, unit);
  const halfWidth = studentTQuantile((1 + level) / 2, df) * standardError;
  return {
    value,
    unit,
    standardError,
    df,
    interval: intervalAround(value, halfWidth, level, about),
  };
}

/** What no meter gives less than nothing of: an interval about it ends at zero, however wide it is. */
const neverNegative: ReadonlySet<About> = new Set([
  "this fill's delivery",
  "mean over fills",
  "next fill",
  "next catch",
  "rate",
]);

/** value ± half; of a delivery, a mass or a rate the lower end is 0 at the least. */
export function intervalAround(value: number, half: number, level: number, about: About): Interval {
  const lower = value - half;
  return {
    lower: neverNegative.has(about) ? Math.max(0, lower) : lower,
    upper: value + half,
    level,
    about,
  };
}

/** A value whose error is not known. */
export function unknownEstimate<U extends Unit>(value: number, unit: U): Estimate<U> {
  return { value, unit, standardError: null, df: null, interval: null };
}

/** Upper end over the value, − 1; null without an interval. */
export function relativeHalfWidth({ value, interval }: Estimate): number | null {
  return interval?.upper == null ? null : interval.upper / value - 1;
}
