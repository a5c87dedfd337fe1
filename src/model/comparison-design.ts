import { completeBlocks } from "../statistics/comparison-layout.ts";
import type { SpreadLaw } from "../statistics/simultaneous.ts";
import { blockTable, type ProductGroup } from "./product-groups.ts";

/** "log": ratios of geometric means. */
export type ComparisonScale = "as measured" | "log";

/** What the person says of the fills of a comparison; "by design" leaves it to the blocks, never to a test. */
export interface DesignChoices {
  readonly spread: SpreadLaw | "by design";
  readonly scale: ComparisonScale | "by design";
  /** What makes a block, as for `blockOf`; null: fills of different products share nothing. */
  readonly blocks: string | null;
}

/** Choices with nothing left open. */
export type Designed<T extends DesignChoices> = Omit<T, "spread" | "scale"> & {
  readonly spread: SpreadLaw;
  readonly scale: ComparisonScale;
};

/** From so many blocks on, a pair knows its own scatter nearly as well, and nothing need be assumed of the others. */
export const mostPooledBlocks = 8;

/** Blocks of a comparison. */
export interface BlockCount {
  readonly products: number;
  /** Blocks in which every product was filled, among all blocks. */
  readonly complete: number;
  readonly blocks: number;
}

/**
 * Whether one spread is estimated for all products. By design: with three products or more in 2 to 8 complete blocks that
 * are more than half of all, where a pair alone has too few degrees of freedom to be worth the catches. Two products in
 * blocks need no pooling: the paired t test is the same. A common spread that is asked for within blocks needs two degrees
 * of freedom, (blocks − 1)·(products − 1); without them each pair keeps its own.
 *
 * @param count  null: no blocks
 */
export function spreadFor(asked: DesignChoices["spread"], count: BlockCount | null): SpreadLaw {
  if (count === null) return asked === "by design" ? "separate" : asked;
  const { products, complete, blocks } = count;
  if (asked !== "by design") return (complete - 1) * (products - 1) < 2 ? "separate" : asked;
  const few = complete > 1 && complete <= mostPooledBlocks;
  return products > 2 && few && 2 * complete > blocks ? "common" : "separate";
}

/**
 * Fills in what is left to the design.
 *
 * Spread: `spreadFor`. Scale: log within blocks, where what a block does to a meter it does in proportion; as measured
 * without blocks, or where a fill delivered nothing.
 *
 * @param groups  products that are compared, their fills with their blocks
 */
export function designed<T extends DesignChoices>(
  groups: readonly ProductGroup[],
  choices: T,
): Designed<T> {
  return {
    ...choices,
    spread: spreadFor(choices.spread, countOf(groups, choices)),
    scale: choices.scale === "by design" ? scaleOf(groups, choices) : choices.scale,
  };
}

function countOf(groups: readonly ProductGroup[], { blocks }: DesignChoices): BlockCount | null {
  if (blocks === null) return null;
  const { rows } = blockTable(groups, ({ delivery }) => delivery);
  const complete = completeBlocks(rows).length;
  return { products: groups.length, complete, blocks: rows.length };
}

function scaleOf(groups: readonly ProductGroup[], { blocks }: DesignChoices): ComparisonScale {
  if (blocks === null) return "as measured";
  const delivered = groups.every(({ fills }) => fills.every(({ fill }) => fill.delivery > 0));
  return delivered ? "log" : "as measured";
}
