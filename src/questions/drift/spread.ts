import { sampleStandardDeviation } from "simple-statistics";
import { standardDeviationInterval } from "../../model/catch-scatter.ts";
import type { Fill } from "../../model/meters.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { Changes } from "./changes.ts";
import type { DriftVerdict } from "./verdict.ts";

/**
 * Spread between fills, about whatever change was found: a shift or trend must not count as chance when it is asked what
 * else would have been found.
 *
 * @returns interval about "fill-to-fill spread"; null below two fills, or when fills agree exactly
 */
export function spreadOf(
  fills: readonly Fill[],
  changes: Changes,
  verdict: DriftVerdict,
  level: number,
): Estimate<"kg/turn"> | null {
  const { value, df } = standardDeviationOf(fills, changes, verdict);
  if (!(value > 0)) return null;
  return {
    value,
    unit: "kg/turn",
    standardError: null,
    df,
    interval: standardDeviationInterval(value, df, level, "fill-to-fill spread"),
  };
}

function standardDeviationOf(
  fills: readonly Fill[],
  { trend, shift }: Changes,
  verdict: DriftVerdict,
): { value: number; df: number } {
  const k = fills.length;
  if (verdict === "moved" && shift?.size.standardError != null)
    return {
      value: shift.size.standardError / Math.sqrt(1 / shift.fillsBefore + 1 / shift.fillsAfter),
      df: shift.df,
    };
  if (verdict === "trending" && trend?.perFill.standardError != null)
    return {
      value: trend.perFill.standardError * Math.sqrt((k * (k ** 2 - 1)) / 12),
      df: trend.df,
    };
  if (k < 2) return { value: 0, df: 0 };
  return { value: sampleStandardDeviation(fills.map(({ delivery }) => delivery)), df: k - 1 };
}
