import {
  mean as simpleMean,
  median as simpleMedian,
  sampleStandardDeviation as simpleStandardDeviation,
} from "simple-statistics";
import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { finiteResult, requireAllFinite } from "../numeric/domain.ts";
import { accurateSum } from "../numeric/summation.ts";

/**
 * Arithmetic mean.
 *
 * @param values at least 1 finite number
 * @throws NumericalError when there are none or one is not finite
 */
export function mean(values: readonly number[]): number {
  check("mean", values, 1);
  // It changes nothing of the list that its types ask for.
  return finiteResult("mean", simpleMean(values as number[]));
}

/**
 * Mean of values of unequal weight, Σwx/Σw, in two passes: the second removes what rounding left of the deviations.
 *
 * @param values at least 1 finite number
 * @param weights one a value, of zero or more and not all zero
 * @throws NumericalError when there are none, or a sum is not finite
 */
export function weightedMean(values: readonly number[], weights: readonly number[]): number {
  const total = accurateSum(weights);
  const about = (origin: number) =>
    accurateSum(values.map((value, i) => at(weights, i) * (value - origin))) / total;
  const first = about(0);
  return finiteResult("weightedMean", first + about(first));
}

/** Sum of squares about the mean, and its degrees of freedom. Throws NumericalError when a value is not finite. */
export function squaresWithin(values: readonly number[]): {
  readonly center: number;
  readonly squares: number;
  readonly df: number;
} {
  const center = mean(values);
  let squares = 0;
  for (const value of values) squares += (value - center) ** 2;
  return { center, squares, df: values.length - 1 };
}

/**
 * Sample standard deviation, the square root of Σ(x − mean)²/(n − 1).
 *
 * @param values at least 2 finite numbers; the scatter of a single value cannot be known and is refused, not 0
 * @throws NumericalError when there are fewer than 2 or one is not finite
 * @example sampleStandardDeviation([2, 4, 4, 4, 5, 5, 7, 9]) // -> 2.1381
 */
export function sampleStandardDeviation(values: readonly number[]): number {
  check("sampleStandardDeviation", values, 2);
  return finiteResult("sampleStandardDeviation", simpleStandardDeviation([...values]));
}

/**
 * Middle value; the mean of the two middle values when their number is even.
 *
 * @param values at least 1 finite number
 * @throws NumericalError when there are none or one is not finite
 */
export function median(values: readonly number[]): number {
  check("median", values, 1);
  return finiteResult("median", simpleMedian([...values]));
}

function check(routine: string, values: readonly number[], least: number): void {
  if (values.length < least) {
    throw new NumericalError(
      `${routine}: ${values.length} values; at least ${least} ${least === 1 ? "is" : "are"} needed.`,
    );
  }
  requireAllFinite(routine, "value", values);
}
