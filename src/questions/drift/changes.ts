import { at, lastOf } from "../../errors/at.ts";
import type { Fill } from "../../model/meters.ts";
import { tEstimate } from "../../model/t-estimate.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import { type ChangePoint, changePoint } from "../../statistics/change-point.ts";
import { changePointInterval } from "../../statistics/change-point-interval.ts";
import { holm } from "../../statistics/multiplicity.ts";
import { type TrendTest, trendTest } from "../../statistics/trend.ts";

/** A steady rise or fall from fill to fill. */
export interface DriftTrend {
  /** Interval about "trend". */
  readonly perFill: Estimate<"kg/turn/fill">;
  /** The same relative to the mean delivery. */
  readonly relativePerFill: Estimate<"fraction/fill">;
  readonly statistic: number;
  readonly df: number;
  readonly pValue: number;
  /** Holm's, beside the change-point. */
  readonly adjustedPValue: number;
  /** Ends of the fitted line, kg/turn. */
  readonly line: { readonly start: number; readonly end: number };
}

/** One shift between two levels. */
export interface DriftShift {
  /** First fill after the shift, and the range of first fills that explain the season hardly worse. */
  readonly since: {
    readonly fill: FillName;
    readonly takenAt: string | null;
    readonly earliest: FillName;
    readonly latest: FillName;
  };
  readonly fillsBefore: number;
  readonly fillsAfter: number;
  /** Mean delivery of the fills before and after, kg/turn. */
  readonly before: number;
  readonly after: number;
  /** Interval about "shift": ± the critical value of the test, not of t, because the place was looked for. */
  readonly size: Estimate<"kg/turn">;
  /** The same relative to the mean before. */
  readonly relativeSize: Estimate<"fraction">;
  /** Largest |t| over the splits, signed. */
  readonly statistic: number;
  readonly df: number;
  readonly pValue: number;
  /** Holm's, beside the trend. */
  readonly adjustedPValue: number;
}

export interface Changes {
  readonly trend: DriftTrend | null;
  readonly shift: DriftShift | null;
}

export const fewestForTrend = 5;
export const fewestForShift = 6;

/** What is asked of a season, before anybody asks how large a change is. */
export interface ChangeTests {
  readonly trend: (TrendTest & Adjusted) | null;
  readonly shift: (ChangePoint & Adjusted) | null;
}

interface Adjusted {
  /** Holm's, of the two tests together. */
  readonly adjustedPValue: number;
}

/**
 * The two questions asked of a season: does the delivery rise or fall (slope on the order of fills, t(k − 2)), and did it
 * shift once (largest two-sample |t| over the splits). Their p-values are adjusted together by Holm's method.
 *
 * @param fills  one product without another in between, in time order
 * @returns      trend null below 5 fills, shift null below 6, both null where fills do not scatter about the change
 */
export function changeTests(fills: readonly Fill[]): ChangeTests {
  const deliveries = fills.map(({ delivery }) => delivery);
  const trend = fills.length < fewestForTrend ? null : trendTest(deliveries);
  const shift = fills.length < fewestForShift ? null : changePoint(deliveries);
  const adjusted = holm([trend, shift].flatMap((test) => test?.pValue ?? []));
  return {
    trend: trend === null ? null : { ...trend, adjustedPValue: at(adjusted, 0) },
    shift: shift === null ? null : { ...shift, adjustedPValue: lastOf(adjusted) },
  };
}

/** The same with the sizes of the changes and their intervals. */
export function changesOf(
  { trend, shift }: ChangeTests,
  fills: readonly Fill[],
  level: number,
): Changes {
  return {
    trend: trend === null ? null : trendOf(trend, level),
    shift: shift === null ? null : shiftOf(shift, fills, level),
  };
}

function trendOf(test: TrendTest & Adjusted, level: number): DriftTrend {
  const { slope, standardError, df, statistic, pValue, adjustedPValue, start, end } = test;
  const center = (start + end) / 2;
  return {
    perFill: tEstimate(slope, "kg/turn/fill", standardError, df, level, "trend"),
    relativePerFill: tEstimate(
      slope / center,
      "fraction/fill",
      standardError / center,
      df,
      level,
      "trend",
    ),
    statistic,
    df,
    pValue,
    adjustedPValue,
    line: { start, end },
  };
}

function shiftOf(test: ChangePoint & Adjusted, fills: readonly Fill[], level: number): DriftShift {
  const { before, meanBefore, meanAfter, difference, standardError, df } = test;
  const deliveries = fills.map(({ delivery }) => delivery);
  const range = changePointInterval(deliveries, test, level);
  const size = <U extends "kg/turn" | "fraction">(unit: U, per: number): Estimate<U> => ({
    value: difference / per,
    unit,
    standardError: standardError / per,
    df,
    interval: {
      lower: range.difference.lower / per,
      upper: range.difference.upper / per,
      level,
      about: "shift",
    },
  });
  const numberOf = (place: number) => at(fills, place).fill;
  return {
    since: {
      fill: numberOf(before),
      takenAt: at(fills, before).takenAt,
      earliest: numberOf(range.before.fewest),
      latest: numberOf(range.before.most),
    },
    fillsBefore: before,
    fillsAfter: fills.length - before,
    before: meanBefore,
    after: meanAfter,
    size: size("kg/turn", 1),
    relativeSize: size("fraction", meanBefore),
    statistic: test.statistic,
    df,
    pValue: test.pValue,
    adjustedPValue: test.adjustedPValue,
  };
}
