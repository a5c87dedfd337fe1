import {
  positiveResult,
  requireNumber,
  requirePositive,
  requirePositiveOrInfinite,
  requireProbability,
} from "../domain.ts";
import { betaOddsQuantile, incompleteBeta } from "../incomplete-beta.ts";
import {
  chiSquaredLowerTail,
  chiSquaredQuantile,
  chiSquaredUpperQuantile,
  chiSquaredUpperTail,
} from "./chi-squared.ts";

/**
 * Chance that an F variable is at most `x`.
 *
 * @param x any number; below 0 gives 0, Infinity gives 1
 * @param df1 numerator degrees of freedom, finite and above 0, need not be whole
 * @param df2 denominator degrees of freedom, above 0; Infinity means chi-squared/df1
 * @throws NumericalError when x is NaN or a df is out of range
 */
export function fLowerTail(x: number, df1: number, df2: number): number {
  check("fLowerTail", x, df1, df2);
  return tail(x, df1, df2, "lower");
}

/**
 * Chance that an F variable is above `x`: the p-value of an F test. Accurate where 1 − lower tail would be lost to
 * rounding.
 *
 * @param x any number; below 0 gives 1, Infinity gives 0
 * @param df1 numerator degrees of freedom, finite and above 0, need not be whole
 * @param df2 denominator degrees of freedom, above 0; Infinity means chi-squared/df1
 * @throws NumericalError when x is NaN or a df is out of range
 */
export function fUpperTail(x: number, df1: number, df2: number): number {
  check("fUpperTail", x, df1, df2);
  return tail(x, df1, df2, "upper");
}

/**
 * The value an F variable stays below with chance `p`.
 *
 * @param p lower-tail probability, 0 < p < 1
 * @param df1 numerator degrees of freedom, finite and above 0, need not be whole
 * @param df2 denominator degrees of freedom, above 0; Infinity means chi-squared/df1
 * @throws NumericalError when an argument is out of range or the quantile is too large for a number
 */
export function fQuantile(p: number, df1: number, df2: number): number {
  requireProbability("fQuantile", "p", p);
  requirePositive("fQuantile", "df1", df1);
  requirePositiveOrInfinite("fQuantile", "df2", df2);
  if (swamps(df2, df1)) return chiSquaredQuantile(p, df1) / df1;
  if (swamps(df1, df2)) return positiveResult("fQuantile", df2 / chiSquaredUpperQuantile(p, df2));
  return positiveResult("fQuantile", (df2 / df1) * betaOddsQuantile(p, 0.5 * df1, 0.5 * df2));
}

/** Whether one variance is so well known beside the other that only the other's chi-squared is left of the ratio. */
function swamps(df: number, other: number): boolean {
  return df / 1e20 > Math.max(1, other);
}

/** One tail through the incomplete beta function of df1·x/(df1·x + df2), or the chi-squared it has become. */
function tail(x: number, df1: number, df2: number, side: "lower" | "upper"): number {
  if (x <= 0) return side === "upper" ? 1 : 0;
  if (swamps(df2, df1))
    return (side === "lower" ? chiSquaredLowerTail : chiSquaredUpperTail)(df1 * x, df1);
  if (swamps(df1, df2))
    return (side === "lower" ? chiSquaredUpperTail : chiSquaredLowerTail)(df2 / x, df2);
  const odds = (df1 / df2) * x;
  if (odds === Number.POSITIVE_INFINITY) return side === "upper" ? 0 : 1;
  const y = 1 / (1 + odds);
  // Of two huge df the digits of x − 1 are all that tells, and the share x/(1 + odds) has rounded them away.
  const excess = 0.5 * df1 * y * (x - 1);
  return incompleteBeta(odds * y, y, 0.5 * df1, 0.5 * df2, side, excess);
}

function check(routine: string, x: number, df1: number, df2: number): void {
  requireNumber(routine, "x", x);
  requirePositive(routine, "df1", df1);
  requirePositiveOrInfinite(routine, "df2", df2);
}
