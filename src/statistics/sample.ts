import { NumericalError } from "../errors/errors.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import { mean, sampleStandardDeviation } from "./summary.ts";

/** What a comparison of means needs to know of a group of independent values. */
export interface Sample {
  readonly n: number;
  readonly mean: number;
  /** Sample variance, n − 1. */
  readonly variance: number;
}

/**
 * Number, mean and variance of a group of values.
 *
 * @param values at least 2 finite numbers
 * @returns the variance is exactly 0 where the values agree to rounding
 * @throws NumericalError when there are fewer than 2 values or one is not finite
 */
export function sampleOf(values: readonly number[]): Sample {
  const center = mean(values);
  const deviation = sampleStandardDeviation(values);
  return {
    n: values.length,
    mean: center,
    variance: isDust(deviation, center) ? 0 : deviation ** 2,
  };
}

/** Squared standard error of the sample's mean. */
export function varianceOfMean({ n, variance }: Sample): number {
  return variance / n;
}

/**
 * Mean squared deviation within the groups, each about its own mean, with its degrees of freedom Σ(n − 1).
 *
 * @throws NumericalError when there is no group
 */
export function pooledVariance(samples: readonly Sample[]): { variance: number; df: number } {
  const df = samples.reduce((total, { n }) => total + n - 1, 0);
  if (df < 1) throw new NumericalError("pooledVariance: no group has 2 values.");
  const sumOfSquares = samples.reduce((total, { n, variance }) => total + (n - 1) * variance, 0);
  return { variance: sumOfSquares / df, df };
}

/**
 * Degrees of freedom of a sum of independent variance estimates: (Σv)²/Σ(v²/df).
 *
 * @param parts variances as they enter the sum, at least one above 0, each with the df of its estimate
 * @throws NumericalError when every variance is 0
 * Source Satterthwaite 1946, Biometrics Bulletin 2, 110–114
 */
export function combinedDf(parts: readonly { variance: number; df: number }[]): number {
  const total = parts.reduce((sum, { variance }) => sum + variance, 0);
  if (!(total > 0)) throw new NumericalError("combinedDf: all variances are 0.");
  // Shares instead of variances: squares of small variances would underflow.
  return 1 / parts.reduce((sum, { variance, df }) => sum + (variance / total) ** 2 / df, 0);
}
