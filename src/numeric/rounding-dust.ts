/** Numbers apart by no more than this share of their size differ by rounding only. */
export const relativeDust = 1e-12;

/** Whether a deviation is no more than floating point leaves of none, for numbers of this size. */
export function isDust(deviation: number, size: number): boolean {
  return Math.abs(deviation) <= relativeDust * Math.abs(size);
}

/** The same where deviations are exact, so that nothing but the last places of the values themselves is dust. */
export const lastPlaces = 8 * Number.EPSILON;

/** Whether a residual sum of squares is no more than floating point leaves of none, for values of this size. */
export function noScatter(
  residualSumOfSquares: number,
  values: readonly number[],
  dust = relativeDust,
): boolean {
  const size = values.reduce((sum, value) => sum + value ** 2, 0);
  return residualSumOfSquares <= dust ** 2 * size;
}
