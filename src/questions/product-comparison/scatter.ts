import { sum } from "simple-statistics";
import { at } from "../../errors/at.ts";
import { turnsDiffer } from "../../model/fill-estimate.ts";
import type { Fill } from "../../model/meters.ts";
import type { ProductGroup } from "../../model/product-groups.ts";
import { agreeExactly } from "../../model/totals.ts";
import type { Estimate } from "../../results/estimate.ts";
import { brownForsythe, suitsBrownForsythe } from "../../statistics/brown-forsythe.ts";
import {
  chiSquaredVariationInterval,
  compareScatter,
  type Scatter,
} from "../../statistics/scatter-comparison.ts";
import type { Pair } from "../../statistics/simultaneous.ts";
import { median } from "../../statistics/summary.ts";
import type { ProductScatter, ProductScatterComparison, ScatterContrast } from "./result.ts";

const fewestFills = 3;
const fewestCatches = 3;

/**
 * Which products scatter more from catch to catch? Coefficients of variation pooled over fills with χ² intervals (each
 * fill's own delivery taken as known), compared by a t test on the bias-corrected ln s² of each fill; for one fill each
 * of an even number of at least six catches by Brown and Forsythe's test.
 */
export function scatterComparison(
  groups: readonly ProductGroup[],
  pairs: readonly Pair[],
  level: number,
): ProductScatterComparison {
  const fills = groups.map((group) => group.fills.map(({ fill }) => fill));
  const turns = median(fills.flat().flatMap(({ catches }) => catches.map((row) => row.turns)));
  const each = 1 - (1 - level) / Math.max(1, pairs.length);
  const contrasts = pairs.map(({ first, second }) => ({
    first: at(groups, first).product,
    second: at(groups, second).product,
    ...comparePair(at(fills, first), at(fills, second), each, level),
  }));
  return {
    turns,
    products: groups.map(({ product }, i) => ofProduct(product, at(fills, i), turns, level)),
    contrasts: adjusted(contrasts, level),
  };
}

type Unadjusted = Omit<ScatterContrast, "pValue" | "differenceFound">;

/** By Bonferroni, as the intervals are, so that the two never contradict. */
function adjusted(contrasts: readonly Unadjusted[], level: number): readonly ScatterContrast[] {
  return contrasts.map((contrast) => {
    const { unadjustedPValue } = contrast;
    const pValue =
      unadjustedPValue === null ? null : Math.min(1, contrasts.length * unadjustedPValue);
    return { ...contrast, pValue, differenceFound: pValue !== null && pValue < 1 - level };
  });
}

function ofProduct(
  product: string,
  fills: readonly Fill[],
  turns: number,
  level: number,
): ProductScatter {
  const repeated = fills.filter(({ totals }) => totals.catches >= 2);
  const df = sum(repeated.map(({ totals }) => totals.catches - 1));
  const squares = sum(repeated.map(({ totals, delivery }) => totals.scatterSum / delivery ** 2));
  return {
    product,
    variation: df === 0 ? null : variationOf(Math.sqrt(squares / df / turns), df, level),
    fills: repeated.length,
    comparableFills: scattersOf(fills).length,
    withoutScatter: repeated.filter(({ totals }) => agreeExactly(totals)).length,
  };
}

function variationOf(cv: number, df: number, level: number): Estimate<"fraction"> {
  const interval =
    cv > 0
      ? { ...chiSquaredVariationInterval(cv, df, level), level, about: "catch scatter" as const }
      : null;
  return { value: cv, unit: "fraction", standardError: null, df, interval };
}

function comparePair(
  first: readonly Fill[],
  second: readonly Fill[],
  each: number,
  level: number,
): Omit<Unadjusted, "first" | "second"> {
  const [a, b] = [scattersOf(first), scattersOf(second)];
  if (a.length >= fewestFills && b.length >= fewestFills) {
    const found = compareScatter(a, b, each);
    if (found !== null) {
      const { ratio, lower, upper, df, pValue } = found;
      const interval = { lower, upper, level, about: "ratio" as const };
      return {
        method: found.method === "welch" ? "ln s² of fills, Welch's t" : "ln s² of fills, pooled t",
        ratio: { value: ratio, unit: "ratio", standardError: null, df, interval },
        unadjustedPValue: pValue,
      };
    }
  }
  const alone = oneFillEach(first, second);
  return alone === null
    ? { method: "none", ratio: null, unadjustedPValue: null }
    : { method: "Brown–Forsythe", ratio: null, unadjustedPValue: alone };
}

/** Relative scatter of each fill that can be compared. */
function scattersOf(fills: readonly Fill[]): readonly Scatter[] {
  return fills
    .filter((fill) => fill.totals.catches >= fewestCatches && !agreeExactly(fill.totals))
    .map(({ totals, delivery }) => ({
      standardDeviation: Math.sqrt(totals.scatterSum / (totals.catches - 1)) / delivery,
      df: totals.catches - 1,
    }));
}

/** p-value of Brown and Forsythe's test where each product has one fill that suits it; else null. */
function oneFillEach(first: readonly Fill[], second: readonly Fill[]): number | null {
  if (first.length !== 1 || second.length !== 1) return null;
  const [a, b] = [at(first, 0), at(second, 0)];
  if (!suitsBrownForsythe([a.totals.catches, b.totals.catches])) return null;
  // Catches of unlike length scatter unlike per turn, which is not what this test is to find.
  if (turnsDiffer(a) || turnsDiffer(b)) return null;
  return brownForsythe([a, b].map(relativeDeliveries)).pValue;
}

function relativeDeliveries({ catches, delivery }: Fill): readonly number[] {
  return catches.map(({ netKg, turns }) => (netKg / turns / delivery) * Math.sqrt(turns));
}
