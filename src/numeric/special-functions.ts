import { at } from "../errors/at.ts";
import { finiteResult, requirePositive } from "./domain.ts";
import { wholePower } from "./powers.ts";

/** Below this x the asymptotic series would fall short of a double's digits; the functions are shifted up to it first. */
const seriesFrom = 10;

/** Bernoulli numbers B₂, B₄, …, B₁₆. */
const bernoulli = [1 / 6, -1 / 30, 1 / 42, -1 / 30, 5 / 66, -691 / 2730, 7 / 6, -3617 / 510];
const ofStirling = bernoulli.map((number, i) => number / ((2 * i + 2) * (2 * i + 1)));
const ofTetragamma = bernoulli.map((number, i) => number * (2 * i + 3));
const ofDigamma = bernoulli.map((number, i) => number / (2 * i + 2));

/** Σ cₖ/x^2k over k = 1, 2, … */
function inverseSquares(coefficients: readonly number[], x: number): number {
  const square = x * x;
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = (sum + at(coefficients, i)) / square;
  return sum;
}

/**
 * ln x − ψ(x), ψ being the digamma function: how far the mean of ln of a gamma variable of shape x lies below ln of its
 * mean. Computed as such, because the plain difference loses a digit per decade of x.
 *
 * @param x finite, above 0
 * @throws NumericalError when x is out of range or the result overflows
 * Source Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 6.3.5 (the shift) and 6.3.18 (the series)
 */
export function logMinusDigamma(x: number): number {
  requirePositive("logMinusDigamma", "x", x);
  let [shift, shifted] = [0, x];
  for (; shifted < seriesFrom; shifted++) shift -= logOnePlusMinus(1 / shifted);
  const series = 0.5 / shifted + inverseSquares(ofDigamma, shifted);
  return finiteResult("logMinusDigamma", shift + series);
}

/**
 * Trigamma function, the second derivative of the log-gamma function: the variance of ln of a gamma variable of shape x.
 *
 * @param x finite, above 0
 * @throws NumericalError when x is out of range or the result overflows
 * Source Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 6.4.6 (the shift) and 6.4.12 (the series)
 */
export function trigamma(x: number): number {
  requirePositive("trigamma", "x", x);
  let [shift, shifted] = [0, x];
  for (; shifted < seriesFrom; shifted++) shift += 1 / (shifted * shifted);
  const series = (1 + 0.5 / shifted + inverseSquares(bernoulli, shifted)) / shifted;
  return finiteResult("trigamma", shift + series);
}

/**
 * Tetragamma function, the derivative of trigamma; below 0 everywhere.
 *
 * @param x finite, above 0
 * @throws NumericalError when x is out of range or the result overflows
 * Source Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 6.4.6 (the shift) and 6.4.13 (the series)
 */
export function tetragamma(x: number): number {
  requirePositive("tetragamma", "x", x);
  let [shift, shifted] = [0, x];
  for (; shifted < seriesFrom; shifted++) shift -= 2 / wholePower(shifted, 3);
  const series = (1 + 1 / shifted + inverseSquares(ofTetragamma, shifted)) / shifted ** 2;
  return finiteResult("tetragamma", shift - series);
}

/**
 * What Stirling's formula leaves of the log-gamma function: ln Γ(x) − (x − ½) ln x + x − ½ ln 2π. It lets products of
 * a gamma function and a power stay accurate at large x, where both are huge and cancel.
 *
 * @param x finite, above 0
 * @throws NumericalError when x is out of range
 * Source Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 6.1.15 (the shift) and 6.1.41 (the series)
 */
export function stirlingRemainder(x: number): number {
  requirePositive("stirlingRemainder", "x", x);
  const steps = Math.max(0, Math.ceil(seriesFrom - x));
  const shifted = x + steps;
  const series = shifted * inverseSquares(ofStirling, shifted);
  if (steps === 0) return series;
  // The factors x(x + 1)… of the shift, each as a share of where it ends, so that one small logarithm serves them all.
  let share = 1;
  for (let k = 0; k < steps; k++) share *= (x + k) / shifted;
  return series + (x - 0.5) * Math.log(shifted / x) - steps - Math.log(share);
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
