import { at } from "../../errors/at.ts";
import { pairsOfProducts } from "../../model/compare-products.ts";
import type { ProductGroup } from "../../model/product-groups.ts";
import type { Pair } from "../../statistics/simultaneous.ts";
import type { ProductComparisonOptions } from "./result.ts";

/** The pairs that are asked about, by their places among these groups. */
export function pairsAsked(
  groups: readonly ProductGroup[],
  { reference, pairs }: Pick<ProductComparisonOptions, "reference" | "pairs">,
): readonly Pair[] {
  const all = pairsOfProducts(groups, reference);
  return pairs === "all" ? all : all.filter((pair) => shareABin(groups, pair));
}

function shareABin(groups: readonly ProductGroup[], { first, second }: Pair): boolean {
  const { bins } = at(groups, second);
  return at(groups, first).bins.some((bin) => bins.includes(bin));
}
