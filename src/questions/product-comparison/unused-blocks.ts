import { blockOf, type ProductGroup } from "../../model/product-groups.ts";

/** Columns that usually name what fills share, and the dates; the order in which they are offered. */
const usualBlocks = ["block", "day", "date"];
/** Blocks worth a remark: with two, pairing leaves one degree of freedom. */
const fewestBlocks = 3;

/** Blocks that every product shares although nobody asked for them; null when there are none to speak of. */
export function unusedBlocks(
  groups: readonly ProductGroup[],
): { readonly by: string; readonly blocks: number } | null {
  for (const by of usualBlocks) {
    const labels = groups.map(({ fills }) => fills.map(({ fill }) => blockOf(fill, by)));
    const all = new Set(labels.flat());
    const complete = labels.every(
      (own) => own.length === all.size && new Set(own).size === all.size,
    );
    if (complete && !all.has(null) && all.size >= fewestBlocks) return { by, blocks: all.size };
  }
  return null;
}
