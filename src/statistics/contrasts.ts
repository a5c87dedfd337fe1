import { NumericalError } from "../errors/errors.ts";
import { requireProbability } from "../numeric/domain.ts";
import { pooledVariance, type Sample, sampleOf, varianceOfMean } from "./sample.ts";
import {
  allPairs,
  dunnettRule,
  type Pair,
  pairsWithReference,
  type SimultaneousRule,
  studentizedRangeRule,
} from "./simultaneous.ts";
import { welchDf } from "./welch.ts";

/**
 * Difference of two of several means, judged together with the others of its family. The standard error and all that
 * rests on it are null where it is zero, neither group scattering: a zero width would pass for certainty.
 */
export interface Contrast extends Pair {
  readonly difference: number;
  readonly standardError: number | null;
  readonly df: number | null;
  readonly statistic: number | null;
  /** Two-sided, adjusted for the family. */
  readonly pValue: number | null;
  /** Simultaneous interval: all of the family cover together with the level asked for. */
  readonly lower: number | null;
  readonly upper: number | null;
}

/**
 * Which of several groups differ in their mean, each having a spread of its own? Games and Howell: for every pair
 * (ȳᵢ − ȳⱼ)/√(sᵢ²/nᵢ + sⱼ²/nⱼ) against the studentized range over √2 on Welch's degrees of freedom.
 *
 * @param groups at least 2 groups of at least 2 values each
 * @param level of the simultaneous intervals, 0 < level < 1, default 0.95
 * @throws NumericalError when a group is too small, a value is not finite or level is out of range
 * Source Games and Howell 1976, Journal of Educational Statistics 1, 113–125
 */
export function gamesHowell(groups: readonly (readonly number[])[], level = 0.95) {
  const samples = groups.map(sampleOf);
  return contrastsOf(
    samples,
    allPairs(samples.length),
    separateErrors(samples),
    studentizedRangeRule(samples.length),
    level,
  );
}

/**
 * Which of several groups differ in their mean, all having one common spread? Tukey's procedure, for unequal groups as
 * Kramer extended it: SE = √(s²(1/nᵢ + 1/nⱼ)), s² pooled on Σ(n − 1) degrees of freedom.
 *
 * @param groups at least 2 groups of at least 2 values each
 * @param level of the simultaneous intervals, 0 < level < 1, default 0.95
 * @throws NumericalError when a group is too small, a value is not finite or level is out of range
 * Source Kramer 1956, Biometrics 12, 307–310; NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.7.1
 */
export function tukey(groups: readonly (readonly number[])[], level = 0.95) {
  const samples = groups.map(sampleOf);
  return contrastsOf(
    samples,
    allPairs(samples.length),
    commonErrors(samples),
    studentizedRangeRule(samples.length),
    level,
  );
}

/** Whether groups have one spread, estimated together, or each its own. */
export type SpreadLaw = "separate" | "common";

/**
 * Which groups differ from a reference group in their mean? Dunnett's two-sided procedure by the exact integral over
 * the reference's error, for equal or unequal groups. With separate spreads each comparison has Welch's standard error
 * and degrees of freedom, and its correlation with the others is estimated from the same variances.
 *
 * @param groups at least 2 groups of at least 2 values each
 * @param reference place of the reference among the groups, from 0
 * @param spread default "common", Dunnett's own; "separate" is the extension of Hasler and Hothorn
 * @param level of the simultaneous intervals, 0 < level < 1, default 0.95
 * @throws NumericalError when a group is too small, a value is not finite, level or reference is out of range
 * Source Dunnett 1955, Journal of the American Statistical Association 50, 1096–1121; Hasler and Hothorn 2008,
 *   Biometrical Journal 50, 793–800
 */
export function dunnett(
  groups: readonly (readonly number[])[],
  reference: number,
  spread: SpreadLaw = "common",
  level = 0.95,
) {
  const samples = groups.map(sampleOf);
  const pairs = pairsWithReference(samples.length, reference);
  const errors = spread === "common" ? commonErrors(samples) : separateErrors(samples);
  return contrastsOf(
    samples,
    pairs,
    errors,
    dunnettRule(referenceLoadings(samples, pairs, spread)),
    level,
  );
}

/** Standard error of a contrast and its degrees of freedom; null where the error is zero and so unknown. */
export type ContrastError = (
  pair: Pair,
) => { readonly standardError: number; readonly df: number } | null;

/** Welch's standard error and degrees of freedom of each pair. */
export function separateErrors(samples: readonly Sample[]): ContrastError {
  return ({ first, second }) => {
    const [a, b] = [sampleAt(samples, first), sampleAt(samples, second)];
    const variance = varianceOfMean(a) + varianceOfMean(b);
    return variance > 0 ? { standardError: Math.sqrt(variance), df: welchDf(a, b) } : null;
  };
}

/** Standard errors from the variance pooled over all groups. */
export function commonErrors(samples: readonly Sample[]): ContrastError {
  const { variance, df } = pooledVariance(samples);
  return ({ first, second }) => {
    const share = 1 / sampleAt(samples, first).n + 1 / sampleAt(samples, second).n;
    return variance > 0 ? { standardError: Math.sqrt(variance * share), df } : null;
  };
}

/** Square roots of the reference's share in the variance of each contrast; what `dunnettRule` needs. */
export function referenceLoadings(
  samples: readonly Sample[],
  pairs: readonly Pair[],
  spread: SpreadLaw,
): readonly number[] {
  const part = (place: number) => {
    const sample = sampleAt(samples, place);
    return spread === "common" ? 1 / sample.n : varianceOfMean(sample);
  };
  return pairs.map(({ first, second }) => {
    const share = part(second) / (part(second) + part(first));
    // A comparison with a group that does not scatter rests on the reference alone; just below 1 keeps it a density.
    return Number.isNaN(share) ? Math.SQRT1_2 : Math.sqrt(Math.min(share, largestShare));
  });
}

const largestShare = 0.996;

/** Contrasts of the samples' means by the given errors, judged together by the given rule. */
export function contrastsOf(
  samples: readonly Sample[],
  pairs: readonly Pair[],
  errorOf: ContrastError,
  rule: SimultaneousRule,
  level: number,
): readonly Contrast[] {
  requireProbability("contrastsOf", "level", level);
  return pairs.map((pair) => {
    const difference = sampleAt(samples, pair.first).mean - sampleAt(samples, pair.second).mean;
    return { ...pair, ...judge(difference, errorOf(pair), rule, level) };
  });
}

/** A difference with its simultaneous interval and adjusted p-value; nulls where its error is unknown. */
export function judge(
  difference: number,
  error: ReturnType<ContrastError>,
  rule: SimultaneousRule,
  level: number,
): Omit<Contrast, keyof Pair> {
  if (error === null) {
    return {
      difference,
      standardError: null,
      df: null,
      statistic: null,
      pValue: null,
      lower: null,
      upper: null,
    };
  }
  const { standardError, df } = error;
  const statistic = difference / standardError;
  const halfWidth = rule.criticalValue(level, df) * standardError;
  return {
    difference,
    standardError,
    df,
    statistic,
    pValue: rule.adjustedPValue(statistic, df),
    lower: difference - halfWidth,
    upper: difference + halfWidth,
  };
}

function sampleAt(samples: readonly Sample[], place: number): Sample {
  const sample = samples[place];
  if (sample === undefined) {
    throw new NumericalError(`There is no group ${place}; there are ${samples.length}.`);
  }
  return sample;
}
