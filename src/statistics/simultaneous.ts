import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { dunnettQuantile, dunnettUpperTail } from "../numeric/distributions/dunnett.ts";
import { studentTQuantile, studentTTwoSided } from "../numeric/distributions/student-t.ts";
import {
  studentizedRangeQuantile,
  studentizedRangeUpperTail,
} from "../numeric/distributions/studentized-range.ts";
import { requireWhole } from "../numeric/domain.ts";
import { type Sample, varianceOfMean } from "./sample.ts";

/**
 * How several contrasts are judged together, so that the chance of any false difference among them stays small.
 * Both functions speak of a difference over its standard error, as a t statistic does.
 */
export interface SimultaneousRule {
  /** Half-width of a simultaneous interval in standard errors; level and df as for a t interval. */
  readonly criticalValue: (level: number, df: number) => number;
  /** Two-sided p-value adjusted for the family. */
  readonly adjustedPValue: (statistic: number, df: number) => number;
}

/**
 * All pairs of `means` means: studentized range over √2. With one common variance these are Tukey's intervals, with
 * Welch's standard errors and degrees of freedom those of Games and Howell.
 */
export function studentizedRangeRule(means: number): SimultaneousRule {
  return {
    criticalValue: (level, df) => studentizedRangeQuantile(level, means, df) / Math.SQRT2,
    adjustedPValue: (statistic, df) =>
      studentizedRangeUpperTail(Math.SQRT2 * Math.abs(statistic), means, df),
  };
}

/** Several comparisons with one reference that share its error; loadings as `referenceLoadings` gives them. */
export function dunnettRule(loadings: readonly number[]): SimultaneousRule {
  return {
    criticalValue: (level, df) => dunnettQuantile(level, loadings, df),
    adjustedPValue: (statistic, df) => dunnettUpperTail(Math.abs(statistic), loadings, df),
  };
}

/**
 * Any `contrasts` contrasts, however dependent: each at level 1 − (1 − level)/contrasts, p-values times their number.
 *
 * @param contrasts whole number of at least 1; 1 leaves t as it is
 */
export function bonferroniRule(contrasts: number): SimultaneousRule {
  requireWhole("bonferroniRule", "contrasts", contrasts, 1);
  return {
    criticalValue: (level, df) => studentTQuantile(1 - (1 - level) / (2 * contrasts), df),
    adjustedPValue: (statistic, df) => Math.min(1, contrasts * studentTTwoSided(statistic, df)),
  };
}

/** Two groups by their place in the list of groups; the contrast is first minus second. */
export interface Pair {
  readonly first: number;
  readonly second: number;
}

/** Every two of `groups` groups, each pair once. */
export function allPairs(groups: number): readonly Pair[] {
  return Array.from({ length: groups }, (_, first) =>
    Array.from({ length: groups - first - 1 }, (_, i) => ({ first, second: first + 1 + i })),
  ).flat();
}

/**
 * Every other group against the one at `reference`.
 *
 * @throws NumericalError when there is no such place
 */
export function pairsWithReference(groups: number, reference: number): readonly Pair[] {
  if (!(Number.isInteger(reference) && reference >= 0 && reference < groups)) {
    throw new NumericalError(
      `pairsWithReference: reference is ${reference}; it must be a place among ${groups} groups.`,
    );
  }
  return Array.from({ length: groups }, (_, first) => first)
    .filter((first) => first !== reference)
    .map((first) => ({ first, second: reference }));
}

/** Whether groups have one spread, estimated together, or each its own. */
export type SpreadLaw = "separate" | "common";

/** Square roots of the reference's share in the variance of each contrast; what `dunnettRule` needs. */
export function referenceLoadings(
  samples: readonly Sample[],
  pairs: readonly Pair[],
  spread: SpreadLaw,
): readonly number[] {
  const part = (place: number) => {
    const sample = at(samples, place);
    return spread === "common" ? 1 / sample.n : varianceOfMean(sample);
  };
  return pairs.map(({ first, second }) => {
    const share = part(second) / (part(second) + part(first));
    // A comparison with a group that does not scatter rests on the reference alone; just below 1 keeps it a density.
    return Number.isNaN(share) ? Math.SQRT1_2 : Math.sqrt(Math.min(share, largestShare));
  });
}

const largestShare = 0.996;
