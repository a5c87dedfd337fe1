import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";

/** A column this much shorter, once the columns before it are taken out, is a combination of them but for rounding. */
const rankTolerance = 1e-11;

/** A matrix as its columns. */
export type Columns = readonly Float64Array[];

/**
 * Turns a matrix with at least as many rows as columns into an upper triangle R by Householder reflections, and applies
 * the same reflections to `target`. Both are changed in place; of column k, the entries 0 … k are R's.
 *
 * @throws NumericalError when a column is a combination of those before it, naming the column counted from 1
 * Source Golub and Van Loan 2013, Matrix Computations, 4th edition, algorithm 5.2.1
 */
export function triangulate(columns: Columns, target: Float64Array): void {
  const lengths = columns.map((column) => tailLength(column, 0));
  columns.forEach((column, k) => {
    const length = tailLength(column, k);
    if (!(length > rankTolerance * at(lengths, k))) {
      throw new NumericalError(
        `leastSquares: column ${k + 1} is a combination of the columns before it, or zero; its coefficient cannot be told.`,
      );
    }
    const pivot = at(column, k);
    // The sign that adds, never subtracts, keeps the reflection accurate.
    const diagonal = pivot > 0 ? -length : length;
    column[k] = pivot - diagonal;
    for (const other of [...columns.slice(k + 1), target]) {
      reflect(other, column, k, diagonal * (pivot - diagonal));
    }
    column[k] = diagonal;
  });
}

/** Solves R·z = right for the upper triangle R held in `columns`. */
export function solveUpper(columns: Columns, right: ArrayLike<number>): number[] {
  const solution = Array.from({ length: columns.length }, (_, i) => at(right, i));
  for (let k = columns.length - 1; k >= 0; k--) {
    const column = at(columns, k);
    const value = at(solution, k) / at(column, k);
    solution[k] = value;
    for (let i = 0; i < k; i++) solution[i] = at(solution, i) - value * at(column, i);
  }
  return solution;
}

/** Solves Rᵀ·z = right for the upper triangle R held in `columns`. */
export function solveUpperTransposed(columns: Columns, right: ArrayLike<number>): number[] {
  const solution: number[] = [];
  columns.forEach((column, k) => {
    let value = at(right, k);
    for (let i = 0; i < k; i++) value -= at(column, i) * at(solution, i);
    solution.push(value / at(column, k));
  });
  return solution;
}

/** Rows of R⁻¹ for the upper triangle R held in `columns`. */
export function inverseUpper(columns: Columns): number[][] {
  const unit = (place: number) => columns.map((_, i) => (i === place ? 1 : 0));
  const inverseColumns = columns.map((_, k) => solveUpper(columns, unit(k)));
  return columns.map((_, i) => inverseColumns.map((column) => at(column, i)));
}

/** Σ a·b. */
export function innerProduct(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < a.length; i++) total += at(a, i) * at(b, i);
  return total;
}

/** vectorᵀ · matrix · vector. */
export function quadraticForm(
  matrix: readonly (readonly number[])[],
  vector: readonly number[],
): number {
  return innerProduct(
    vector,
    matrix.map((row) => innerProduct(row, vector)),
  );
}

/** Euclidean length of a column from row `from` on. */
function tailLength(column: Float64Array, from: number): number {
  const tail = column.subarray(from);
  return Math.sqrt(innerProduct(tail, tail));
}

/** Adds to `column` the multiple of `mirror` (from row k on) that reflects it; `scale` is minus half of |mirror|². */
function reflect(column: Float64Array, mirror: Float64Array, k: number, scale: number): void {
  const factor = innerProduct(mirror.subarray(k), column.subarray(k)) / scale;
  for (let i = k; i < column.length; i++) {
    column[i] = at(column, i) + factor * at(mirror, i);
  }
}
