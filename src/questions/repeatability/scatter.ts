import { type PooledScatter, standardDeviationInterval } from "../../model/catch-scatter.ts";
import { isDust } from "../../numeric/rounding-dust.ts";
import type { Estimate } from "../../results/estimate.ts";
import { varianceRatioTest } from "../../statistics/variance-ratio.ts";

/** Scatter of a catch of typical turns, relative to its mass. */
export interface RelativeScatter {
  /** Interval about "catch scatter". */
  readonly relative: Estimate<"fraction">;
  readonly df: number;
  readonly fills: number;
}

/** Today's scatter against that of earlier fills. */
export interface ScatterComparison {
  /** Today ÷ earlier; interval about "ratio". */
  readonly ratio: Estimate<"ratio">;
  /** F. */
  readonly statistic: number;
  readonly dfToday: number;
  readonly dfEarlier: number;
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

/** Today against earlier fills by the F test. */
export function compareScatter(
  today: RelativeScatter | null,
  earlier: RelativeScatter | null,
  level: number,
): ScatterComparison | null {
  if (today === null || earlier === null) return null;
  const varianceOf = ({ relative, df }: RelativeScatter) => ({ variance: relative.value ** 2, df });
  const { ratio, lower, upper, statistic, pValue } = varianceRatioTest(
    varianceOf(today),
    varianceOf(earlier),
    level,
  );
  return {
    ratio: {
      value: ratio,
      unit: "ratio",
      standardError: null,
      df: null,
      interval: { lower, upper, level, about: "ratio" },
    },
    statistic,
    dfToday: today.df,
    dfEarlier: earlier.df,
    pValue,
  };
}

export function practiceOf(comparison: ScatterComparison | null, level: number): Practice {
  if (comparison === null) return "cannot be told";
  if (comparison.pValue > 1 - level) return "as usual";
  return comparison.ratio.value > 1 ? "more than usual" : "less than usual";
}
