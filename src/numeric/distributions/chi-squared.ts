import { positiveResult, requireNumber, requirePositive, requireProbability } from "../domain.ts";
import { gammaFront, incompleteGamma } from "../incomplete-gamma.ts";
import { keptOfTwo } from "../kept.ts";
import { findLogTail } from "../log-tail-newton.ts";
import { wholePower } from "../powers.ts";
import { normalQuantile } from "./normal.ts";

/**
 * Chance that a chi-squared variable is at most `x`: the regularised lower incomplete gamma function P(df/2, x/2).
 *
 * @param x any number; below 0 gives 0, Infinity gives 1
 * @param df degrees of freedom, finite and above 0, need not be whole
 * @throws NumericalError when x is NaN or df is out of range
 */
export function chiSquaredLowerTail(x: number, df: number): number {
  check("chiSquaredLowerTail", x, df);
  if (x <= 0) return 0;
  if (x === Number.POSITIVE_INFINITY) return 1;
  return incompleteGamma(0.5 * df, 0.5 * x, "lower");
}

/**
 * Chance that a chi-squared variable is above `x`: the regularised upper incomplete gamma function Q(df/2, x/2),
 * accurate where 1 − lower tail would be lost to rounding.
 *
 * @param x any number; below 0 gives 1, Infinity gives 0
 * @param df degrees of freedom, finite and above 0, need not be whole
 * @throws NumericalError when x is NaN or df is out of range
 */
export function chiSquaredUpperTail(x: number, df: number): number {
  check("chiSquaredUpperTail", x, df);
  if (x <= 0) return 1;
  if (x === Number.POSITIVE_INFINITY) return 0;
  return incompleteGamma(0.5 * df, 0.5 * x, "upper");
}

/**
 * The value a chi-squared variable stays below with chance `p`. Newton's method for ln of the nearer tail as a function
 * of ln x: that function is concave, so the steps cannot wander off. Starts from Wilson and Hilferty's cube.
 *
 * @param p lower-tail probability, 0 < p < 1
 * @param df degrees of freedom, finite and above 0, need not be whole
 * @throws NumericalError when an argument is outside its range or the quantile is too small for a number
 * Source Wilson and Hilferty 1931, Proceedings of the National Academy of Sciences 17, 684–688 (the start)
 */
export function chiSquaredQuantile(p: number, df: number): number {
  requireProbability("chiSquaredQuantile", "p", p);
  requirePositive("chiSquaredQuantile", "df", df);
  return quantileOf(p, df);
}

/** Means and limits over what a spread may be ask for the same grid of chances again and again. */
const quantileOf = keptOfTwo((p, df) => {
  const found = p > 0.5 ? exceededWith(1 - p, df, "upper") : exceededWith(p, df, "lower");
  return positiveResult("chiSquaredQuantile", found);
});

/**
 * The value a chi-squared variable exceeds with chance `p`: the quantile of 1 − p, without the subtraction.
 *
 * @param p upper-tail probability, 0 < p < 1
 * @param df degrees of freedom, finite and above 0, need not be whole
 * @throws NumericalError when an argument is outside its range or the quantile is too small for a number
 */
export function chiSquaredUpperQuantile(p: number, df: number): number {
  requireProbability("chiSquaredUpperQuantile", "p", p);
  requirePositive("chiSquaredUpperQuantile", "df", df);
  const found = p > 0.5 ? exceededWith(1 - p, df, "lower") : exceededWith(p, df, "upper");
  return positiveResult("chiSquaredUpperQuantile", found);
}

/** Where the tail of a side has a chance of at most one half. */
function exceededWith(chance: number, df: number, side: "lower" | "upper"): number {
  const shape = 0.5 * df;
  const z = side === "lower" ? normalQuantile(chance) : -normalQuantile(chance);
  const cube = 1 - 1 / (9 * shape) + z / Math.sqrt(9 * shape);
  if (shape > cubeIsExact) return df * wholePower(cube, 3);
  const start = cube > 0.3 ? Math.log(shape) + 3 * Math.log(cube) : nearZero(chance, shape, side);
  const logHalf = findLogTail(
    start,
    chance,
    side,
    (v) => incompleteGamma(shape, Math.exp(v), side),
    (v) => shape * gammaFront(shape, Math.exp(v)),
  );
  return 2 * Math.exp(logHalf);
}

/** The cube's error is of the order z³/shape^1.5; a search on ln x would round more than that. */
const cubeIsExact = 1e12;

/** ln of half the quantile from the first term of the series: P(a, x) is about x^a/Γ(a + 1), and gammaFront(a, 1) is e^−1/Γ(a + 1). */
function nearZero(chance: number, shape: number, side: "lower" | "upper"): number {
  const lower = side === "lower" ? chance : 1 - chance;
  return Math.max(-700, (Math.log(lower) - Math.log(gammaFront(shape, 1)) - 1) / shape);
}

function check(routine: string, x: number, df: number): void {
  requireNumber(routine, "x", x);
  requirePositive(routine, "df", df);
}
