import { at } from "../../errors/at.ts";
import type { ComparedProducts } from "../../model/compare-products.ts";
import type { ComparisonScale } from "../../model/comparison-design.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { MeanContrast } from "../../statistics/mean-comparison.ts";
import type { ContrastOfProducts, Equivalence, ProductContrast } from "./result.ts";

/** In which words contrasts of means are put. */
interface Terms {
  readonly scale: ComparisonScale;
  readonly level: number;
}

/** Names and units for contrasts of means, each with the one beside it where spreads are not assumed alike. */
export function productContrasts(
  { contrasts, notAlike }: Pick<ComparedProducts, "contrasts" | "notAlike">,
  products: readonly string[],
  terms: Terms,
): readonly ProductContrast[] {
  return contrasts.map((contrast) => {
    const { first, second } = contrast;
    const beside = notAlike?.find((one) => one.first === first && one.second === second);
    return {
      first: at(products, first),
      second: at(products, second),
      ...ofProducts(contrast, terms),
      notAlike: beside === undefined ? null : ofProducts(beside, terms),
    };
  });
}

function ofProducts(contrast: MeanContrast, { scale, level }: Terms): ContrastOfProducts {
  const { statistic, df, unadjustedPValue, pValue, differenceFound, verdict, n } = contrast;
  return {
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
  const { limits, set, setLevel, pValue } = equivalence;
  return { lowerLimit: limits.lower, upperLimit: limits.upper, set, level: setLevel, pValue };
}
