import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import { weightedSums } from "./straight-line.ts";
import { weightedMean } from "./summary.ts";

/** Points of one group; its level is its own, its slope is that of all groups. */
export interface SlopeGroup {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Inverse error variances up to a factor common to all groups, above 0. */
  readonly weights: readonly number[];
}

export interface PooledSlope {
  readonly slope: number;
  readonly standardError: number;
  /** Points − groups − 1. */
  readonly df: number;
  readonly statistic: number;
  /** Two-sided. */
  readonly pValue: number;
  /** Groups with different x in them, which alone can tell of a slope. */
  readonly groups: number;
}

/**
 * One slope for several groups, each with a level of its own (analysis of covariance): Σ_g Sxy ÷ Σ_g Sxx, sums about the
 * group's own weighted means; with one group it is the weighted line.
 *
 * @param groups those whose x are all equal are passed over, because they do not know the slope
 * @returns null when nothing is left, when there are no degrees of freedom, or when no scatter is left to test against
 * @throws NumericalError when lengths disagree or a value is out of range
 * Source Draper and Smith 1998, Applied Regression Analysis, 3rd edition, chapter 14 (dummy variables)
 */
export function pooledSlope(groups: readonly SlopeGroup[]): PooledSlope | null {
  for (const { x, y, weights } of groups)
    if (y.length !== x.length || weights.length !== x.length)
      throw new NumericalError("pooledSlope: x, y and weights of a group must be as many.");
  const lines = informative(groups).map(({ x, y, weights }) => weightedSums(x, y, weights));
  const sumOver = (term: (line: (typeof lines)[number]) => number) =>
    lines.reduce((sum, line) => sum + term(line), 0);
  const squaresX = sumOver((line) => line.sumOfSquaresX);
  const df = sumOver((line) => line.df + 1) - 1;
  if (df < 1) return null;

  const slope = weightedMean(
    lines.map((line) => line.slope),
    lines.map((line) => line.sumOfSquaresX),
  );
  // What the own slopes leave, and what the common slope leaves of their differences.
  const residual = sumOver(
    (line) => line.residualSumOfSquares + (line.slope - slope) ** 2 * line.sumOfSquaresX,
  );
  const weighted: number[] = [];
  for (const { y, weights } of groups)
    for (let i = 0; i < y.length; i++) weighted.push(at(y, i) * Math.sqrt(at(weights, i)));
  if (noScatter(residual, weighted)) return null;
  const standardError = Math.sqrt(residual / df / squaresX);
  const statistic = slope / standardError;
  return {
    slope,
    standardError,
    df,
    statistic,
    pValue: studentTTwoSided(statistic, df),
    groups: lines.length,
  };
}

/** Groups with different x in them, which alone can tell of a slope. */
export function informative<G extends Pick<SlopeGroup, "x">>(groups: readonly G[]): readonly G[] {
  return groups.filter(({ x }) => x.some((value) => value !== x[0]));
}
