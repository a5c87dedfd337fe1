import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import type { About, Estimate, Unit } from "../results/estimate.ts";

/** Values that agree exactly leave rounding dust of this relative size; below it a standard error says nothing. */
const relativeDust = 1e-12;

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
  if (standardError === null || standardError <= relativeDust * Math.abs(value))
    return unknownEstimate(value, unit);
  const halfWidth = studentTQuantile((1 + level) / 2, df) * standardError;
  return {
    value,
    unit,
    standardError,
    df,
    interval: { lower: value - halfWidth, upper: value + halfWidth, level, about },
  };
}

/** A value whose error is not known. */
export function unknownEstimate<U extends Unit>(value: number, unit: U): Estimate<U> {
  return { value, unit, standardError: null, df: null, interval: null };
}
