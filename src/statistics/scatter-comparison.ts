import { NumericalError } from "../errors/errors.ts";
import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import { requirePositive, requireProbability } from "../numeric/domain.ts";
import { logMinusDigamma } from "../numeric/special-functions.ts";
import { pooledVariance, sampleOf, varianceOfMean } from "./sample.ts";
import { type DifferenceOfMeans, differenceOfMeans, welchDf } from "./welch.ts";

/** A standard deviation with its degrees of freedom; one of several of the same kind, as of one fill. */
export interface Scatter {
  readonly standardDeviation: number;
  readonly df: number;
}

/**
 * Natural logarithm of a variance estimate, corrected so that its mean is that of the true variance whatever the
 * degrees of freedom: ln s² + ln(df/2) − ψ(df/2), ψ the digamma function.
 *
 * @param scatter standard deviation above 0, df above 0
 * @throws NumericalError when one of them is not
 * Source Bartlett and Kendall 1946, Supplement to the Journal of the Royal Statistical Society 8, 128–138
 */
export function logVariance({ standardDeviation, df }: Scatter): number {
  requirePositive("logVariance", "standardDeviation", standardDeviation);
  requirePositive("logVariance", "df", df);
  return 2 * Math.log(standardDeviation) + logMinusDigamma(df / 2);
}

/** How many times one standard deviation is the other, with interval and test. */
export interface ScatterRatio {
  readonly ratio: number;
  readonly lower: number;
  readonly upper: number;
  readonly statistic: number;
  readonly df: number;
  /** Two-sided, of equal scatter. */
  readonly pValue: number;
  /** "welch": each group of ln s² has a spread of its own; "pooled": one spread, where all df are equal. */
  readonly method: "welch" | "pooled";
}

/**
 * Do two kinds of samples scatter alike? t test on the corrected ln s² of each sample, which holds its level where
 * tests on single deviations break down: with few values a sample, and with values that are not quite normal.
 * Welch's t; the pooled t where every sample has the same degrees of freedom, when equal scatter means equal spread of
 * ln s². Ratio of standard deviations = exp(difference/2).
 *
 * @param first at least 2 standard deviations above 0
 * @param second likewise
 * @param level of the interval, 0 < level < 1, default 0.95
 * @returns null when the logarithms of both kinds agree exactly: their spread is then unknown
 * @throws NumericalError when there are too few or a value is out of range
 * Source Bartlett and Kendall 1946, Supplement to the Journal of the Royal Statistical Society 8, 128–138
 */
export function compareScatter(
  first: readonly Scatter[],
  second: readonly Scatter[],
  level = 0.95,
): ScatterRatio | null {
  requireProbability("compareScatter", "level", level);
  const [a, b] = [sampleOf(first.map(logVariance)), sampleOf(second.map(logVariance))];
  const balanced = new Set([...first, ...second].map(({ df }) => df)).size === 1;
  const pooled = pooledVariance([a, b]);
  if (pooled.variance === 0) return null;
  const variance = balanced
    ? pooled.variance * (1 / a.n + 1 / b.n)
    : varianceOfMean(a) + varianceOfMean(b);
  const df = balanced ? pooled.df : welchDf(a, b);
  const test = differenceOfMeans(a.mean - b.mean, Math.sqrt(variance), df, level);
  return scatterRatio(test, balanced ? "pooled" : "welch");
}

function scatterRatio(test: DifferenceOfMeans, method: ScatterRatio["method"]): ScatterRatio {
  const ofSds = (difference: number) => Math.exp(difference / 2);
  return {
    ratio: ofSds(test.difference),
    lower: ofSds(test.lower),
    upper: ofSds(test.upper),
    statistic: test.statistic,
    df: test.df,
    pValue: test.pValue,
    method,
  };
}

/**
 * Interval of a coefficient of variation by the χ² interval of the standard deviation, the mean taken as known:
 * cv·√(df/χ²). Close for a cv below about 0.1, and the one that serves a cv pooled over samples with means of their
 * own, where Vangel's interval does not.
 *
 * @param cv at least 0, a fraction
 * @param df degrees of freedom of the standard deviation, above 0
 * @param level 0 < level < 1, default 0.95
 * @throws NumericalError when an argument is out of range
 * Source NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.3.1 (interval of a standard deviation)
 */
export function chiSquaredVariationInterval(
  cv: number,
  df: number,
  level = 0.95,
): { readonly lower: number; readonly upper: number } {
  if (!(Number.isFinite(cv) && cv >= 0)) {
    throw new NumericalError(`chiSquaredVariationInterval: cv is ${String(cv)}; at least 0.`);
  }
  requirePositive("chiSquaredVariationInterval", "df", df);
  requireProbability("chiSquaredVariationInterval", "level", level);
  const tail = (1 - level) / 2;
  return {
    lower: cv * Math.sqrt(df / chiSquaredQuantile(1 - tail, df)),
    upper: cv * Math.sqrt(df / chiSquaredQuantile(tail, df)),
  };
}
