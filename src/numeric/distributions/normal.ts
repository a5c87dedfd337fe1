import erfc from "@stdlib/math-base-special-erfc";
import erfcinv from "@stdlib/math-base-special-erfcinv";
import { requireNumber, requireProbability } from "../domain.ts";

const oneOverSqrtTwoPi = 1 / Math.sqrt(2 * Math.PI);

/**
 * Density of the standard normal distribution at `x`: exp(−x²/2)/√(2π).
 *
 * @param x any number; ±Infinity gives 0
 * @throws NumericalError when x is NaN
 */
export function normalDensity(x: number): number {
  requireNumber("normalDensity", "x", x);
  return oneOverSqrtTwoPi * Math.exp(-0.5 * x * x);
}

/**
 * Chance that a standard normal variable is at most `x`: erfc(−x/√2)/2.
 *
 * @param x any number; ±Infinity gives 0 or 1
 * @throws NumericalError when x is NaN
 */
export function normalLowerTail(x: number): number {
  requireNumber("normalLowerTail", "x", x);
  return 0.5 * erfc(-x * Math.SQRT1_2);
}

/**
 * Chance that a standard normal variable is above `x`. Accurate where 1 − lower tail would be lost to rounding.
 *
 * @param x any number; ±Infinity gives 1 or 0
 * @throws NumericalError when x is NaN
 */
export function normalUpperTail(x: number): number {
  requireNumber("normalUpperTail", "x", x);
  return 0.5 * erfc(x * Math.SQRT1_2);
}

/**
 * The value a standard normal variable stays below with chance `p`.
 *
 * @param p lower-tail probability, 0 < p < 1
 * @throws NumericalError when p is outside (0, 1)
 */
export function normalQuantile(p: number): number {
  requireProbability("normalQuantile", "p", p);
  return -Math.SQRT2 * erfcinv(2 * p);
}
