/*
 * Powers with the same digits on every engine. Math.exp and Math.log are the same functions in every V8 of Node 20 to 24;
 * `**` is not: those of Node 22 and 24 differ in the last place. A square may be written as `x ** 2`, which all compute as a
 * product; test/same-digits.test.ts finds every other.
 */

/** xⁿ by multiplication, for a small whole n. */
export function wholePower(x: number, n: number): number {
  if (n < 0) return 1 / wholePower(x, -n);
  let product = 1;
  for (let i = 0; i < n; i++) product *= x;
  return product;
}

/** x to any power, for x ≥ 0; its relative error grows with |exponent · log x|. */
export function realPower(x: number, exponent: number): number {
  return exponent === 0 ? 1 : Math.exp(exponent * Math.log(x));
}
