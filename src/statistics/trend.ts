import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import { lineAt, weightedLine } from "./straight-line.ts";

/** A straight line of values on their order 1, 2, …, n. */
export interface TrendTest {
  /** Change from one value to the next. */
  readonly slope: number;
  readonly standardError: number;
  /** n − 2. */
  readonly df: number;
  readonly statistic: number;
  /** Two-sided. */
  readonly pValue: number;
  /** Height of the line at the first and at the last value. */
  readonly start: number;
  readonly end: number;
}

/**
 * Do values rise or fall in the order they came? Least-squares slope on the order, t = slope ÷ standard error on
 * n − 2 degrees of freedom.
 *
 * @param values at least 3 finite numbers in time order, one per independent unit: fills, never catches
 * @returns slope per step; null when the values lie on a line (or agree) to rounding, which leaves no scatter to test
 *   against
 * @throws NumericalError with fewer than 3 values or one that is not finite
 * Assumes independent normal values of equal spread. Values alike when close in time raise the false alarms: at a lag-one
 *   correlation of 0.3 to about twice the stated rate
 * Source Draper and Smith 1998, Applied Regression Analysis, 3rd edition, section 1.4
 */
export function trendTest(values: readonly number[]): TrendTest | null {
  const line = weightedLine(
    values.map((_, i) => i + 1),
    values,
  );
  const standardError = line.slopeStandardError;
  if (standardError === null || noScatter(line.residualSumOfSquares, values)) return null;
  const statistic = line.slope / standardError;
  return {
    slope: line.slope,
    standardError,
    df: line.df,
    statistic,
    pValue: studentTTwoSided(statistic, line.df),
    start: lineAt(line, 1),
    end: lineAt(line, values.length),
  };
}
