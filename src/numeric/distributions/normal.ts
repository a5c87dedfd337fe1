import { requireNumber, requireProbability } from "../domain.ts";
import { chanceAbove, density, quantile } from "../standard-normal.ts";

/**
 * Density of the standard normal distribution at `x`: exp(−x²/2)/√(2π).
 *
 * @param x any number; ±Infinity gives 0
 * @throws NumericalError when x is NaN
 */
export function normalDensity(x: number): number {
  requireNumber("normalDensity", "x", x);
  return density(x);
}

/**
 * Chance that a standard normal variable is at most `x`.
 *
 * @param x any number; ±Infinity gives 0 or 1
 * @throws NumericalError when x is NaN
 */
export function normalLowerTail(x: number): number {
  requireNumber("normalLowerTail", "x", x);
  return chanceAbove(-x);
}

/**
 * Chance that a standard normal variable is above `x`. Accurate where 1 − lower tail would be lost to rounding.
 *
 * @param x any number; ±Infinity gives 1 or 0
 * @throws NumericalError when x is NaN
 */
export function normalUpperTail(x: number): number {
  requireNumber("normalUpperTail", "x", x);
  return chanceAbove(x);
}

/**
 * The value a standard normal variable stays below with chance `p`.
 *
 * @param p lower-tail probability, 0 < p < 1
 * @throws NumericalError when p is outside (0, 1)
 */
export function normalQuantile(p: number): number {
  requireProbability("normalQuantile", "p", p);
  return quantile(p);
}
