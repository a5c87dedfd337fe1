/** Values that agree to this share of their size differ by rounding only; squared, because it is held to squares. */
const relativeDust = 1e-12 ** 2;

/** Whether a residual sum of squares is no more than floating point leaves of none, for values of this size. */
export function noScatter(residualSumOfSquares: number, values: readonly number[]): boolean {
  return residualSumOfSquares <= relativeDust * values.reduce((sum, value) => sum + value ** 2, 0);
}
