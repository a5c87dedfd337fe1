import { sum } from "simple-statistics";
import { at } from "../errors/at.ts";
import { isDust } from "../numeric/rounding-dust.ts";
import type { OutsideVariance } from "./constant-offset.ts";
import {
  type Distance,
  distanceFrom,
  type JudgedPoint,
  type PredictingLine,
  standardErrorFrom,
} from "./predicting-line.ts";

/** The point farthest from the line that the others give. */
export interface FarthestPoint {
  readonly place: number;
  /** |statistic| of it. */
  readonly size: number;
}

/** Below so many points each line is summed anew; above, what a point adds is taken out of the sums of all. */
const fewestToTakeOut = 200;
const noScatterToCompare = -1;

/**
 * Each of some points against the line of the others: the farthest.
 *
 * @param points   usable, two or more
 * @param outside  scatter known from elsewhere; null: the other points alone
 * @returns        null where one of them has no scatter to be compared with
 */
export function farthestPoint(
  points: readonly JudgedPoint[],
  outside: OutsideVariance | null,
): FarthestPoint | null {
  const sizeOf = points.length < fewestToTakeOut ? sizeBySums : sizesTakenOutOf(points);
  let [place, size] = [0, noScatterToCompare];
  for (let i = 0; i < points.length; i++) {
    const found = sizeOf(i, points, outside);
    if (found === noScatterToCompare) return null;
    if (found > size) [place, size] = [i, found];
  }
  return { place, size };
}

/** One point against the line of the others; null where they have no scatter to compare with. */
export function distanceWithout(
  place: number,
  points: readonly JudgedPoint[],
  outside: OutsideVariance | null,
): Distance | null {
  return distanceFrom(lineWithout(place, points, outside), at(points, place));
}

/** `lineOf` the other points. */
function lineWithout(
  out: number,
  points: readonly JudgedPoint[],
  outside: OutsideVariance | null,
): PredictingLine {
  let [information, total, known, own] = [0, 0, 0, 0];
  for (let i = 0; i < points.length; i++) {
    if (i === out) continue;
    const { x, y, knownVariance } = at(points, i);
    information += x;
    total += y;
    known += knownVariance;
  }
  const slope = total / information;
  for (let i = 0; i < points.length; i++) {
    if (i === out) continue;
    const { x, y } = at(points, i);
    own += (y - slope * x) ** 2 / x;
  }
  return withScatter({ slope, information, known, own }, points.length, outside);
}

function withScatter(
  { slope, information, known, own }: LineSums,
  points: number,
  outside: OutsideVariance | null,
): PredictingLine {
  const df = points - 2 + (outside?.df ?? 0);
  const lent = outside ? outside.df * outside.variance : 0;
  const variance = df > 0 ? (own + lent) / df : null;
  return { slope, information, variance, df, knownVariance: known / information ** 2 };
}

/**
 * |statistic| of a point, without the objects in between: screening a log asks for every catch, several times over, and what a
 * million of them leave behind takes as long to tidy up.
 */
function sizeBySums(
  out: number,
  points: readonly JudgedPoint[],
  outside: OutsideVariance | null,
): number {
  const df = points.length - 2 + (outside === null ? 0 : outside.df);
  if (df <= 0) return noScatterToCompare;
  let information = 0;
  let total = 0;
  let known = 0;
  for (let i = 0; i < points.length; i++) {
    const point = points[i];
    if (i === out || point === undefined) continue;
    information += point.x;
    total += point.y;
    known += point.knownVariance;
  }
  const slope = total / information;
  let own = 0;
  for (let i = 0; i < points.length; i++) {
    const point = points[i];
    if (i !== out && point !== undefined) own += (point.y - slope * point.x) ** 2 / point.x;
  }
  const lent = outside === null ? 0 : outside.df * outside.variance;
  const point = at(points, out);
  const knownOfLine = known / information ** 2;
  const standardError = standardErrorFrom((own + lent) / df, information, knownOfLine, point);
  if (isDust(standardError, point.y)) return noScatterToCompare;
  return Math.abs((point.y - slope * point.x) / standardError);
}

function sizesTakenOutOf(points: readonly JudgedPoint[]): typeof sizeBySums {
  const without = sumsTakenOutOf(points);
  return (out, _, outside) => {
    const line = withScatter(without(out), points.length, outside);
    const distance = distanceFrom(line, at(points, out));
    return distance === null ? noScatterToCompare : Math.abs(distance.statistic);
  };
}

/**
 * The line of all points but one, for each of many: what a point adds is taken out of the sums of all. Its share of the
 * squares is its residual²/x over 1 − x/Σx.
 *
 * @param points  usable, three or more
 * Source Cook & Weisberg, Residuals and Influence in Regression (1982), 2.2 (deletion formulas)
 */
export function linesTakenOutOf(
  points: readonly JudgedPoint[],
  outside: OutsideVariance | null,
): (out: number) => PredictingLine {
  const without = sumsTakenOutOf(points);
  return (out) => withScatter(without(out), points.length, outside);
}

function sumsTakenOutOf(points: readonly JudgedPoint[]): (out: number) => LineSums {
  const information = sum(points.map(({ x }) => x));
  const total = sum(points.map(({ y }) => y));
  const known = sum(points.map(({ knownVariance }) => knownVariance));
  const slope = total / information;
  const squares = sum(points.map(({ x, y }) => (y - slope * x) ** 2 / x));
  return (out) => {
    const { x, y, knownVariance } = at(points, out);
    const share = (y - slope * x) ** 2 / x / (1 - x / information);
    return {
      slope: (total - y) / (information - x),
      information: information - x,
      known: Math.max(0, known - knownVariance),
      own: Math.max(0, squares - share),
    };
  };
}

/** Sums of a line: Σx, the points' known variances, and Σ residual²/x. */
interface LineSums {
  readonly slope: number;
  readonly information: number;
  readonly known: number;
  readonly own: number;
}
