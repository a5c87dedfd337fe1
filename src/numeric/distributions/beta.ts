import { positiveResult, requireNumber, requirePositive, requireProbability } from "../domain.ts";
import { betaOdds, incompleteBeta } from "../incomplete-beta.ts";
import { digamma, trigamma } from "../special-functions.ts";
import { normalQuantile } from "./normal.ts";

/**
 * Chance that a beta variable is at most `x`: the regularised incomplete beta function I_x(a, b).
 *
 * @param x any number; below 0 gives 0, above 1 gives 1
 * @param a first shape, above 0
 * @param b second shape, above 0
 * @throws NumericalError when x is NaN or a shape is not a finite number above 0
 */
export function betaLowerTail(x: number, a: number, b: number): number {
  check("betaLowerTail", x, a, b);
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  return incompleteBeta(x, 1 - x, a, b, "lower");
}

/**
 * Chance that a beta variable is above `x`: 1 − I_x(a, b), computed without the subtraction.
 *
 * @param x any number; below 0 gives 1, above 1 gives 0
 * @param a first shape, above 0
 * @param b second shape, above 0
 * @throws NumericalError when x is NaN or a shape is not a finite number above 0
 */
export function betaUpperTail(x: number, a: number, b: number): number {
  check("betaUpperTail", x, a, b);
  if (x <= 0) return 1;
  if (x >= 1) return 0;
  return incompleteBeta(x, 1 - x, a, b, "upper");
}

/**
 * The value a beta variable stays below with chance `p`.
 *
 * @param p lower-tail probability, 0 < p < 1
 * @param a first shape, above 0
 * @param b second shape, above 0
 * @throws NumericalError when an argument is outside its range
 */
export function betaQuantile(p: number, a: number, b: number): number {
  requireProbability("betaQuantile", "p", p);
  requirePositive("betaQuantile", "a", a);
  requirePositive("betaQuantile", "b", b);
  const odds = betaOddsQuantile(p, a, b);
  return positiveResult("betaQuantile", odds === Number.POSITIVE_INFINITY ? 1 : odds / (1 + odds));
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
  if (Math.min(a, b) > 1e16) return (a / b) * Math.exp(normalQuantile(p) * spread);
  const start = digamma(a) - digamma(b) + normalQuantile(p) * spread;
  return p > 0.5 ? betaOdds("upper", 1 - p, a, b, start) : betaOdds("lower", p, a, b, start);
}

function check(routine: string, x: number, a: number, b: number): void {
  requireNumber(routine, "x", x);
  requirePositive(routine, "a", a);
  requirePositive(routine, "b", b);
}
