import { sum } from "simple-statistics";
import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import type { OutsideVariance } from "./constant-offset.ts";
import type { Point } from "./through-origin.ts";

/** A point of a line through the origin whose y may carry an error of known variance, as from reading a scale. */
export interface JudgedPoint extends Point {
  /** 0 when there is none. */
  readonly knownVariance: number;
}

/** How far a point lies from where a line it has no part in puts it. */
export interface Distance {
  /** Slope by the other points alone. */
  readonly slope: number;
  /** y − slope·x. */
  readonly residual: number;
  /** Its standard error: scatter of the point, error of the slope, known errors. */
  readonly standardError: number;
  /** residual ÷ standardError, Student's t when the point belongs. */
  readonly statistic: number;
  readonly df: number;
}

export interface Residual extends Distance {
  /** Two-sided, of this point looked at alone. */
  readonly pValue: number;
}

/** A line through the origin as some points give it, ready to predict another. */
export interface PredictingLine {
  readonly slope: number;
  /** Σx of its points. */
  readonly information: number;
  /** Error variance at x = 1, pooled with the outside scatter; null without degrees of freedom. */
  readonly variance: number | null;
  readonly df: number;
  /** Variance that the known errors of its points give the slope. */
  readonly knownVariance: number;
}

/**
 * The line through the origin that the points give, variance proportional to x, its scatter pooled with that from
 * outside: slope = Σy/Σx, s² = (SS + ν₀s₀²)/(n − 1 + ν₀).
 *
 * @param points  n >= 1, x above zero
 * @throws        NumericalError when a point cannot be used, or without any
 */
export function lineOf(
  points: readonly JudgedPoint[],
  outside: OutsideVariance | null,
): PredictingLine {
  checkPoints(points);
  const information = sum(points.map(({ x }) => x));
  const slope = sum(points.map(({ y }) => y)) / information;
  const own = sum(points.map(({ x, y }) => (y - slope * x) ** 2 / x));
  const df = points.length - 1 + (outside?.df ?? 0);
  return {
    slope,
    information,
    variance: df > 0 ? (own + (outside ? outside.df * outside.variance : 0)) / df : null,
    df,
    knownVariance: sum(points.map(({ knownVariance }) => knownVariance)) / information ** 2,
  };
}

/**
 * A point against a line it has no part in: (y − slope·x)/√(s²·x(1 + x/Σx) + known errors of both), Student's t.
 *
 * @returns  null when the line has no scatter to compare with
 */
export function distanceFrom(
  line: PredictingLine,
  { x, y, knownVariance }: JudgedPoint,
): Distance | null {
  if (line.variance === null) return null;
  const standardError = standardErrorFrom(line.variance, line.information, line.knownVariance, {
    x,
    knownVariance,
  });
  if (isDust(standardError, y)) return null;
  const residual = y - line.slope * x;
  const statistic = residual / standardError;
  return { slope: line.slope, residual, standardError, statistic, df: line.df };
}

/** √(s²·x(1 + x/Σx) + known errors of point and line). */
export function standardErrorFrom(
  variance: number,
  information: number,
  knownOfLine: number,
  { x, knownVariance }: Pick<JudgedPoint, "x" | "knownVariance">,
): number {
  return Math.sqrt(variance * x * (1 + x / information) + knownVariance + x ** 2 * knownOfLine);
}

/** The same with its p value, for a point looked at alone; null when the line has no scatter to compare with. */
export function residualFrom(line: PredictingLine, point: JudgedPoint): Residual | null {
  const distance = distanceFrom(line, point);
  return distance === null ? null : withPValue(distance);
}

export function withPValue(distance: Distance): Residual {
  const { slope, residual, standardError, statistic, df } = distance;
  return {
    slope,
    residual,
    standardError,
    statistic,
    df,
    pValue: studentTTwoSided(statistic, df),
  };
}

/** @throws NumericalError when a point cannot be used, or without any */
export function checkPoints(points: readonly JudgedPoint[]): void {
  if (points.length === 0) throw new NumericalError("A line needs at least 1 point; got none.");
  for (let i = 0; i < points.length; i++) {
    const { x, y, knownVariance } = at(points, i);
    if (!(x > 0 && Number.isFinite(x)))
      throw new NumericalError(`points[${i}].x is ${x}; it must be a finite number above zero.`);
    if (!Number.isFinite(y))
      throw new NumericalError(`points[${i}].y is ${y}; it must be a finite number.`);
    if (!(knownVariance >= 0 && Number.isFinite(knownVariance)))
      throw new NumericalError(
        `points[${i}].knownVariance is ${knownVariance}; it must be 0 or more.`,
      );
  }
}
