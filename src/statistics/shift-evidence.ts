import { at, lastOf } from "../errors/at.ts";
import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { requireAllFinite } from "../numeric/domain.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import type { SpreadPrior } from "./spread-prior.ts";
import { mean, squaresWithin } from "./summary.ts";

/** A series cut at every place. */
export interface ShiftEvidence {
  /** ν = ν0 + n − 2. */
  readonly df: number;
  /** ν0·s0². */
  readonly priorSquares: number;
  /** r of the splits with 1, 2, … n − 1 values before: share of the squares that the difference of the means explains. */
  readonly shares: readonly number[];
  /** Share of the squares that a straight line on the order explains. */
  readonly lineShare: number;
}

/** Typical size of a shift, in variances of a value: a shift of √2 spreads. */
const typicalShiftVariance = 2;

/**
 * How much of a series' squares does a shift at each place explain? For f values before and n − f after, m = f(n − f)/n,
 * D the difference of the means: r = D²m/(ν0·s0² + Σ(b − b̄)²).
 *
 * @param values in time order, one per independent unit: fills, never catches
 * @param prior  of the variance, in the square of the values' unit
 * @returns null below 2 values, while ν < 1, and when neither values nor prior scatter, which leaves nothing to measure a
 *   shift by
 * @throws NumericalError without values, or when one is not finite
 * Source Hawkins 1977, Journal of the American Statistical Association 72, 180–186
 */
export function shiftEvidence(
  values: readonly number[],
  { nu0, s0Squared }: SpreadPrior,
): ShiftEvidence | null {
  requireAllFinite("shiftEvidence", "value", values);
  const n = values.length;
  const center = mean(values);
  let [partial, moment, own] = [0, 0, 0];
  const sums = values.map((value, i) => {
    const deviation = value - center;
    own += deviation ** 2;
    moment += (i - (n - 1) / 2) * deviation;
    partial += deviation;
    return partial;
  });
  const priorSquares = nu0 * s0Squared;
  const squares = priorSquares + own;
  const df = nu0 + n - 2;
  if (n < 2 || df < 1 || noScatter(squares, values)) return null;
  const shares = sums
    .slice(0, -1)
    .map((sum, i) => Math.min(1, (sum ** 2 * n) / ((i + 1) * (n - i - 1)) / squares));
  const lineShare = (12 * moment ** 2) / (n * (n ** 2 - 1)) / squares;
  return { df, priorSquares, shares, lineShare };
}

/** Beyond this evidence is all the same to a reader, and numbers end not far above. */
const mostEvidence = 1e300;

/**
 * ln of the Bayes factor "shift after so many values : no shift", so many times likelier with the shift than without. With
 * G = 2m: B = (1 + G)^−½·(1 − r·G/(1 + G))^−(ν + 1)/2.
 *
 * Source Jeffreys 1961, Theory of Probability, 5.2; Zellner 1986 (g prior)
 */
export function logEvidence({ shares, df }: ShiftEvidence, before: number): number {
  const n = shares.length + 1;
  const g = (typicalShiftVariance * before * (n - before)) / n;
  const share = at(shares, before - 1);
  return -0.5 * Math.log1p(g) - ((df + 1) / 2) * Math.log1p((-share * g) / (1 + g));
}

/** Evidence for a shift that lasts, wherever it began. */
export interface LastingShift {
  /** S: mean of B over every split that leaves two or more values after it. */
  readonly evidence: number;
  /** Values before the split with most of it. */
  readonly before: number;
  /** Whether a straight line explains more than the shift there. */
  readonly lineExplainsMore: boolean;
}

/** Fewest values of which a lasting shift is asked. */
export const fewestForLasting = 4;

/**
 * Is there a shift that lasts? S = Σ B_f/(n − 2) over f = 1 … n − 2: evidence averaged over where it may have begun.
 *
 * @returns null below 4 values, or when the two sides of the best split do not scatter at all
 * Source Shiryaev 1963; Roberts 1966 (averaging over the times of a change)
 */
export function lastingShift(
  values: readonly number[],
  evidence: ShiftEvidence,
): LastingShift | null {
  if (values.length < fewestForLasting) return null;
  const splits = values.length - 2;
  let [sum, best, before] = [0, Number.NEGATIVE_INFINITY, 0];
  for (let split = 1; split <= splits; split++) {
    const log = logEvidence(evidence, split);
    sum += Math.min(mostEvidence, Math.exp(log)) / splits;
    if (log > best) [best, before] = [log, split];
  }
  const sides = [values.slice(0, before), values.slice(before)];
  if (noScatter(squaresAbout(sides, evidence), values)) return null;
  const share = at(evidence.shares, before - 1);
  return { evidence: sum, before, lineExplainsMore: evidence.lineShare > share };
}

/** The newest value against all before it. */
export interface NewestValue {
  readonly meanBefore: number;
  /** Newest minus the mean of the others, and its standard error. */
  readonly difference: number;
  readonly standardError: number;
  readonly statistic: number;
  readonly df: number;
  /** Two-sided. */
  readonly pValue: number;
}

/**
 * Does the newest value belong with those before it? (newest − mean)/(s·√(1 + 1/(n − 1))), s² = (ν0·s0² + SS)/ν of those
 * before it, Student's t on ν: T² = ν·r/(1 − r) of the last split.
 *
 * @returns null when the others and the prior do not scatter at all
 */
export function newestValue(
  values: readonly number[],
  evidence: ShiftEvidence,
): NewestValue | null {
  const { df } = evidence;
  const earlier = values.slice(0, -1);
  const { center: meanBefore, squares } = squaresWithin(earlier);
  const within = evidence.priorSquares + squares;
  if (noScatter(within, values)) return null;
  const difference = lastOf(values) - meanBefore;
  const standardError = Math.sqrt((within / df) * (1 + 1 / earlier.length));
  const statistic = difference / standardError;
  const pValue = studentTTwoSided(statistic, df);
  return { meanBefore, difference, standardError, statistic, df, pValue };
}

/** Squares of stretches about their own means, and of the prior; straight from the values, as 1 − r would be rounding. */
function squaresAbout(
  stretches: readonly (readonly number[])[],
  { priorSquares }: ShiftEvidence,
): number {
  return stretches.reduce((sum, values) => sum + squaresWithin(values).squares, priorSquares);
}
