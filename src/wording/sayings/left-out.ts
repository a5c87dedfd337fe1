import type { ComparedFills } from "../../questions/product-comparison/result.ts";
import type { productComparison as templates } from "../en/product-comparison.ts";
import type { Format } from "../format.ts";

type Templates = Pick<
  typeof templates,
  "leftOut" | "productLeftOut" | "fillsWithoutBlock" | "fillsAlone"
>;

/** Says what of the log is not compared; null: everything is. */
export function leftOutSaying(format: Format, say: Templates) {
  return ({ leftOut: { products, withoutBlock, alone } }: ComparedFills): string | null => {
    const left = [
      ...products.map(say.productLeftOut),
      ...(withoutBlock === 0 ? [] : [say.fillsWithoutBlock(withoutBlock)]),
      ...(alone === 0 ? [] : [say.fillsAlone(alone)]),
    ];
    return left.length === 0 ? null : say.leftOut(format.list(left));
  };
}
