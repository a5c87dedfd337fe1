import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { requireFinite, requirePositive } from "./domain.ts";
import {
  innerProduct,
  inverseUpper,
  solveUpper,
  solveUpperTransposed,
  triangulate,
} from "./linear-algebra.ts";

export interface LeastSquaresFit {
  readonly coefficients: readonly number[];
  /** Null without degrees of freedom: the scatter is then unknown. */
  readonly standardErrors: readonly number[] | null;
  /** (XᵀWX)⁻¹, to be multiplied by an error variance of one's own choice. */
  readonly unscaledCovariance: readonly (readonly number[])[];
  /** `unscaledCovariance` times the residual variance; null without degrees of freedom. */
  readonly covariance: readonly (readonly number[])[] | null;
  /** Σ weight · residual². */
  readonly residualSumOfSquares: number;
  /** Observations minus coefficients. */
  readonly df: number;
  /** Share of each fitted value that comes from its own observation; they sum to the number of coefficients. */
  readonly leverages: readonly number[];
  /** y minus its fitted value, not weighted. */
  readonly residuals: readonly number[];
}

/**
 * Coefficients that make Σ weight · (y − row · coefficients)² smallest, with their standard errors: linear least
 * squares by Householder's orthogonal reduction, which keeps about twice the digits the normal equations would.
 *
 * @param rows one row per observation, one column per coefficient (a column of ones for an intercept)
 * @param y observed values, one per row
 * @param weights inverse error variances up to a common factor, above 0; default all 1
 * @throws NumericalError when lengths disagree, a value is not finite, a weight is not above 0, there are fewer rows
 *   than columns, or a column is a combination of those before it (naming the column, counted from 1)
 * Source Golub and Van Loan 2013, Matrix Computations, 4th edition, sections 5.2 and 5.3
 */
export function leastSquares(
  rows: readonly (readonly number[])[],
  y: readonly number[],
  weights?: readonly number[],
): LeastSquaresFit {
  check(rows, y, weights);
  const roots = rows.map((_, i) => Math.sqrt(weights?.[i] ?? 1));
  const scaledRows = rows.map((row, i) => row.map((value) => value * at(roots, i)));
  const columns = at(rows, 0).map((_, j) => Float64Array.from(scaledRows, (row) => at(row, j)));
  const target = Float64Array.from(y, (value, i) => value * at(roots, i));
  triangulate(columns, target);
  const coefficients = solveUpper(columns, target);
  const residuals = rows.map((row, i) => at(y, i) - innerProduct(row, coefficients));
  const weighted = residuals.map((residual, i) => residual * at(roots, i));
  const inverse = inverseUpper(columns);
  return {
    coefficients,
    residuals,
    leverages: scaledRows.map((row) => squaredLength(solveUpperTransposed(columns, row))),
    ...scatter(
      squaredLength(weighted),
      rows.length - columns.length,
      inverse.map((a) => inverse.map((b) => innerProduct(a, b))),
    ),
  };
}

function scatter(
  residualSumOfSquares: number,
  df: number,
  unscaledCovariance: readonly (readonly number[])[],
) {
  const known = { residualSumOfSquares, df, unscaledCovariance };
  if (df === 0) return { ...known, covariance: null, standardErrors: null };
  const covariance = unscaledCovariance.map((row) =>
    row.map((value) => (residualSumOfSquares / df) * value),
  );
  const standardErrors = covariance.map((row, j) => Math.sqrt(at(row, j)));
  return { ...known, covariance, standardErrors };
}

function squaredLength(values: readonly number[]): number {
  return innerProduct(values, values);
}

function check(
  rows: readonly (readonly number[])[],
  y: readonly number[],
  weights: readonly number[] | undefined,
): void {
  const columns = rows[0]?.length ?? 0;
  if (columns === 0) throw new NumericalError("leastSquares: there are no columns to fit.");
  if (rows.length < columns) {
    throw new NumericalError(
      `leastSquares: ${rows.length} rows cannot tell ${columns} coefficients; at least ${columns} are needed.`,
    );
  }
  if (y.length !== rows.length) throw lengthsDiffer("y", y.length, rows.length);
  if (weights !== undefined && weights.length !== rows.length) {
    throw lengthsDiffer("weights", weights.length, rows.length);
  }
  rows.forEach((row, i) => {
    if (row.length !== columns) throw lengthsDiffer(`row ${i + 1}`, row.length, columns);
    row.forEach((value, j) => {
      requireFinite("leastSquares", `row ${i + 1}, column ${j + 1}`, value);
    });
  });
  y.forEach((value, i) => {
    requireFinite("leastSquares", `y ${i + 1}`, value);
  });
  weights?.forEach((value, i) => {
    requirePositive("leastSquares", `weight ${i + 1}`, value);
  });
}

function lengthsDiffer(name: string, length: number, expected: number): NumericalError {
  return new NumericalError(`leastSquares: ${name} has ${length} values; it needs ${expected}.`);
}
