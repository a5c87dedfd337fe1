import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { fUpperTail } from "../numeric/distributions/f.ts";
import { requireFinite } from "../numeric/domain.ts";
import { lastPlaces, noScatter } from "../numeric/rounding-dust.ts";
import { accurateSum } from "../numeric/summation.ts";
import { mean } from "./summary.ts";

export interface OneWayAnova {
  readonly groups: number;
  readonly observations: number;
  /** Groups minus 1. */
  readonly betweenDf: number;
  readonly betweenSumOfSquares: number;
  readonly betweenMeanSquare: number;
  /** Observations minus groups. */
  readonly withinDf: number;
  readonly withinSumOfSquares: number;
  /** Null without degrees of freedom within groups. */
  readonly withinMeanSquare: number | null;
  /** F ratio; null when it has no denominator: no degrees of freedom within, or all values of every group equal. */
  readonly statistic: number | null;
  /** Chance of so large an F ratio when all groups have one mean; null when there is no ratio. */
  readonly pValue: number | null;
  readonly groupMeans: readonly number[];
}

/**
 * Do the groups differ by more than the scatter within them explains? One-way analysis of variance, sums of squares
 * taken about means in two passes so that a large common part of the values costs no digits.
 *
 * @param groups at least 2 groups of at least 1 finite value each
 * @throws NumericalError when there are fewer than 2 groups, a group is empty, or a value is not finite
 * Source Snedecor and Cochran 1989, Statistical Methods, 8th edition, chapter 12
 * @example oneWayAnova([[1, 2, 3], [2, 3, 4], [5, 6, 7]]).statistic // -> 13
 */
export function oneWayAnova(groups: readonly (readonly number[])[]): OneWayAnova {
  check(groups);
  // Any value near the data will do as origin: differences from it are small, so their rounding is small too.
  const origin = at(at(groups, 0), 0);
  const shifted = groups.map((group) => group.map((value) => value - origin));
  const means = shifted.map(mean);
  const grandMean = mean(shifted.flat());
  const betweenSumOfSquares = accurateSum(
    means.map((center, i) => at(shifted, i).length * (center - grandMean) ** 2),
  );
  const withinSumOfSquares = accurateSum(
    shifted.flatMap((group, i) => group.map((value) => (value - at(means, i)) ** 2)),
  );
  const observations = shifted.flat().length;
  const betweenDf = groups.length - 1;
  const withinDf = observations - groups.length;
  const betweenMeanSquare = betweenSumOfSquares / betweenDf;
  const withinMeanSquare = withinDf > 0 ? withinSumOfSquares / withinDf : null;
  const statistic =
    withinMeanSquare === null || noScatter(withinSumOfSquares, groups.flat(), lastPlaces)
      ? null
      : betweenMeanSquare / withinMeanSquare;
  return {
    groups: groups.length,
    observations,
    betweenDf,
    betweenSumOfSquares,
    betweenMeanSquare,
    withinDf,
    withinSumOfSquares,
    withinMeanSquare,
    statistic,
    pValue: statistic === null ? null : fUpperTail(statistic, betweenDf, withinDf),
    groupMeans: means.map((center) => center + origin),
  };
}

function check(groups: readonly (readonly number[])[]): void {
  if (groups.length < 2) {
    throw new NumericalError(`oneWayAnova: ${groups.length} groups; at least 2 are needed.`);
  }
  groups.forEach((group, i) => {
    if (group.length === 0) throw new NumericalError(`oneWayAnova: group ${i + 1} is empty.`);
    group.forEach((value, j) => {
      requireFinite("oneWayAnova", `group ${i + 1}, value ${j + 1}`, value);
    });
  });
}
