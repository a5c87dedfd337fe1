import { sum } from "simple-statistics";
import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import { weightedLine } from "./straight-line.ts";
import type { Point } from "./through-origin.ts";

/** Error variance known from elsewhere, at x = 1, with its degrees of freedom. */
export interface OutsideVariance {
  readonly variance: number;
  readonly df: number;
}

/** A straight line with intercept, looked at only for its intercept. */
export interface OffsetFit {
  readonly offset: number;
  readonly slope: number;
  readonly standardError: number;
  readonly df: number;
  readonly statistic: number;
  readonly pValue: number;
}

/**
 * Is the same amount added to every y? t test of the intercept of a weighted line, weights 1/x.
 *
 * @param points   n >= 3 with at least two different x
 * @param outside  variance from elsewhere, pooled with the line's own residuals: s² = (RSS + ν₀s₀²)/(n − 2 + ν₀)
 * @returns        null when the residuals leave no scatter to test against
 * Source          Draper & Smith, Applied Regression Analysis (weighted straight line)
 */
export function testOffset(
  points: readonly Point[],
  outside: OutsideVariance | null,
): OffsetFit | null {
  const line = weightedLine(
    points.map(({ x }) => x),
    points.map(({ y }) => y),
    points.map(({ x }) => 1 / x),
  );
  const df = line.df + (outside?.df ?? 0);
  const residual = line.residualSumOfSquares + (outside ? outside.df * outside.variance : 0);
  const weighted = points.map(({ x, y }) => y / Math.sqrt(x));
  if (df < 1 || noScatter(residual, weighted)) return null;

  const standardError = Math.sqrt((residual / df) * offsetVarianceFactor(points.map(({ x }) => x)));
  const statistic = line.intercept / standardError;
  return {
    offset: line.intercept,
    slope: line.slope,
    standardError,
    df,
    statistic,
    pValue: studentTTwoSided(statistic, df),
  };
}

/** Variance of the intercept of a line with weights 1/x over the error variance at x = 1: Σx/(Σx·Σ1/x − n²). */
export function offsetVarianceFactor(x: readonly number[]): number {
  const total = sum(x);
  return total / (total * sum(x.map((value) => 1 / value)) - x.length ** 2);
}
