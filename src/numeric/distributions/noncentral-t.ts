import erfc from "@stdlib/math-base-special-erfc";
import {
  finiteResult,
  requireFinite,
  requireNumber,
  requirePositiveOrInfinite,
  requireProbability,
} from "../domain.ts";
import { bracketRoot, findRoot } from "../roots.ts";
import { normalLowerTail, normalQuantile } from "./normal.ts";
import { smoothChiMean } from "./smooth-chi-mixture.ts";

/**
 * Chance that a noncentral t variable (Z + noncentrality)/S is at most `x`, Z standard normal and S² a chi-squared
 * variable over its df: the mean of Φ(x·S − noncentrality) over S.
 *
 * @param x any number; ±Infinity gives 0 or 1
 * @param df degrees of freedom, above 0, need not be whole; Infinity means the shifted normal distribution
 * @param noncentrality finite, either sign
 * @throws NumericalError when an argument is out of range
 */
export function noncentralTLowerTail(x: number, df: number, noncentrality: number): number {
  check("noncentralTLowerTail", x, df, noncentrality);
  return lowerTail(x, df, noncentrality);
}

/**
 * Chance that a noncentral t variable is above `x`. Accurate where 1 − lower tail would be lost to rounding.
 *
 * @param x any number; ±Infinity gives 1 or 0
 * @param df degrees of freedom, above 0, need not be whole; Infinity means the shifted normal distribution
 * @param noncentrality finite, either sign
 * @throws NumericalError when an argument is out of range
 */
export function noncentralTUpperTail(x: number, df: number, noncentrality: number): number {
  check("noncentralTUpperTail", x, df, noncentrality);
  return lowerTail(-x, df, -noncentrality);
}

/**
 * The value a noncentral t variable stays below with chance `p`; one-sided tolerance factors are such quantiles.
 *
 * @param p lower-tail probability, 0 < p < 1
 * @param df degrees of freedom, above 0, need not be whole; Infinity means the shifted normal distribution
 * @param noncentrality finite, either sign
 * @throws NumericalError when an argument is out of range or the quantile is too large for a number
 */
export function noncentralTQuantile(p: number, df: number, noncentrality: number): number {
  requireProbability("noncentralTQuantile", "p", p);
  requirePositiveOrInfinite("noncentralTQuantile", "df", df);
  requireFinite("noncentralTQuantile", "noncentrality", noncentrality);
  if (df === Number.POSITIVE_INFINITY) return noncentrality + normalQuantile(p);
  if (p > 0.5) return -lowerQuantile(1 - p, df, -noncentrality);
  return lowerQuantile(p, df, noncentrality);
}

/**
 * Quantile for p up to a half. The search runs over arsinh(x), which turns the many decades that a small df can need
 * into a short range, and on the log of the tail, which is nearly straight there.
 */
function lowerQuantile(p: number, df: number, noncentrality: number): number {
  const excess = (v: number) =>
    Math.log(Math.max(lowerTail(Math.sinh(v), df, noncentrality), Number.MIN_VALUE) / p);
  const centre = Math.asinh(noncentrality + normalQuantile(p));
  const { lower, upper } = bracketRoot(excess, centre - 0.25, centre + 0.25);
  return finiteResult("noncentralTQuantile", Math.sinh(findRoot(excess, lower, upper)));
}

function lowerTail(x: number, df: number, noncentrality: number): number {
  if (x === Number.POSITIVE_INFINITY) return 1;
  if (x === Number.NEGATIVE_INFINITY) return 0;
  if (x === 0) return normalLowerTail(-noncentrality);
  if (df === Number.POSITIVE_INFINITY) return normalLowerTail(x - noncentrality);
  const chance = (deviation: number) => 0.5 * erfc((noncentrality - x * deviation) * Math.SQRT1_2);
  const landscape = { peak: tailPeak(x, df, noncentrality), sharpness: noncentrality ** 2 };
  return Math.min(1, smoothChiMean(chance, df, landscape));
}

/**
 * Where the density times Φ(x·S − noncentrality) is highest while Φ is small and so like exp(−(x·S − noncentrality)²/2):
 * the root of (df + x²)·S² − noncentrality·x·S − df = 0. While Φ is near 1 the peak is at 1, to its right.
 */
function tailPeak(x: number, df: number, noncentrality: number): number {
  const half = (0.5 * noncentrality * x) / (df + x * x);
  const product = df / (df + x * x);
  const root = Math.sqrt(half * half + product);
  return half > 0 ? half + root : product / (root - half);
}

function check(routine: string, x: number, df: number, noncentrality: number): void {
  requireNumber(routine, "x", x);
  requirePositiveOrInfinite(routine, "df", df);
  requireFinite(routine, "noncentrality", noncentrality);
}
