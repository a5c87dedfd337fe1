import stdlibDigamma from "@stdlib/math-base-special-digamma";
import gammaln from "@stdlib/math-base-special-gammaln";
import stdlibTrigamma from "@stdlib/math-base-special-trigamma";
import { finiteResult, requirePositive } from "./domain.ts";

/**
 * Natural logarithm of the gamma function.
 *
 * @param x finite, above 0
 * @throws NumericalError when x is out of range or the result overflows
 */
export function logGamma(x: number): number {
  requirePositive("logGamma", "x", x);
  return finiteResult("logGamma", gammaln(x));
}

/**
 * Digamma function, the first derivative of the log-gamma function.
 *
 * @param x finite, above 0
 * @throws NumericalError when x is out of range or the result overflows
 */
export function digamma(x: number): number {
  requirePositive("digamma", "x", x);
  return finiteResult("digamma", stdlibDigamma(x));
}

/**
 * Trigamma function, the second derivative of the log-gamma function: the variance of ln of a gamma variable of shape x.
 *
 * @param x finite, above 0
 * @throws NumericalError when x is out of range or the result overflows
 */
export function trigamma(x: number): number {
  requirePositive("trigamma", "x", x);
  return finiteResult("trigamma", stdlibTrigamma(x));
}

/**
 * What Stirling's formula leaves of the log-gamma function: ln Γ(x) − (x − ½) ln x + x − ½ ln 2π. It lets products of
 * a gamma function and a power stay accurate at large x, where both are huge and cancel.
 *
 * @param x finite, above 0
 * @throws NumericalError when x is out of range
 * Source Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 6.1.41 (the series, used from x = 15)
 */
export function stirlingRemainder(x: number): number {
  requirePositive("stirlingRemainder", "x", x);
  if (x < 15) return gammaln(x) - (x - 0.5) * Math.log(x) + x - halfLogTwoPi;
  const square = x * x;
  return (
    (1 / 12 - (1 / 360 - (1 / 1260 - (1 / 1680 - 1 / 1188 / square) / square) / square) / square) /
    x
  );
}

/**
 * ln(1 + x) − x without cancellation near 0; it is −x²/2 to first order.
 *
 * @param x above −1
 */
export function logOnePlusMinus(x: number): number {
  if (x < -0.4 || x > 0.6) return Math.log1p(x) - x;
  // ln(1 + x) = 2 artanh(r) with r = x/(2 + x), and 2r − x = −x r exactly, which removes the cancelling term.
  const r = x / (2 + x);
  const square = r * r;
  let sum = 0;
  for (let k = 25; k >= 3; k -= 2) sum = sum * square + 1 / k;
  return r * (2 * square * sum - x);
}

/**
 * ln(ratio) − excess, where excess is ratio − 1 computed apart so that it keeps its digits near 0.
 *
 * @param ratio above 0
 * @param excess ratio − 1
 */
export function logRatioMinus(ratio: number, excess: number): number {
  return Math.abs(excess) < 0.4 ? logOnePlusMinus(excess) : Math.log(ratio) - excess;
}

const halfLogTwoPi = 0.5 * Math.log(2 * Math.PI);
