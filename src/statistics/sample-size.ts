import { chiSquaredLowerTail } from "../numeric/distributions/chi-squared.ts";
import { normalQuantile } from "../numeric/distributions/normal.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import {
  requireFinite,
  requirePositive,
  requireProbability,
  requireWhole,
} from "../numeric/domain.ts";

/** What a mean is wanted for: a two-sided interval no wider than this each way. All in one unit, or all relative. */
export interface WidthAim {
  /** Standard deviation of one observation, above zero. */
  readonly scatter: number;
  /** Half-width wanted, above zero. */
  readonly halfWidth: number;
  /** Confidence level of the interval, 0 < level < 1. */
  readonly level: number;
}

/** A sample nobody would take; above it the answer is "not this way". */
const mostObservations = 10_000;

/**
 * How many observations would do if the scatter were known: n = ⌈(z·s/w)²⌉. Too few in practice, because the scatter is
 * estimated from the same observations; here to be compared with.
 *
 * @returns  whole number of at least 1
 * Source    NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.2
 */
export function sampleSizeByNormal(aim: WidthAim): number {
  checkAim("sampleSizeByNormal", aim);
  return wholeAbove((normalQuantile((1 + aim.level) / 2) * aim.scatter) / aim.halfWidth);
}

/**
 * How many observations give the width when the sample happens to scatter as expected: smallest n with
 * t(n − 1)·s/√n <= w. Little more than half of such samples keep the promise: see `sampleSizeAssured`.
 *
 * @returns  n of at least 2; null above 10,000
 */
export function sampleSizeByT(aim: WidthAim): number | null {
  checkAim("sampleSizeByT", aim);
  const wide = (n: number) =>
    (studentTQuantile((1 + aim.level) / 2, n - 1) * aim.scatter) / n ** 0.5;
  return smallestWhole((n) => wide(n) <= aim.halfWidth, 2);
}

/**
 * How many observations give the width with the chance asked for: smallest n with
 * P(χ²(n − 1) <= (n − 1)·n·(w/(t·s))²) >= assurance.
 *
 * @param assurance  chance that the interval comes out no wider than wanted, 0 < assurance < 1
 * @returns          n of at least 2; null above 10,000
 * Source            Hahn & Meeker, Statistical Intervals (sample size for a mean with assurance)
 * @example sampleSizeAssured({ scatter: 0.02, halfWidth: 0.01, level: 0.95 }, 0.8) // -> 22
 */
export function sampleSizeAssured(aim: WidthAim, assurance: number): number | null {
  requireProbability("sampleSizeAssured", "assurance", assurance);
  checkAim("sampleSizeAssured", aim);
  return smallestWhole((n) => chanceOfWidth(n, aim) >= assurance, 2);
}

/**
 * The chance that a t interval from n observations, with its own standard deviation, is no wider than wanted.
 *
 * @param n  whole number of at least 2
 */
export function chanceOfWidth(n: number, aim: WidthAim): number {
  requireWhole("chanceOfWidth", "n", n, 2);
  checkAim("chanceOfWidth", aim);
  const t = studentTQuantile((1 + aim.level) / 2, n - 1);
  return chiSquaredLowerTail((n - 1) * n * (aim.halfWidth / (t * aim.scatter)) ** 2, n - 1);
}

/**
 * How many observations give the width when the scatter comes from elsewhere and is not estimated anew: smallest n with
 * t(df)·√(s²/n + c²) <= w. It is known before the first observation, so it needs no assurance.
 *
 * @param df           degrees of freedom of the scatter, above 0; Infinity: known
 * @param commonError  standard error that more observations do not lessen, default 0
 * @returns            n of at least 1; null when the common error alone is too large, or above 10,000
 */
export function sampleSizePooled(aim: WidthAim, df: number, commonError = 0): number | null {
  checkAim("sampleSizePooled", aim);
  requireFinite("sampleSizePooled", "commonError", commonError);
  const room = (aim.halfWidth / studentTQuantile((1 + aim.level) / 2, df)) ** 2 - commonError ** 2;
  if (room <= 0) return null;
  const n = wholeAbove(aim.scatter / Math.sqrt(room));
  return n > mostObservations ? null : n;
}

function checkAim(routine: string, { scatter, halfWidth, level }: WidthAim): void {
  requirePositive(routine, "scatter", scatter);
  requirePositive(routine, "halfWidth", halfWidth);
  requireProbability(routine, "level", level);
}

/** The smallest whole number whose square root is at least `root`. */
function wholeAbove(root: number): number {
  return Math.max(1, Math.ceil(root ** 2));
}

/** Smallest whole number from which on the condition holds: doubling to find one, halving to find the first. */
function smallestWhole(holds: (n: number) => boolean, least: number): number | null {
  let high = least;
  while (!holds(high)) {
    if (high >= mostObservations) return null;
    high = Math.min(2 * high, mostObservations);
  }
  let low = least - 1;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}
