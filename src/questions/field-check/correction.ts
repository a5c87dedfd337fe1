import { tEstimate } from "../../model/t-estimate.ts";
import type { Estimate } from "../../results/estimate.ts";
import { mean, sampleStandardDeviation } from "../../statistics/summary.ts";
import type { CheckedField, FieldCorrection } from "./result.ts";

/**
 * What field checks say together: field ÷ predicted, one value a check, mean ± t·s/√n on checks − 1. A check is one
 * observation of what the field does; catches say nothing about it, so their scatter has no part in this.
 */
export function fieldCorrection(
  checks: readonly CheckedField[],
  level: number,
): FieldCorrection | null {
  const factors = checks.flatMap(({ bias }) => (bias === null ? [] : [1 + bias.value]));
  if (factors.length === 0) return null;
  const running = factors.map((_, i) => ({
    checks: i + 1,
    factor: factorOf(factors.slice(0, i + 1), level),
  }));
  return { checks: factors.length, factor: factorOf(factors, level), running };
}

function factorOf(factors: readonly number[], level: number): Estimate<"ratio"> {
  const center = mean(factors);
  if (factors.length < 2)
    return { value: center, unit: "ratio", standardError: null, df: null, interval: null };
  const standardError = sampleStandardDeviation(factors) / Math.sqrt(factors.length);
  return tEstimate(center, "ratio", standardError, factors.length - 1, level, "ratio");
}
