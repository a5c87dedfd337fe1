import { type PooledScatter, standardDeviationInterval } from "../../model/catch-scatter.ts";
import type { ScatterPrior } from "../../model/lent-scatter.ts";
import { fLowerTail, fUpperTail } from "../../numeric/distributions/f.ts";
import { isDust } from "../../numeric/rounding-dust.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { LentBy } from "../../results/lent-by.ts";

/** Scatter of a catch of typical turns, relative to its mass. */
export interface RelativeScatter {
  /** Interval about "catch scatter". */
  readonly relative: Estimate<"fraction">;
  readonly df: number;
  readonly fills: number;
}

/** What others lend to a fill, as the scatter of a catch of typical turns. */
export interface UsualScatter {
  /** In the middle of what is known, relative to the mass. */
  readonly relative: number;
  /** Relative variance of such a catch with which today's is compared: below the square of `relative`, the more the less is known. */
  readonly variance: number;
  readonly df: number;
  readonly lentBy: LentBy;
}

/** Today's scatter against what is usual. */
export interface ScatterComparison {
  /** Standard deviation today ÷ the usual one. */
  readonly ratio: number;
  /** F of the variances. */
  readonly statistic: number;
  readonly dfToday: number;
  readonly dfUsual: number;
  /** Chance of as much scatter or more. */
  readonly upperTail: number;
  /** Two-sided. */
  readonly pValue: number;
}

export type Practice = "as usual" | "more than usual" | "less than usual" | "cannot be told";

export function relativeScatter(
  { variance, df, fills }: PooledScatter,
  turns: number,
  delivery: number,
  level: number,
): RelativeScatter | null {
  const value = variance === null ? 0 : Math.sqrt(variance / turns) / delivery;
  if (isDust(value, 1)) return null;
  return {
    relative: {
      value,
      unit: "fraction",
      standardError: null,
      df,
      interval: standardDeviationInterval(value, df, level, "catch scatter"),
    },
    df,
    fills,
  };
}

export function usualScatter(prior: ScatterPrior | null, turns: number): UsualScatter | null {
  if (prior === null) return null;
  return {
    relative: prior.typical / Math.sqrt(turns),
    variance: prior.s0Squared / turns,
    df: prior.nu0,
    lentBy: prior.lentBy,
  };
}

/** Today against what is usual by the F test. */
export function compareScatter(
  today: RelativeScatter | null,
  usual: UsualScatter | null,
): ScatterComparison | null {
  if (today === null || usual === null) return null;
  const statistic = today.relative.value ** 2 / usual.variance;
  const [upper, lower] = [
    fUpperTail(statistic, today.df, usual.df),
    fLowerTail(statistic, today.df, usual.df),
  ];
  return {
    ratio: today.relative.value / usual.relative,
    statistic,
    dfToday: today.df,
    dfUsual: usual.df,
    upperTail: upper,
    pValue: Math.min(1, 2 * Math.min(upper, lower)),
  };
}

export function practiceOf(comparison: ScatterComparison | null, level: number): Practice {
  if (comparison === null) return "cannot be told";
  if (comparison.pValue > 1 - level) return "as usual";
  return comparison.upperTail < 0.5 ? "more than usual" : "less than usual";
}
