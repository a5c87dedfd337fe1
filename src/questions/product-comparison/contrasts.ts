import { at } from "../../errors/at.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { MeanContrast } from "../../statistics/mean-comparison.ts";
import type { Equivalence, ProductContrast } from "./result.ts";

/** Names and units for a contrast of means. */
export function productContrast(
  contrast: MeanContrast,
  products: readonly string[],
  scale: "as measured" | "log",
  level: number,
): ProductContrast {
  const { statistic, df, unadjustedPValue, pValue, differenceFound, verdict, n } = contrast;
  return {
    first: at(products, contrast.first),
    second: at(products, contrast.second),
    n,
    difference: scale === "log" ? null : differenceEstimate(contrast, level),
    ratio: { value: contrast.ratio, unit: "ratio", level, set: contrast.ratioSet },
    statistic,
    df,
    unadjustedPValue,
    pValue,
    differenceFound,
    equivalence: equivalenceOf(contrast),
    verdict,
  };
}

function differenceEstimate(contrast: MeanContrast, level: number): Estimate<"kg/turn"> {
  const { difference, standardError, df, lower, upper } = contrast;
  return {
    value: difference,
    unit: "kg/turn",
    standardError,
    df,
    interval:
      lower === null || upper === null ? null : { lower, upper, level, about: "difference" },
  };
}

function equivalenceOf({ equivalence }: MeanContrast): Equivalence | null {
  if (equivalence === null) return null;
  const { limits, pValue, adjustedPValue } = equivalence;
  return { lowerLimit: limits.lower, upperLimit: limits.upper, pValue, adjustedPValue };
}
