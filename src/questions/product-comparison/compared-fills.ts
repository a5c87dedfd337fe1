import { sum } from "simple-statistics";
import { at } from "../../errors/at.ts";
import { blocksOf, type ProductFill, type ProductGroup } from "../../model/product-groups.ts";
import type { Pair } from "../../statistics/simultaneous.ts";
import type { ComparedFills } from "./result.ts";

/**
 * What pairs of products rest on: within blocks the fills whose block another product of a pair shares, elsewhere every
 * fill of their products; and what of the log that leaves out.
 *
 * @param all     products of the log, among them the usable ones, to which the places of the pairs belong
 * @param within  whether fills are compared within blocks
 * @returns       null where there is no pair
 */
export function comparedFills(
  all: readonly ProductGroup[],
  usable: readonly ProductGroup[],
  pairs: readonly Pair[],
  within: boolean,
): ComparedFills | null {
  if (pairs.length === 0) return null;
  const shared = blocksInPairs(usable, pairs);
  const groups = [...shared.keys()];
  const isShared = (group: ProductGroup, { block }: ProductFill) =>
    !within || (block !== null && shared.get(group)?.has(block) === true);
  const fills = groups.flatMap((group) => group.fills.filter((fill) => isShared(group, fill)));
  const others = groups.flatMap((group) => group.fills.filter((fill) => !isShared(group, fill)));
  const withoutBlock = others.filter(({ block }) => block === null).length;
  return {
    products: groups.length,
    fills: fills.length,
    catches: sum(fills.map(({ fill }) => fill.totals.catches)),
    leftOut: {
      products: all
        .filter((group) => !shared.has(group))
        .map((group) => ({ product: group.product, fills: group.fills.length })),
      withoutBlock,
      alone: others.length - withoutBlock,
    },
  };
}

/** The blocks that pairs are compared in, and those of them that hold every product of a pair. */
export function comparedBlocks(
  usable: readonly ProductGroup[],
  pairs: readonly Pair[],
): { readonly count: number; readonly complete: number } {
  const shared = blocksInPairs(usable, pairs);
  const groups = [...shared.keys()];
  const blocks = [...new Set([...shared.values()].flatMap((own) => [...own]))];
  return {
    count: blocks.length,
    complete: blocks.filter((block) => groups.every((group) => blocksOf(group).has(block))).length,
  };
}

/** Products of a pair, each with the blocks that it shares with another one of its pairs. */
function blocksInPairs(
  usable: readonly ProductGroup[],
  pairs: readonly Pair[],
): ReadonlyMap<ProductGroup, ReadonlySet<string>> {
  const shared = new Map<ProductGroup, Set<string>>();
  const add = (group: ProductGroup, other: ProductGroup) => {
    const blocks = shared.get(group) ?? new Set();
    const others = blocksOf(other);
    for (const block of blocksOf(group)) if (others.has(block)) blocks.add(block);
    shared.set(group, blocks);
  };
  for (const { first, second } of pairs) {
    const [one, other] = [at(usable, first), at(usable, second)];
    add(one, other);
    add(other, one);
  }
  return shared;
}
