import { limits } from "../../data/limits.ts";
import { at } from "../../errors/at.ts";
import { pairsOfProducts } from "../../model/compare-products.ts";
import type { ProductGroup } from "../../model/product-groups.ts";
import type { Pair } from "../../statistics/simultaneous.ts";
import type { ProductComparisonOptions } from "./result.ts";

type Asked = Pick<ProductComparisonOptions, "reference" | "pairs">;

/** Whether more pairs would have to be compared than are taken on; a reference makes them few. */
export function tooManyPairs(
  groups: readonly ProductGroup[],
  { reference, pairs }: Asked,
): boolean {
  const { length } = groups;
  if (reference !== null || (length * (length - 1)) / 2 <= limits.pairs) return false;
  if (pairs === "all") return true;
  let count = 0;
  for (let first = 0; first < length; first++)
    for (let second = first + 1; second < length; second++)
      if (shareABin(groups, { first, second }) && ++count > limits.pairs) return true;
  return false;
}

/** The pairs that are asked about, by their places among these groups; none where they are too many. */
export function pairsAsked(groups: readonly ProductGroup[], options: Asked): readonly Pair[] {
  if (tooManyPairs(groups, options)) return [];
  const { reference, pairs } = options;
  const all = pairsOfProducts(groups, reference);
  return pairs === "all" ? all : all.filter((pair) => shareABin(groups, pair));
}

function shareABin(groups: readonly ProductGroup[], { first, second }: Pair): boolean {
  const { bins } = at(groups, second);
  return at(groups, first).bins.some((bin) => bins.includes(bin));
}
