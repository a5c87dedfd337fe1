import { NumericalError } from "../../errors/errors.ts";
import { requireFinite, requireNumber, requirePositiveOrInfinite } from "../domain.ts";
import { chanceAbove } from "../standard-normal.ts";
import { normalLowerTail } from "./normal.ts";
import { smoothChiMean } from "./smooth-chi-mixture.ts";

/**
 * Chance that a noncentral t variable (Z + noncentrality)/S is at most `x`, Z standard normal and S² a chi-squared
 * variable over its df: the mean of Φ(x·S − noncentrality) over S.
 *
 * @param x any number; ±Infinity gives 0 or 1
 * @param df degrees of freedom, above 0, need not be whole; Infinity means the shifted normal distribution
 * @param noncentrality within ±1e150
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
 * @param noncentrality within ±1e150
 * @throws NumericalError when an argument is out of range
 */
export function noncentralTUpperTail(x: number, df: number, noncentrality: number): number {
  check("noncentralTUpperTail", x, df, noncentrality);
  return lowerTail(-x, df, -noncentrality);
}

/** From here on the deviation is 1 to more digits than a number has. */
const practicallyInfinite = 1e34;
/** The square of a larger one is no number. */
const farthest = 1e150;

function lowerTail(x: number, df: number, noncentrality: number): number {
  if (x === Number.POSITIVE_INFINITY) return 1;
  if (x === Number.NEGATIVE_INFINITY) return 0;
  if (x === 0) return normalLowerTail(-noncentrality);
  if (df > practicallyInfinite) return normalLowerTail(x - noncentrality);
  const chance = (deviation: number) => chanceAbove(noncentrality - x * deviation);
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
  if (Math.abs(noncentrality) > farthest)
    throw new NumericalError(
      `${routine}: noncentrality is ${noncentrality}; it must be within ±${farthest}.`,
    );
}
