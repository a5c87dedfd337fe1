import { fLowerTail, fQuantile, fUpperTail } from "../numeric/distributions/f.ts";
import { requirePositive, requireProbability } from "../numeric/domain.ts";

/** A sample variance with its degrees of freedom. */
export interface VarianceEstimate {
  readonly variance: number;
  readonly df: number;
}

export interface VarianceRatioTest {
  /** F, first variance ÷ second. */
  readonly statistic: number;
  /** Two-sided: twice the smaller tail. */
  readonly pValue: number;
  /** Ratio of the two standard deviations, and its interval. */
  readonly ratio: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * Do two independent sets of values scatter alike? F test of two variances, with the interval for the ratio of the
 * standard deviations: √(F/F(1 − a; ν1, ν2)) to √(F·F(1 − a; ν2, ν1)), a = (1 − level)/2.
 *
 * @param first variance above 0, degrees of freedom 1 or more
 * @param second the same
 * @param level of the interval, 0 < level < 1
 * @throws NumericalError when an argument is out of range
 * Assumes normal values; it is easily misled by heavy tails and by a single bad value
 * Source NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.9
 */
export function varianceRatioTest(
  first: VarianceEstimate,
  second: VarianceEstimate,
  level: number,
): VarianceRatioTest {
  for (const { variance, df } of [first, second]) {
    requirePositive("varianceRatioTest", "variance", variance);
    requirePositive("varianceRatioTest", "df", df);
  }
  requireProbability("varianceRatioTest", "level", level);
  const statistic = first.variance / second.variance;
  const [below, above] = [
    fLowerTail(statistic, first.df, second.df),
    fUpperTail(statistic, first.df, second.df),
  ];
  const p = (1 + level) / 2;
  return {
    statistic,
    pValue: Math.min(1, 2 * Math.min(below, above)),
    ratio: Math.sqrt(statistic),
    lower: Math.sqrt(statistic / fQuantile(p, first.df, second.df)),
    upper: Math.sqrt(statistic * fQuantile(p, second.df, first.df)),
  };
}
