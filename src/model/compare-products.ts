import { at } from "../errors/at.ts";
import {
  compareBlocks,
  compareGroups,
  comparePairsOfGroups,
  type GroupComparison,
  type GroupDesign,
} from "../statistics/group-comparison.ts";
import type { MeanContrast } from "../statistics/mean-comparison.ts";
import { allPairs, type Pair, pairsWithReference } from "../statistics/simultaneous.ts";
import type { DesignChoices, Designed } from "./comparison-design.ts";
import type { Fill } from "./meters.ts";
import { type BlockTable, blockTable, type ProductGroup, sharedBlocks } from "./product-groups.ts";

/** How products are compared; every choice resolved. */
export interface ComparisonDesign extends Designed<DesignChoices> {
  readonly level: number;
  /** Product that every other one is compared with; null: all pairs. */
  readonly reference: string | null;
  readonly equivalenceMargin: number | null;
}

export interface ComparedProducts extends GroupComparison {
  /** Null without blocks. */
  readonly blocks: BlockTable | null;
}

/** The pairs of a comparison: every two products, or every other one against the reference if that is among them. */
export function pairsOfProducts(
  groups: readonly ProductGroup[],
  reference: string | null,
): readonly Pair[] {
  if (reference === null) return allPairs(groups.length);
  const place = placeOf(groups, reference);
  return place === null ? [] : pairsWithReference(groups.length, place);
}

/**
 * Compares products with fills as the units: one value a fill, or one a block and product.
 *
 * @param groups       at least two products of at least two fills each, the reference among them
 * @param valueOfFill  what is compared, such as the delivery; above zero on the log scale
 */
export function compareProducts(
  groups: readonly ProductGroup[],
  design: ComparisonDesign,
  valueOfFill: (fill: Fill) => number,
): ComparedProducts {
  const value = onScale(design, valueOfFill);
  const judged = designOf(groups, design);
  if (design.blocks === null) {
    const values = groups.map(({ fills }) => fills.map(({ fill }) => value(fill)));
    return { ...compareGroups(values, judged), blocks: null };
  }
  const blocks = blockTable(groups, value);
  return { ...compareBlocks(blocks.rows, judged), blocks };
}

/**
 * The same with every catch counted as if it were a fill of its own, and without blocks. It finds differences that are
 * not there; only worth knowing where it would mislead, so each pair is compared by the very fills it is within blocks.
 */
export function compareByCatches(
  groups: readonly ProductGroup[],
  design: ComparisonDesign,
): readonly MeanContrast[] {
  const value = onScale(design, (delivery: number) => delivery);
  const judged = designOf(groups, design);
  const valuesOf = ({ fills }: ProductGroup, within: ReadonlySet<string> | null) =>
    fills
      .filter(({ block }) => within === null || (block !== null && within.has(block)))
      .flatMap(({ fill }) => fill.catches.map(({ netKg, turns }) => value(netKg / turns)));
  if (design.blocks === null || design.spread === "common") {
    // Within blocks one spread for all products rests on those that hold them all.
    const within = design.blocks === null ? null : sharedBlocks(groups);
    return compareGroups(
      groups.map((group) => valuesOf(group, within)),
      judged,
    ).contrasts;
  }
  const ownOf = ({ first, second }: Pair) => {
    const [a, b] = [at(groups, first), at(groups, second)];
    const within = sharedBlocks([a, b]);
    return within.size < 2 ? null : ([valuesOf(a, within), valuesOf(b, within)] as const);
  };
  return comparePairsOfGroups(
    groups.map((group) => valuesOf(group, null)),
    ownOf,
    judged,
  );
}

function designOf(
  groups: readonly ProductGroup[],
  { level, scale, spread, reference, equivalenceMargin }: ComparisonDesign,
): GroupDesign {
  return { level, scale, spread, margin: equivalenceMargin, reference: placeOf(groups, reference) };
}

function onScale<T>({ scale }: ComparisonDesign, value: (of: T) => number): (of: T) => number {
  return scale === "log" ? (of) => Math.log(value(of)) : value;
}

function placeOf(groups: readonly ProductGroup[], reference: string | null): number | null {
  const place = groups.findIndex(({ product }) => product === reference);
  return place < 0 ? null : place;
}
