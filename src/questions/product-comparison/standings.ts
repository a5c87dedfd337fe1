import type { ComparedProducts } from "../../model/compare-products.ts";
import type { ComparisonScale } from "../../model/comparison-design.ts";
import type { MeanContrast } from "../../statistics/mean-comparison.ts";
import { mean } from "../../statistics/summary.ts";
import type { ProductStanding } from "./result.ts";

/**
 * Each product among all of them, with ends that overlap those of another exactly where no difference is found. The
 * difference of two is found beyond q·s/√blocks, the same for every pair, so that each takes half of it to either side.
 *
 * @returns  null where pairs have errors of their own, are not all compared, or are not on logarithms
 * Source    Tukey 1953 (intervals to be compared by overlap); Hochberg, Weiss and Hart 1982, JASA 77, 767–772
 */
export function productStandings(
  { method, contrasts }: Pick<ComparedProducts, "method" | "contrasts">,
  products: readonly string[],
  scale: ComparisonScale,
): readonly ProductStanding[] | null {
  const pairs = (products.length * (products.length - 1)) / 2;
  if (method !== "tukey-blocks" || scale !== "log" || contrasts.length !== pairs) return null;
  const [any] = contrasts;
  if (any === undefined || any.lower === null || any.upper === null) return null;
  const half = (any.upper - any.lower) / 4;
  return products.map((product, place) => {
    const logRatio = mean(products.map((_, other) => differenceOf(contrasts, place, other)));
    return {
      product,
      ratio: Math.exp(logRatio),
      lower: Math.exp(logRatio - half),
      upper: Math.exp(logRatio + half),
    };
  });
}

/** Of one product from another, itself included. */
function differenceOf(contrasts: readonly MeanContrast[], place: number, other: number): number {
  const found = contrasts.find(
    ({ first, second }) =>
      (first === place && second === other) || (first === other && second === place),
  );
  if (found === undefined) return 0;
  return found.first === place ? found.difference : -found.difference;
}
