import { NumericalError } from "../errors/errors.ts";
import { betaExpansion } from "./beta-expansion.ts";
import { keptOfTwo } from "./kept.ts";
import { findLogTail } from "./log-tail-newton.ts";
import {
  logMinusDigamma,
  logRatioMinus,
  stirlingRemainder,
  trigamma,
} from "./special-functions.ts";
import { quantile } from "./standard-normal.ts";

/** Where both shapes are above this, the fraction would take many terms, and the asymptotic expansion is exact. */
const largeShape = 1e8;

/** Left to the fraction, the smaller shape decides: it ends after about √(74·min(a, b)) terms. */
const mostTerms = 1_000_000;

/**
 * Regularised incomplete beta function I_x(a, b), or its complement for the upper side, from whichever end is nearer: by
 * the continued fraction that converges for x below its mean, or by the uniform expansion where both shapes are huge.
 *
 * @param x from 0 to 1
 * @param y 1 − x, given apart so that neither end loses digits
 * @param a above 0
 * @param b above 0
 * @param side which of the two is wanted
 * @param excess x·b − y·a, where a caller knows it better than x and y can tell: it decides between huge shapes
 * @throws NumericalError when it does not converge
 * Source DiDonato and Morris 1992, ACM Transactions on Mathematical Software 18, 360–373 (algorithm 708), equation 9
 */
export function incompleteBeta(
  x: number,
  y: number,
  a: number,
  b: number,
  side: "lower" | "upper",
  excess = x * b - y * a,
): number {
  // Written so that exchanging the ends exchanges the two products: rounding can never call both ends the far one.
  if (x * (b + 1) > y * (a + 1)) {
    return incompleteBeta(y, x, b, a, side === "lower" ? "upper" : "lower", -excess);
  }
  if (x === 0) return side === "lower" ? 0 : 1;
  if (Math.min(a, b) > largeShape) return betaExpansion(a, b, excess, side);
  const lower = Math.min(1, betaFront(x, y, a, b, excess) / fraction(x, y, a, b, excess));
  return side === "lower" ? lower : 1 - lower;
}

/**
 * Odds x/(1 − x) at which one tail of a beta variable has a given chance.
 *
 * @param side and chance which tail, and its chance, above 0
 * @param start first guess of ln of the odds
 * @returns the odds; 0, Infinity or NaN when a number cannot hold them
 */
export function betaOdds(
  side: "lower" | "upper",
  chance: number,
  a: number,
  b: number,
  start: number,
): number {
  const logOdds = findLogTail(
    Math.min(Math.max(start, -700), 700),
    chance,
    side,
    (v) => incompleteBeta(1 / (1 + Math.exp(-v)), 1 / (1 + Math.exp(v)), a, b, side),
    (v) => betaFront(1 / (1 + Math.exp(-v)), 1 / (1 + Math.exp(v)), a, b),
  );
  return Math.exp(logOdds);
}

/**
 * Odds x/(1 − x) of the beta quantile, from a normal distribution with the mean and variance of ln of the odds on.
 *
 * @param p lower-tail probability, 0 < p < 1
 * @returns the odds; 0, Infinity or NaN when a number cannot hold them
 */
export function betaOddsQuantile(p: number, a: number, b: number): number {
  const spread = Math.sqrt(trigamma(a) + trigamma(b));
  // So huge a pair of shapes leaves nothing but that normal distribution, and less spread than a search could resolve.
  if (Math.min(a, b) > 1e16) return (a / b) * Math.exp(quantile(p) * spread);
  const middle = Math.log(a / b) - logMinusDigamma(a) + logMinusDigamma(b);
  const start = middle + quantile(p) * spread;
  return p > 0.5 ? betaOdds("upper", 1 - p, a, b, start) : betaOdds("lower", p, a, b, start);
}

/**
 * x^a·y^b/B(a, b), arranged so that the huge powers cancel before they are computed. It is the density of ln(X/(1 − X))
 * for a beta variable X.
 */
function betaFront(x: number, y: number, a: number, b: number, excess = x * b - y * a): number {
  const whole = a + b;
  const drop =
    a * logRatioMinus((x * whole) / a, excess / a) +
    b * logRatioMinus((y * whole) / b, -excess / b);
  const remainder = remainderOf(Math.max(a, b), Math.min(a, b));
  return Math.sqrt((a * b) / (2 * Math.PI * whole)) * Math.exp(drop + remainder);
}

/** What Stirling's formula leaves of 1/B(a, b): the same for every x, and of Student's t one shape is always ½. */
const remainderOf = keptOfTwo(
  (a, b) => stirlingRemainder(a + b) - stirlingRemainder(a) - stirlingRemainder(b),
);

/** β₀ + α₁/(β₁ + α₂/(β₂ + …)) of DiDonato and Morris, by Lentz's method; x near 1 enters through y and keeps its digits. */
function fraction(x: number, y: number, a: number, b: number, excess: number): number {
  const drift = 1 - excess;
  let value = (a / (a + 1)) * drift;
  let c = value;
  let d = 0;
  for (let m = 1; m < mostTerms; m++) {
    const middle = a + 2 * m - 1;
    // Each huge shape meets its small x first, so that no product overflows.
    const [bx, wholeX] = [((b - m) * x) / middle, ((a + b + m - 1) * x) / middle];
    const alpha = (a + m - 1) * m * bx * wholeX;
    const beta = m + m * bx + ((a + m) / (a + 2 * m + 1)) * (drift + m * (1 + y));
    d = 1 / (beta + alpha * d);
    c = beta + alpha / c;
    const factor = c * d;
    value *= factor;
    if (Math.abs(factor - 1) < 3e-16) return value;
  }
  throw new NumericalError(
    `Incomplete beta function: no convergence at shapes ${a} and ${b}, x ${x}.`,
  );
}
