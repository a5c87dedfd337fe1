/** Polynomial in x by Horner's rule, the coefficient of the highest power first. */
export function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
}

/** Two polynomials, each with the coefficient of its highest power first. */
export interface Rational {
  readonly over: readonly number[];
  readonly under: readonly number[];
}

/** Quotient of two polynomials in x. */
export function ratio({ over, under }: Rational, x: number): number {
  return polynomial(over, x) / polynomial(under, x);
}
