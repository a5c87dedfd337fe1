import {
  finiteResult,
  requireAtLeast,
  requireNumber,
  requirePositiveOrInfinite,
  requireProbability,
  requireWhole,
} from "../domain.ts";
import { bracketRoot, findRoot } from "../roots.ts";
import { rangeTail } from "./normal-range.ts";
import { smoothChiMean } from "./smooth-chi-mixture.ts";
import { studentTDensity, studentTQuantile } from "./student-t.ts";

/**
 * Chance that the range of `means` independent normal means, over an independent estimate of their standard error, is
 * above `q`: the mean over S of the chance that the range of standard normal values is above q·S. It is the p-value of a
 * Tukey or Games–Howell comparison.
 *
 * @param q any number; below 0 gives 1, Infinity gives 0
 * @param means how many means are compared, whole number of at least 2
 * @param df degrees of freedom of the standard error, above 0, need not be whole; Infinity: it is known
 * @throws NumericalError when an argument is out of range
 */
export function studentizedRangeUpperTail(q: number, means: number, df: number): number {
  check("studentizedRangeUpperTail", q, means, df);
  if (q <= 0) return 1;
  if (q === Number.POSITIVE_INFINITY) return 0;
  return tail(q, df, rangeTail(means, "upper"));
}

/**
 * The value the studentized range stays below with chance `p`: the critical value of a Tukey comparison.
 *
 * @param p lower-tail probability, 1e-100 <= p < 1
 * @param means how many means are compared, whole number of at least 2
 * @param df degrees of freedom of the standard error, above 0, need not be whole; Infinity: it is known
 * @throws NumericalError when an argument is out of range or the quantile is too large for a number
 */
export function studentizedRangeQuantile(p: number, means: number, df: number): number {
  requireProbability("studentizedRangeQuantile", "p", p);
  requireAtLeast("studentizedRangeQuantile", "p", p, 1e-100);
  checkShape("studentizedRangeQuantile", means, df);
  const [side, chance] = p > 0.5 ? (["upper", 1 - p] as const) : (["lower", p] as const);
  const range = rangeTail(means, side);
  const excess = (logQ: number) =>
    Math.log(Math.max(tail(Math.exp(logQ), df, range), Number.MIN_VALUE) / chance);
  const [least, most] = bounds(p, means, df);
  const { lower, upper } = bracketRoot(excess, Math.log(least) - 0.01, Math.log(most) + 0.01);
  return finiteResult("studentizedRangeQuantile", Math.exp(findRoot(excess, lower, upper)));
}

const nearlyNone = 1e-10;

/**
 * The range exceeds q at least as often as one pair does, and at most as often as its number of pairs would if they
 * never did so together: t quantiles on both sides.
 */
function bounds(p: number, means: number, df: number): readonly [least: number, most: number] {
  const pairs = 0.5 * means * (means - 1);
  const ofPair = (upperTail: number) => -Math.SQRT2 * studentTQuantile(0.5 * upperTail, df);
  // Of a chance too small to be told from none by its complement, the density at 0 gives the quantile of a pair.
  const least = p < nearlyNone ? (p * Math.SQRT1_2) / studentTDensity(0, df) : ofPair(1 - p);
  return [least, Math.max(least, ofPair((1 - p) / pairs))];
}

function tail(q: number, df: number, range: (width: number) => number): number {
  if (df === Number.POSITIVE_INFINITY) return range(q);
  // Wide ranges have chances like exp(−(q·S)²/4); with that for g the peak is here, and no sharper than the density.
  const peak = Math.sqrt(df / (df + 0.5 * q * q));
  return Math.min(
    1,
    smoothChiMean((deviation) => range(q * deviation), df, { peak, sharpness: 0 }),
  );
}

function check(routine: string, q: number, means: number, df: number): void {
  requireNumber(routine, "q", q);
  checkShape(routine, means, df);
}

function checkShape(routine: string, means: number, df: number): void {
  requireWhole(routine, "means", means, 2);
  requirePositiveOrInfinite(routine, "df", df);
}
