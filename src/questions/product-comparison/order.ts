import type { ProductGroup } from "../../model/product-groups.ts";
import { mean } from "../../statistics/summary.ts";
import type { ProductComparisonOptions } from "./options.ts";

/** The products that are compared, in the order in which they are told of. */
export function inOrder(
  groups: readonly ProductGroup[],
  { products, order }: Pick<ProductComparisonOptions, "products" | "order">,
): readonly ProductGroup[] {
  const listed =
    products === null
      ? groups
      : products.flatMap((name) => groups.filter(({ product }) => product === name));
  return order === "as listed"
    ? listed
    : listed.toSorted((a, b) => meanDelivery(b) - meanDelivery(a));
}

function meanDelivery({ fills }: ProductGroup): number {
  return mean(fills.map(({ fill }) => fill.delivery));
}
