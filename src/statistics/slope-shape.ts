import { sum } from "simple-statistics";
import { at } from "../errors/at.ts";
import { fUpperTail } from "../numeric/distributions/f.ts";
import { studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { groupBy } from "../numeric/group-by.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import { informative, type PooledSlope, type SlopeGroup } from "./pooled-slope.ts";
import { mean, weightedMean } from "./summary.ts";

/** A bend on top of one slope for all groups. */
export interface CurvatureTest {
  /** Coefficient of x². */
  readonly value: number;
  readonly standardError: number;
  /** Points − groups − 2. */
  readonly df: number;
  readonly statistic: number;
  /** Two-sided. */
  readonly pValue: number;
}

/** Parallel straight lines against a mean for every group and x. */
export interface ParallelLackOfFit {
  readonly statistic: number;
  readonly dfLackOfFit: number;
  readonly dfPureError: number;
  readonly pValue: number;
}

/** A group with its weighted means taken off. */
interface Centred {
  readonly x: readonly number[];
  readonly square: readonly number[];
  readonly y: readonly number[];
  readonly weights: readonly number[];
}

/** Share of the variation of x² that x may leave before the two can no longer be told apart. */
const tellable = 1e-9;

/**
 * Do groups that share one slope also share a bend? t test of the coefficient of x² in y = level of the group + βx + γx²,
 * weighted least squares.
 *
 * @param groups  as given to `pooledSlope`
 * @param fit     what it found
 * @returns       null when x takes fewer than three values in a way that shows a bend, without degrees of freedom, or
 *                when no scatter is left
 * Source         Draper and Smith 1998, Applied Regression Analysis, 3rd edition, chapters 12 and 14
 */
export function curvatureTest(
  groups: readonly SlopeGroup[],
  fit: PooledSlope,
): CurvatureTest | null {
  const used = informative(groups);
  const origin = mean(used.flatMap(({ x }) => x));
  const centred = used.map((group) => centre(group, origin));
  const over = (term: (group: Centred, i: number) => number) =>
    sum(centred.flatMap((group) => group.x.map((_, i) => at(group.weights, i) * term(group, i))));
  const squaresX = over(({ x }, i) => at(x, i) ** 2);
  const share = over(({ x, square }, i) => at(x, i) * at(square, i)) / squaresX;
  const bend = ({ x, square }: Centred, i: number) => at(square, i) - share * at(x, i);
  const squaresBend = over((group, i) => bend(group, i) ** 2);
  const df = fit.df - 1;
  if (df < 1 || squaresBend <= tellable * over(({ square }, i) => at(square, i) ** 2)) return null;

  const value = over((group, i) => bend(group, i) * at(group.y, i)) / squaresBend;
  const straight = fit.standardError ** 2 * fit.df * squaresX;
  const residual = Math.max(0, straight - value ** 2 * squaresBend);
  if (noScatter(residual, weightedValues(groups))) return null;
  const standardError = Math.sqrt(residual / df / squaresBend);
  const statistic = value / standardError;
  return { value, standardError, df, statistic, pValue: studentTTwoSided(statistic, df) };
}

/**
 * Do parallel straight lines follow the means of repeated x? F test of lack of fit: lines of one slope against a mean for
 * every group and x, over the scatter of repeats.
 *
 * @returns null when no group repeats an x, when there are as few means as the lines have coefficients, or when repeats
 *          agree exactly
 * Source   Draper and Smith 1998, Applied Regression Analysis, 3rd edition, section 2.1
 */
export function parallelLackOfFit(
  groups: readonly SlopeGroup[],
  fit: PooledSlope,
): ParallelLackOfFit | null {
  const used = informative(groups);
  const cells = used.flatMap(cellsOf);
  const points = sum(used.map(({ x }) => x.length));
  const dfLackOfFit = cells.length - used.length - 1;
  const dfPureError = points - cells.length;
  if (dfLackOfFit < 1 || dfPureError < 1) return null;

  const pureError = sum(cells.map(({ y, weights }) => squaresAboutMean(y, weights)));
  if (noScatter(pureError, weightedValues(groups))) return null;
  const squaresX = sum(used.map(({ x, weights }) => squaresAboutMean(x, weights)));
  const straight = fit.standardError ** 2 * fit.df * squaresX;
  const lack = Math.max(0, straight - pureError);
  const statistic = lack / dfLackOfFit / (pureError / dfPureError);
  return {
    statistic,
    dfLackOfFit,
    dfPureError,
    pValue: fUpperTail(statistic, dfLackOfFit, dfPureError),
  };
}

/** The bend is common to all groups, so x² is taken from one origin for all; near the data, to keep digits. */
function centre({ x, y, weights }: SlopeGroup, origin: number): Centred {
  const squares = x.map((value) => (value - origin) ** 2);
  return {
    x: deviations(x, weights),
    square: deviations(squares, weights),
    y: deviations(y, weights),
    weights,
  };
}

function cellsOf({ x, y, weights }: SlopeGroup): readonly SlopeGroup[] {
  return [...groupBy(x.keys(), (i) => at(x, i)).values()].map((places) => {
    const pick = (values: readonly number[]) => places.map((i) => at(values, i));
    return { x: pick(x), y: pick(y), weights: pick(weights) };
  });
}

function deviations(values: readonly number[], weights: readonly number[]): readonly number[] {
  const middle = weightedMean(values, weights);
  return values.map((value) => value - middle);
}

function squaresAboutMean(values: readonly number[], weights: readonly number[]): number {
  return sum(deviations(values, weights).map((value, i) => at(weights, i) * value ** 2));
}

function weightedValues(groups: readonly SlopeGroup[]): readonly number[] {
  return groups.flatMap(({ y, weights }) => y.map((value, i) => value * Math.sqrt(at(weights, i))));
}
