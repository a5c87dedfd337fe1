import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { fUpperTail } from "../numeric/distributions/f.ts";
import { studentTQuantile, studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { combinedDf, type Sample, varianceOfMean } from "./sample.ts";
import { weightedMean } from "./summary.ts";

/** A difference of two means with its t test and interval. */
export interface DifferenceOfMeans {
  readonly difference: number;
  readonly standardError: number;
  readonly df: number;
  readonly statistic: number;
  /** Two-sided. */
  readonly pValue: number;
  readonly lower: number;
  readonly upper: number;
}

/** Satterthwaite's degrees of freedom of a difference of two means; at least one of the groups must scatter. */
export function welchDf(first: Sample, second: Sample): number {
  return combinedDf(
    [first, second].map((sample) => ({ variance: varianceOfMean(sample), df: sample.n - 1 })),
  );
}

/**
 * t test and interval of a difference whose standard error is known with `df` degrees of freedom; with blocks, the
 * mean of the differences within blocks on blocks − 1.
 *
 * @param standardError above 0
 * @param level of the interval, 0 < level < 1
 */
export function differenceOfMeans(
  difference: number,
  standardError: number,
  df: number,
  level: number,
): DifferenceOfMeans {
  const statistic = difference / standardError;
  const halfWidth = studentTQuantile((1 + level) / 2, df) * standardError;
  return {
    difference,
    standardError,
    df,
    statistic,
    pValue: studentTTwoSided(statistic, df),
    lower: difference - halfWidth,
    upper: difference + halfWidth,
  };
}

/** F test of equal means. */
export interface MeansTest {
  readonly statistic: number;
  readonly df1: number;
  readonly df2: number;
  readonly pValue: number;
}

/**
 * Do several groups differ in their means, each with a spread of its own? Welch's one-way test: means weighted with
 * w = n/s², F = [Σw(ȳ − ỹ)²/(k − 1)] / [1 + 2(k − 2)Λ/(k² − 1)], Λ = Σ(1 − w/Σw)²/(n − 1), on k − 1 and
 * (k² − 1)/(3Λ) degrees of freedom.
 *
 * @param samples at least 2, each with a variance above 0
 * @throws NumericalError with fewer than 2 samples, or one that does not scatter: it would get all the weight
 * Source Welch 1951, Biometrika 38, 330–336
 */
export function welchOneWay(samples: readonly Sample[]): MeansTest {
  const k = samples.length;
  if (k < 2) throw new NumericalError(`welchOneWay: ${k} groups; at least 2 are needed.`);
  if (samples.some(({ variance }) => !(variance > 0))) {
    throw new NumericalError("welchOneWay: a group does not scatter; its weight has no limit.");
  }
  const weights = samples.map((sample) => 1 / varianceOfMean(sample));
  const total = weights.reduce((sum, w) => sum + w, 0);
  const overSamples = (term: (sample: Sample, weight: number) => number) =>
    samples.reduce((sum, sample, i) => sum + term(sample, at(weights, i)), 0);
  const center = weightedMean(
    samples.map((sample) => sample.mean),
    weights,
  );
  const between = overSamples((sample, w) => w * (sample.mean - center) ** 2) / (k - 1);
  const lambda = overSamples((sample, w) => (1 - w / total) ** 2 / (sample.n - 1));
  const statistic = between / (1 + (2 * (k - 2) * lambda) / (k ** 2 - 1));
  const df1 = k - 1;
  const df2 = (k ** 2 - 1) / (3 * lambda);
  return { statistic, df1, df2, pValue: fUpperTail(statistic, df1, df2) };
}
