import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { studentTQuantile, studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { requireProbability } from "../numeric/domain.ts";
import { type LeastSquaresFit, leastSquares } from "../numeric/least-squares.ts";
import { innerProduct, quadraticForm } from "../numeric/linear-algebra.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import { mean, squaresWithin } from "./summary.ts";

/** One coefficient of a regression. Everything beside the value is null without scatter to judge it by. */
export interface Coefficient {
  readonly name: string;
  readonly value: number;
  readonly standardError: number | null;
  readonly statistic: number | null;
  /** Two-sided, of a coefficient of 0. */
  readonly pValue: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
}

export interface RegressionPoint {
  readonly fitted: number;
  readonly residual: number;
  /** Share of the fitted value that comes from its own observation; over all points they sum to the coefficients. */
  readonly leverage: number;
}

/** A linear regression with intercept on explaining variables. */
export interface Regression {
  readonly names: readonly string[];
  readonly level: number;
  /** At the means of the variables, where it is least entangled with the slopes. */
  readonly centre: Coefficient;
  /** At zero of every variable. */
  readonly intercept: Coefficient;
  /** One a variable, in the order of `names`. */
  readonly slopes: readonly Coefficient[];
  /** Observations − variables − 1. */
  readonly df: number;
  readonly residualSumOfSquares: number;
  /** Null without degrees of freedom, or when every point lies on the plane. */
  readonly residualStandardDeviation: number | null;
  /** Share of the sum of squares about the mean that the variables explain; null when y does not vary. */
  readonly rSquared: number | null;
  readonly points: readonly RegressionPoint[];
  /** Means of the variables, the origin of the fit. */
  readonly origin: readonly number[];
  /** (XᵀX)⁻¹ of the fit about its origin, intercept first. */
  readonly unscaledCovariance: readonly (readonly number[])[];
}

/**
 * How does y go with several explaining variables? Ordinary least squares with an intercept, the variables taken from
 * their means so that large common parts cost no digits.
 *
 * @param names one a variable; at least 1
 * @param rows one an observation: the values of the variables in that order
 * @param y one an observation
 * @param level of the coefficients' t intervals, 0 < level < 1, default 0.95
 * @throws NumericalError when lengths disagree, a value is not finite, there are fewer observations than coefficients,
 *   or the variables cannot be told apart (one is a combination of the others, or does not vary)
 * Source Draper and Smith 1998, Applied Regression Analysis, 3rd edition, chapters 5 and 8
 */
export function regression(
  names: readonly string[],
  rows: readonly (readonly number[])[],
  y: readonly number[],
  level = 0.95,
): Regression {
  requireProbability("regression", "level", level);
  check(names, rows, y);
  const origin = names.map((_, j) => mean(rows.map((row) => at(row, j))));
  const centred = rows.map((row) => [1, ...row.map((value, j) => value - at(origin, j))]);
  const center = mean(y);
  const fit = leastSquares(
    centred,
    y.map((value) => value - center),
  );
  const variance = residualVariance(fit, y);
  const coefficient = coefficientMaker(fit, variance, level);
  const slopes = names.map((name, j) => coefficient(name, unit(names.length + 1, j + 1), 0));
  const total = squaresWithin(y).squares;
  return {
    names,
    level,
    centre: coefficient("at the means", unit(names.length + 1, 0), center),
    intercept: coefficient("intercept", [1, ...origin.map((value) => -value)], center),
    slopes,
    df: fit.df,
    residualSumOfSquares: fit.residualSumOfSquares,
    residualStandardDeviation: variance === null ? null : Math.sqrt(variance),
    rSquared: noScatter(total, y) ? null : Math.max(0, 1 - fit.residualSumOfSquares / total),
    points: y.map((value, i) => ({
      fitted: value - at(fit.residuals, i),
      residual: at(fit.residuals, i),
      leverage: at(fit.leverages, i),
    })),
    origin,
    unscaledCovariance: fit.unscaledCovariance,
  };
}

function residualVariance(fit: LeastSquaresFit, y: readonly number[]): number | null {
  return fit.df > 0 && !noScatter(fit.residualSumOfSquares, y)
    ? fit.residualSumOfSquares / fit.df
    : null;
}

/** Makes coefficients that are combinations of those of the fit. */
function coefficientMaker(fit: LeastSquaresFit, variance: number | null, level: number) {
  return (name: string, combination: readonly number[], shift: number): Coefficient => {
    const value = shift + innerProduct(combination, fit.coefficients);
    if (variance === null) {
      const unknown = { standardError: null, statistic: null, pValue: null };
      return { name, value, ...unknown, lower: null, upper: null };
    }
    const standardError = Math.sqrt(variance * quadraticForm(fit.unscaledCovariance, combination));
    const half = studentTQuantile((1 + level) / 2, fit.df) * standardError;
    const statistic = value / standardError;
    return {
      name,
      value,
      standardError,
      statistic,
      pValue: studentTTwoSided(statistic, fit.df),
      lower: value - half,
      upper: value + half,
    };
  };
}

function unit(length: number, place: number): readonly number[] {
  return Array.from({ length }, (_, i) => (i === place ? 1 : 0));
}

function check(
  names: readonly string[],
  rows: readonly (readonly number[])[],
  y: readonly number[],
): void {
  if (names.length === 0) throw new NumericalError("regression: there are no variables.");
  if (rows.length !== y.length) {
    throw new NumericalError(`regression: ${rows.length} rows and ${y.length} y.`);
  }
  rows.forEach((row, i) => {
    if (row.length !== names.length) {
      throw new NumericalError(
        `regression: row ${i + 1} has ${row.length} values for ${names.length} variables.`,
      );
    }
  });
}
