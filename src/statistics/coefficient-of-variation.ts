import { NumericalError } from "../errors/errors.ts";
import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import { requirePositive, requireProbability, requireWhole } from "../numeric/domain.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import { mean, sampleStandardDeviation } from "./summary.ts";

export interface CoefficientOfVariation {
  /** Standard deviation ÷ mean. */
  readonly value: number;
  readonly n: number;
  /** n − 1. */
  readonly df: number;
  /** Null, as `upper`, when the values agree exactly. */
  readonly lower: number | null;
  /** Null when no coefficient of variation is too large for the data. */
  readonly upper: number | null;
  readonly level: number;
}

/**
 * How much do values differ, relative to their mean, and how well is that known? Sample standard deviation ÷ mean with
 * Vangel's interval.
 *
 * @param values at least 2 finite numbers with a mean above 0
 * @throws NumericalError when there are too few, one is not finite, or the mean is not above 0
 */
export function coefficientOfVariation(
  values: readonly number[],
  level: number,
): CoefficientOfVariation {
  requireProbability("coefficientOfVariation", "level", level);
  const center = mean(values);
  if (!(center > 0)) {
    throw new NumericalError(
      `coefficientOfVariation: the mean is ${center}; it must be above zero.`,
    );
  }
  const ratio = sampleStandardDeviation(values) / center;
  const n = values.length;
  if (isDust(ratio, 1)) return { value: 0, n, df: n - 1, lower: null, upper: null, level };
  return { value: ratio, n, df: n - 1, level, ...vangelInterval(ratio, n, level) };
}

/**
 * Interval for the coefficient of variation of a normal population: K ÷ √(((u + 2)/n − 1)·K² + u/(n − 1)) with u the
 * upper and the lower χ² quantile on n − 1 degrees of freedom (modified McKay).
 *
 * @param ratio sample standard deviation ÷ mean, above 0; best below 1/3
 * @param n     values behind it, at least 2
 * @returns     upper null where the bracket is not above 0: then any coefficient of variation could have given the data
 * @throws      NumericalError when an argument is out of range
 * Source       Vangel 1996, The American Statistician 50, 21–26; McKay 1932, Journal of the Royal Statistical Society 95
 */
export function vangelInterval(
  ratio: number,
  n: number,
  level: number,
): { readonly lower: number; readonly upper: number | null } {
  requirePositive("vangelInterval", "ratio", ratio);
  requireWhole("vangelInterval", "n", n, 2);
  requireProbability("vangelInterval", "level", level);
  const bracket = (quantile: number) => ((quantile + 2) / n - 1) * ratio ** 2 + quantile / (n - 1);
  const tail = (1 - level) / 2;
  // Above the median, which is above n − 2, the bracket is above 0 whatever the ratio.
  const ofLower = bracket(chiSquaredQuantile(1 - tail, n - 1));
  const ofUpper = bracket(chiSquaredQuantile(tail, n - 1));
  return {
    lower: ratio / Math.sqrt(ofLower),
    upper: ofUpper > 0 ? ratio / Math.sqrt(ofUpper) : null,
  };
}
