import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import { normalQuantile } from "../numeric/distributions/normal.ts";
import { requirePositive, requireProbability, requireWhole } from "../numeric/domain.ts";

/** A tolerance interval mean ± factor·s is to hold `content` of a normal population with `confidence`. */
export interface ToleranceAim {
  /** Share of the population to be held, 0 < content < 1. */
  readonly content: number;
  /** Chance that the interval holds it, 0 < confidence < 1. */
  readonly confidence: number;
}

/** What the mean and the standard deviation rest on. */
export interface ToleranceSample {
  /** Observations behind the mean, at least 1. */
  readonly n: number;
  /** Degrees of freedom behind the standard deviation; n − 1 unless it comes from elsewhere. */
  readonly df: number;
}

/**
 * Factor of the two-sided tolerance interval by Howe's approximation: √(ν·(1 + 1/n)·z²((1 + content)/2) / χ²(1 −
 * confidence, ν)). Against the exact factor for 95 % content with 95 % confidence it is 5 % too wide at n = 2, 2 % at
 * n = 3, and within 1 % from n = 4.
 *
 * Source: Howe, JASA 64 (1969) 610; NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3
 * @example howeToleranceFactor({ n: 43, df: 42 }, { content: 0.9, confidence: 0.99 }) // -> 2.217
 */
export function howeToleranceFactor(sample: ToleranceSample, aim: ToleranceAim): number {
  const { n, df } = sample;
  requireWhole("howeToleranceFactor", "n", n, 1);
  requirePositive("howeToleranceFactor", "df", df);
  requireProbability("howeToleranceFactor", "content", aim.content);
  requireProbability("howeToleranceFactor", "confidence", aim.confidence);
  const z = normalQuantile((1 + aim.content) / 2);
  return z * Math.sqrt((df * (1 + 1 / n)) / chiSquaredQuantile(1 - aim.confidence, df));
}
