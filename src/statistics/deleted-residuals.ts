import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import type { OutsideVariance } from "./constant-offset.ts";
import { distanceWithout, farthestPoint } from "./farthest-point.ts";
import { checkPoints, type JudgedPoint, type Residual, withPValue } from "./predicting-line.ts";

/** The point farthest off among those still there. */
export interface DeletionStep extends Residual {
  /** Place in the list given, from 0. */
  readonly index: number;
  /** Points still there, this one included. */
  readonly remaining: number;
}

/** How a deletion step is judged: as the largest of its family. */
export interface FamilyRule {
  /** Chance that clean points raise no flag, in (0, 1). */
  readonly level: number;
  /** Tests in the family when so many points are still there; default `familyOf`. */
  readonly comparisons?: (remaining: number) => number;
  /**
   * Share of 1 − level that every step after the first gets; default 1, as in generalized ESD. Below about ten
   * degrees of freedom a second look at the full rate lets clean points raise nearly twice the flags promised.
   */
  readonly laterShare?: number;
}

/** A statistic judged as the largest of so many. */
export interface FamilyJudgement {
  readonly comparisons: number;
  /** |statistic| that the largest of so many exceeds with the chance allowed. */
  readonly criticalValue: number;
  /** p value as the largest of so many (Bonferroni), raised by the share of a later look; at most 1. */
  readonly pValue: number;
}

/**
 * The order in which points would be taken away: the one with the largest deleted residual, then the next, at most
 * `most` times. `outlyingOf` says how many of them stand out. Externally studentized residuals of a line through the
 * origin with variance proportional to x, the scatter pooled with that of other lines:
 * s² = (SS of the others + ν₀s₀²)/(n − 2 + ν₀), T = (y − b'x)/√(s²·x(1 + x/Σx') + known), t on n − 2 + ν₀ df.
 *
 * @param points   n >= 2, x above zero; with two left both have the same statistic: the pair is one test, neither "the" one
 * @param outside  scatter s₀² at x = 1 known from elsewhere, with its ν₀; null: the other points alone
 * @returns        fewer steps than `most` where no scatter is left to compare with, or one point
 * @throws         NumericalError when a point cannot be used, or with fewer than two
 * Source          Cook & Weisberg, Residuals and Influence in Regression (1982), 2.2.1; Rosner, Technometrics 25 (1983)
 *                 165, with the pooled scatter of ISO 5725-2
 */
export function deletionSteps(
  points: readonly JudgedPoint[],
  outside: OutsideVariance | null,
  most: number,
): readonly DeletionStep[] {
  checkAll(points);
  const steps: DeletionStep[] = [];
  let places = points.map((_, index) => index);
  let left = points;
  while (steps.length < most && left.length >= 2) {
    const farthest = farthestPoint(left, outside);
    if (farthest === null) break;
    const { place } = farthest;
    const distance = distanceWithout(place, left, outside);
    if (distance === null) break;
    const { slope, residual, standardError, statistic, df, pValue } = withPValue(distance);
    const taken = { index: at(places, place), remaining: left.length };
    steps.push({ slope, residual, standardError, statistic, df, pValue, ...taken });
    places = without(place, places);
    left = without(place, left);
  }
  return steps;
}

function without<T>(place: number, all: readonly T[]): T[] {
  return all.filter((_, i) => i !== place);
}

function checkAll(points: readonly JudgedPoint[]): void {
  if (points.length < 2)
    throw new NumericalError(`Got ${points.length} points; at least 2 are needed.`);
  checkPoints(points);
}

/** What the statistics of some points tell by themselves. */
export type FirstLook = "no scatter to compare with" | "nothing stands out" | "something may";

/** Allows for what rounding does to a limit, so that nothing near it is passed over. */
const nearLimit = 1e-9;

/**
 * Whether it is plain that no step of `deletionSteps` exceeds its critical value: each |statistic| lies below a limit that
 * is known without its p value, which takes longer than all the rest. Most fills of a log are done with here.
 */
export function firstLook(
  points: readonly JudgedPoint[],
  outside: OutsideVariance | null,
  most: number,
  rule: FamilyRule,
): FirstLook {
  checkAll(points);
  let left = points;
  for (let step = 0; step < most && left.length >= 2; step++) {
    const farthest = farthestPoint(left, outside);
    if (farthest === null) return step === 0 ? "no scatter to compare with" : "nothing stands out";
    const df = left.length - 2 + (outside?.df ?? 0);
    const limit = limitBelow(allowedP(left.length, step, rule), df);
    if (farthest.size >= limit) return "something may";
    if (step + 1 < most) left = without(farthest.place, left);
  }
  return "nothing stands out";
}

/**
 * At most the |t| whose two-sided p is so small, whatever rounding does to it: that of the next whole number of degrees of
 * freedom, of which there are so few that each is known.
 */
export function limitBelow(pValue: number, df: number): number {
  return studentTQuantile(1 - pValue / 2, Math.ceil(df)) * (1 - nearLimit);
}

/**
 * Which points stand out? All up to the last step whose statistic exceeds t(1 − (1−level)/(2·comparisons), df), so that
 * two bad points that hide each other are found, while a good point beside a bad one is not flagged for company.
 *
 * With no outside scatter and equal x the first step is Grubbs' test and all together generalized ESD.
 *
 * @returns  their places in the list that the steps were made from. Rates: reports/outlier-study.md
 * Source    Rosner, Technometrics 25 (1983) 165
 */
export function outlyingOf(steps: readonly DeletionStep[], rule: FamilyRule): readonly number[] {
  const exceeding = steps.findLastIndex((step, i) => exceeds(step, i, rule));
  return steps.slice(0, exceeding + 1).map(({ index }) => index);
}

/** Whether a step, the i-th from 0, exceeds its critical value. */
export function exceeds(
  { pValue, remaining }: DeletionStep,
  i: number,
  { level, comparisons = familyOf, laterShare = 1 }: FamilyRule,
): boolean {
  return comparisons(remaining) * pValue < (1 - level) * (i === 0 ? 1 : laterShare);
}

/** The p value below which a step, the i-th from 0, exceeds. */
export function allowedP(
  remaining: number,
  i: number,
  { level, comparisons = familyOf, laterShare = 1 }: FamilyRule,
): number {
  return ((1 - level) * (i === 0 ? 1 : laterShare)) / comparisons(remaining);
}

/**
 * A residual as the largest of so many.
 *
 * @param share  share of 1 − level that this look gets, in (0, 1]
 */
export function judgeInFamily(
  { df, pValue }: Pick<Residual, "df" | "pValue">,
  comparisons: number,
  share: number,
  level: number,
): FamilyJudgement {
  return {
    comparisons,
    criticalValue: studentTQuantile(1 - ((1 - level) * share) / (2 * comparisons), df),
    pValue: Math.min(1, (comparisons * pValue) / share),
  };
}

/** Tests among so many points of one line: one each, but a pair is a single difference, and one point is none. */
export function familyOf(points: number): number {
  return points > 2 ? points : points - 1;
}
