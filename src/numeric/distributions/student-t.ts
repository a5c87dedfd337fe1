import {
  finiteResult,
  requireNumber,
  requirePositiveOrInfinite,
  requireProbability,
} from "../domain.ts";
import { betaOdds, incompleteBeta } from "../incomplete-beta.ts";
import { keptOfTwo } from "../kept.ts";
import { stirlingRemainder } from "../special-functions.ts";
import { normalDensity, normalLowerTail, normalQuantile } from "./normal.ts";

/** From here on t and the normal distribution are the same double wherever their tails are above 1e-300. */
const asGoodAsNormal = 1e20;

/**
 * Density of Student's t distribution at `x`.
 *
 * @param x any number; ±Infinity gives 0
 * @param df degrees of freedom, above 0, need not be whole; Infinity means the normal distribution
 * @throws NumericalError when x is NaN or df is not above 0
 */
export function studentTDensity(x: number, df: number): number {
  check("studentTDensity", x, df);
  if (df > asGoodAsNormal) return normalDensity(x);
  // Γ((df+1)/2)/Γ(df/2) by Stirling's remainders: the plain difference of log-gammas loses a digit per decade of df.
  const half = 0.5 * df;
  const logRatio =
    half * Math.log1p(0.5 / half) -
    0.5 +
    stirlingRemainder(half + 0.5) -
    stirlingRemainder(half) -
    0.5 * Math.log(2 * Math.PI);
  return Math.exp(logRatio - (half + 0.5) * Math.log1p((x * x) / df));
}

/**
 * Chance that a t variable is at most `x`.
 *
 * @param x any number; ±Infinity gives 0 or 1
 * @param df degrees of freedom, above 0, need not be whole; Infinity means the normal distribution
 * @throws NumericalError when x is NaN or df is not above 0
 */
export function studentTLowerTail(x: number, df: number): number {
  check("studentTLowerTail", x, df);
  return lowerTail(x, df);
}

/**
 * Chance that a t variable is above `x`. Accurate where 1 − lower tail would be lost to rounding.
 *
 * @param x any number; ±Infinity gives 1 or 0
 * @param df degrees of freedom, above 0, need not be whole; Infinity means the normal distribution
 * @throws NumericalError when x is NaN or df is not above 0
 */
export function studentTUpperTail(x: number, df: number): number {
  check("studentTUpperTail", x, df);
  return lowerTail(-x, df);
}

/**
 * Two-sided p-value of a t statistic: the chance of a value at least as far from 0 as `x`, on either side.
 *
 * @param x the t statistic, any number
 * @param df degrees of freedom, above 0, need not be whole; Infinity means the normal distribution
 * @throws NumericalError when x is NaN or df is not above 0
 */
export function studentTTwoSided(x: number, df: number): number {
  check("studentTTwoSided", x, df);
  return 2 * lowerTail(-Math.abs(x), df);
}

/**
 * The value a t variable stays below with chance `p`; for a two-sided interval of level L use p = (1 + L)/2.
 *
 * @param p lower-tail probability, 0 < p < 1
 * @param df degrees of freedom, above 0, need not be whole; Infinity means the normal distribution
 * @throws NumericalError when p is outside (0, 1), df is not above 0, or the quantile is too large for a number
 * Source Wallace 1959, Annals of Mathematical Statistics 30, 1121–1130 (the start of the search)
 */
export function studentTQuantile(p: number, df: number): number {
  requireProbability("studentTQuantile", "p", p);
  requirePositiveOrInfinite("studentTQuantile", "df", df);
  return quantileOf(df, p);
}

/** Every interval asks for one, by few levels and by degrees of freedom that return from answer to answer. */
const quantileOf = keptOfTwo((df, p) => {
  if (df > asGoodAsNormal) return normalQuantile(p);
  if (p === 0.5) return 0;
  const outside = 2 * (p > 0.5 ? 1 - p : p);
  const inside = Math.abs(2 * p - 1);
  const start = logOddsGuess(normalQuantile(p), df);
  const odds =
    inside < 0.5
      ? betaOdds("lower", inside, 0.5, 0.5 * df, start)
      : betaOdds("upper", outside, 0.5, 0.5 * df, start);
  const size = finiteResult("studentTQuantile", Math.sqrt(df * odds));
  return p > 0.5 ? size : -size;
});

/** ln(t²/df) by Wallace's approximation, which turns a normal quantile into one of t. */
function logOddsGuess(z: number, df: number): number {
  const exponent = (z * ((8 * df + 3) / (8 * df + 1))) ** 2 / df;
  return exponent > 30 ? exponent : Math.log(Math.expm1(exponent));
}

/** P(T ≤ x) through the incomplete beta function of x²/(df + x²). */
function lowerTail(x: number, df: number): number {
  if (df > asGoodAsNormal) return normalLowerTail(x);
  const odds = (x / df) * x;
  const outer =
    odds === Number.POSITIVE_INFINITY
      ? 0
      : 0.5 * incompleteBeta(odds / (1 + odds), 1 / (1 + odds), 0.5, 0.5 * df, "upper");
  return x > 0 ? 1 - outer : outer;
}

function check(routine: string, x: number, df: number): void {
  requireNumber(routine, "x", x);
  requirePositiveOrInfinite(routine, "df", df);
}
