import {
  mean as simpleMean,
  quantile as simpleQuantile,
  sampleStandardDeviation as simpleStandardDeviation,
} from "simple-statistics";
import { NumericalError } from "../errors/errors.ts";
import { finiteResult, requireFinite } from "../numeric/domain.ts";

/**
 * Arithmetic mean.
 *
 * @param values at least 1 finite number
 * @throws NumericalError when there are none or one is not finite
 */
export function mean(values: readonly number[]): number {
  check("mean", values, 1);
  return finiteResult("mean", simpleMean([...values]));
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
  return sampleQuantile("median", values, 0.5);
}

/**
 * Sample quantile with linear interpolation between order statistics at position (n − 1)·p + 1 (type 7 of Hyndman and
 * Fan 1996, The American Statistician 50, 361–365; the default of R).
 *
 * @param values at least 1 finite number
 * @param p fraction below, 0 to 1, both ends allowed
 * @throws NumericalError when there are no values, one is not finite, or p is outside 0 … 1
 * @example quantile([15, 20, 35, 40, 50], 0.4) // -> 29
 */
export function quantile(values: readonly number[], p: number): number {
  return sampleQuantile("quantile", values, p);
}

function sampleQuantile(routine: string, values: readonly number[], p: number): number {
  check(routine, values, 1);
  if (!(p >= 0 && p <= 1)) {
    throw new NumericalError(`${routine}: p is ${String(p)}; it must be from 0 to 1.`);
  }
  return finiteResult(routine, simpleQuantile([...values], p));
}

function check(routine: string, values: readonly number[], least: number): void {
  if (values.length < least) {
    throw new NumericalError(
      `${routine}: ${values.length} values; at least ${least} ${least === 1 ? "is" : "are"} needed.`,
    );
  }
  values.forEach((value, i) => {
    requireFinite(routine, `value ${i + 1}`, value);
  });
}
