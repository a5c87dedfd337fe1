import { NumericalError } from "../errors/errors.ts";
import { polynomial } from "./rational.ts";
import { logOnePlusMinus, logRatioMinus, stirlingRemainder } from "./special-functions.ts";
import { chanceAbove } from "./standard-normal.ts";

/** Above this shape the series would take thousands of terms, and the asymptotic expansion is exact. */
const largeShape = 1e6;

/** At the largest shape left to them, series and fraction end after about √(74·shape) terms. */
const mostTerms = 20_000;

/**
 * Regularised incomplete gamma function P(a, x), or its complement Q(a, x) for the upper side: a power series up to
 * x = a + 1, a continued fraction above, Temme's uniform expansion for a beyond a million.
 *
 * @param a shape, finite and above 0
 * @param x finite, above 0
 * @param side which of the two is wanted
 * @throws NumericalError when it does not converge
 * Source NIST Digital Library of Mathematical Functions, 8.11.4 (series), 8.9.2 (fraction), 8.12.3–8.12.10 (expansion)
 */
export function incompleteGamma(a: number, x: number, side: "lower" | "upper"): number {
  // So far above its mean that even the ratio of the two is no number.
  if (x / a === Number.POSITIVE_INFINITY) return side === "lower" ? 1 : 0;
  if (a > largeShape) return expansion(a, x, side);
  if (x < a + 1) {
    const lower = Math.min(1, gammaFront(a, x) * series(a, x));
    return side === "lower" ? lower : 1 - lower;
  }
  const upper = Math.min(1, gammaFront(a, x) * a * fraction(a, x));
  return side === "upper" ? upper : 1 - upper;
}

/**
 * x^a·e^−x/Γ(a + 1), arranged so that the huge powers cancel before they are computed. Times a it is the density of
 * ln X for a gamma variable X of shape a.
 */
export function gammaFront(a: number, x: number): number {
  const drop = a * logRatioMinus(x / a, (x - a) / a);
  return Math.exp(drop - stirlingRemainder(a)) / Math.sqrt(2 * Math.PI * a);
}

/** 1 + x/(a + 1) + x²/((a + 1)(a + 2)) + … */
function series(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; n < mostTerms; n++) {
    term *= x / (a + n);
    sum += term;
    if (term < 1e-17 * sum) return sum;
  }
  throw notConverged(a, x);
}

/** 1/(x + 1 − a − 1(1 − a)/(x + 3 − a − 2(2 − a)/(x + 5 − a − …))), by Lentz's method. */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = Number.POSITIVE_INFINITY;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < mostTerms; n++) {
    const numerator = n * (a - n);
    b += 2;
    d = 1 / (b + numerator * d);
    c = b + numerator / c;
    const factor = c * d;
    value *= factor;
    if (Math.abs(factor - 1) < 3e-16) return value;
  }
  throw notConverged(a, x);
}

/** Two terms of the uniform expansion; so large a shape leaves the third below 1e-18. */
function expansion(a: number, x: number, side: "lower" | "upper"): number {
  const relative = (x - a) / a;
  if (relative === -1) return side === "lower" ? 0 : 1;
  const halfSquare = -logOnePlusMinus(relative);
  const eta = Math.sign(relative) * Math.sqrt(2 * halfSquare);
  const first = Math.abs(eta) > 0.02 ? 1 / relative - 1 / eta : polynomial(firstSeries, eta);
  const correction =
    (Math.exp(-a * halfSquare) / Math.sqrt(2 * Math.PI * a)) *
    (first + polynomial(secondSeries, eta) / a);
  const reach = eta * Math.sqrt(a);
  return side === "lower" ? chanceAbove(-reach) - correction : chanceAbove(reach) + correction;
}

const firstSeries = [-139 / 777600, 1 / 2835, 1 / 864, -2 / 135, 1 / 12, -1 / 3];
const secondSeries = [25 / 12096, -1 / 288, -1 / 540];

function notConverged(a: number, x: number): NumericalError {
  return new NumericalError(`Incomplete gamma function: no convergence at shape ${a}, x ${x}.`);
}
