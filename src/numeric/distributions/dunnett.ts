import { min } from "simple-statistics";
import { NumericalError } from "../../errors/errors.ts";
import {
  finiteResult,
  requireAtLeast,
  requireNumber,
  requirePositiveOrInfinite,
  requireProbability,
} from "../domain.ts";
import { groupBy } from "../group-by.ts";
import { bracketRoot, findRoot } from "../roots.ts";
import { chanceAbove, density } from "../standard-normal.ts";
import { smoothChiMean } from "./smooth-chi-mixture.ts";

/*
 * m comparisons with one reference share the reference's error Z: Tᵢ = (√(1 − λᵢ²)·εᵢ + λᵢ·Z)/S, so given Z and S they
 * are independent and the chance that all stay within ±d is a product. The integral over Z is done by equal steps,
 * which converge faster than any power of the step for such an integrand; the one over S by `smoothChiMean`.
 */
const farthest = 8.5;

/** Where quantiles end, somewhat before numbers do. */
const largest = 1e300;

/** Step in Z as a share of the narrowest own error √(1 − λ²), by which the chance changes from 0 to 1. */
const relativeStep = 0.35;

/** No finer steps than this: where the own error is narrower still, the mean over S smooths what they miss. */
const finestStep = 0.05;

/**
 * Chance that the largest |t| of several comparisons with one reference is above `d`: the p-value of Dunnett's
 * two-sided procedure. Accurate where 1 − lower tail would be lost to rounding.
 *
 * @param d any number; 0 or below gives 1, Infinity gives 0
 * @param loadings one per comparison, 0 <= loading < 1: the square root of the reference's share in its variance,
 *   √(v₀/(v₀ + vᵢ)) with v the squared standard error of a mean; above 0.999 only 3 digits are right
 * @param df degrees of freedom of the standard error, above 0, need not be whole; Infinity: it is known
 * @throws NumericalError when an argument is out of range
 * Source Dunnett 1955, Journal of the American Statistical Association 50, 1096–1121
 */
export function dunnettUpperTail(d: number, loadings: readonly number[], df: number): number {
  requireNumber("dunnettUpperTail", "d", d);
  checkShape("dunnettUpperTail", loadings, df);
  return upperTail(d, loadings, df);
}

/**
 * The value that the largest |t| of several comparisons with one reference stays below with chance `p`: the critical
 * value of Dunnett's two-sided procedure.
 *
 * @param p lower-tail probability, 1e-6 <= p < 1: below, the upper tail it is found from has no digits left for it
 * @param loadings as for `dunnettUpperTail`
 * @param df as for `dunnettUpperTail`, but at least 0.05: below, the walk to its far tail takes seconds
 * @throws NumericalError when an argument is out of range or the quantile is too large for a number
 */
export function dunnettQuantile(p: number, loadings: readonly number[], df: number): number {
  requireProbability("dunnettQuantile", "p", p);
  requireAtLeast("dunnettQuantile", "p", p, 1e-6);
  checkShape("dunnettQuantile", loadings, df);
  requireAtLeast("dunnettQuantile", "df", df, 0.05);
  const excess = (logD: number) =>
    Math.log(Math.max(upperTail(Math.exp(logD), loadings, df), Number.MIN_VALUE) / (1 - p));
  // Only with a share of a degree of freedom; where numbers end the tail falls to 0 at once, and that step is no root.
  if (df < 1 && excess(Math.log(largest)) > 0)
    return finiteResult("dunnettQuantile", Number.POSITIVE_INFINITY);
  const { lower, upper } = bracketRoot(excess, 0.7, 1.1);
  return finiteResult(
    "dunnettQuantile",
    Math.exp(findRoot(excess, lower, upper, { tolerance: 1e-13 })),
  );
}

function upperTail(d: number, loadings: readonly number[], df: number): number {
  if (d <= 0) return 1;
  if (d === Number.POSITIVE_INFINITY) return 0;
  const kinds = kindsOf(loadings);
  if (df === Number.POSITIVE_INFINITY) return chanceOutside(d, kinds);
  // Far out the chance falls like exp(−(d·S)²/2); with that for g the peak is here, and no sharper than the density.
  const peak = Math.sqrt(df / (df + d * d));
  const outside = (deviation: number) => chanceOutside(d * deviation, kinds);
  return Math.min(1, smoothChiMean(outside, df, { peak, sharpness: 0 }));
}

/** Comparisons with one loading, counted: with equal groups there is a single kind. */
interface Kind {
  readonly loading: number;
  /** √(1 − loading²). */
  readonly own: number;
  readonly count: number;
}

function kindsOf(loadings: readonly number[]): readonly Kind[] {
  return Array.from(
    groupBy(loadings, (loading) => loading),
    ([loading, alike]) => ({ loading, own: Math.sqrt(1 - loading * loading), count: alike.length }),
  );
}

/** Chance that one of the comparisons leaves ±reach, their common standard error being known. */
function chanceOutside(reach: number, kinds: readonly Kind[]): number {
  const narrowest = min(kinds.map(({ own }) => own));
  const step = Math.max(finestStep, relativeStep * narrowest);
  // The integrand is even in z: the positive half is done and doubled, z = 0 counts once.
  let total = 0.5 * chanceGiven(0, reach, kinds) * density(0);
  for (let z = step; z <= farthest; z += step) total += density(z) * chanceGiven(z, reach, kinds);
  return Math.min(1, 2 * step * total);
}

function chanceGiven(z: number, reach: number, kinds: readonly Kind[]): number {
  let logInside = 0;
  for (const { loading, own, count } of kinds) {
    const outside =
      chanceAbove((reach + loading * z) / own) + chanceAbove((reach - loading * z) / own);
    logInside += count * Math.log1p(-Math.min(1, outside));
  }
  return -Math.expm1(logInside);
}

function checkShape(routine: string, loadings: readonly number[], df: number): void {
  if (loadings.length === 0) {
    throw new NumericalError(`${routine}: there are no loadings; at least 1 is needed.`);
  }
  for (const loading of loadings) {
    if (!(loading >= 0 && loading < 1)) {
      throw new NumericalError(
        `${routine}: a loading is ${String(loading)}; it must be from 0 to below 1.`,
      );
    }
  }
  requirePositiveOrInfinite(routine, "df", df);
}
