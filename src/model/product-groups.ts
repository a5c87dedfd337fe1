import { groupBy } from "../numeric/group-by.ts";
import { keptWith } from "../numeric/kept.ts";
import { mean } from "../statistics/summary.ts";
import type { Fill } from "./meters.ts";
import type { Model } from "./model.ts";

/** One fill of a product, in whichever bin. */
export interface ProductFill {
  readonly fill: Fill;
  /** What it shares with fills of other products; null: unknown, or no blocks are asked for. */
  readonly block: string | null;
}

/** All fills of one product. */
export interface ProductGroup {
  readonly product: string;
  /** In the order of the bins in the file. */
  readonly bins: readonly string[];
  readonly fills: readonly ProductFill[];
}

/**
 * Fills sorted by product, over all bins; products in the order in which the file first names them.
 *
 * @param blocks  what makes a block, as for `blockOf`; null: no blocks
 */
export function productGroups(model: Model, blocks: string | null): readonly ProductGroup[] {
  return [...groupBy(model.meters, ({ product }) => product)].map(([product, meters]) => ({
    product,
    bins: meters.map(({ bin }) => bin),
    fills: meters.flatMap(({ fills }) =>
      fills.map((fill) => ({ fill, block: blocks === null ? null : blockOf(fill, blocks) })),
    ),
  }));
}

/**
 * The block of a fill: its bin, the date of its first catch, or what its catches say in a column of the file.
 *
 * @param by  "bin", "date" or the header of a column
 * @returns   null when unknown, which an empty cell is too, or when catches of the fill disagree
 */
export function blockOf(fill: Fill, by: string): string | null {
  if (by === "bin") return fill.bin;
  if (by === "date") return fill.takenAt?.slice(0, 10) ?? null;
  const [label = "", ...others] = new Set(fill.catches.map((row) => row.extra[by] ?? ""));
  return label === "" || others.length > 0 ? null : label;
}

/** Everything that could be named as a block in these catches: the bin, the date and every column of the file's own. */
export function blockNames(model: Model): readonly string[] {
  const catches = model.meters.flatMap(({ fills }) => fills.flatMap((fill) => fill.catches));
  return ["bin", "date", ...new Set(catches.flatMap(({ extra }) => Object.keys(extra)))];
}

/** The blocks that every one of these products was filled in. */
export function sharedBlocks(groups: readonly ProductGroup[]): ReadonlySet<string> {
  const [first = new Set<string>(), ...others] = groups.map(blocksOf);
  return new Set([...first].filter((block) => others.every((own) => own.has(block))));
}

/** The blocks of a product's fills, as far as they are known. */
export const blocksOf = keptWith(
  ({ fills }: ProductGroup): ReadonlySet<string> =>
    new Set(fills.flatMap(({ block }) => block ?? [])),
);

/** Fills in blocks: one row a block, one value a product, the mean where a product was filled twice in it. */
export interface BlockTable {
  readonly labels: readonly string[];
  readonly rows: readonly (readonly (number | null)[])[];
}

export function blockTable(
  groups: readonly ProductGroup[],
  valueOfFill: (fill: Fill) => number,
): BlockTable {
  const labels = [
    ...new Set(groups.flatMap(({ fills }) => fills.flatMap(({ block }) => block ?? []))),
  ];
  return {
    labels,
    rows: labels.map((label) =>
      groups.map(({ fills }) => {
        const values = fills
          .filter(({ block }) => block === label)
          .map(({ fill }) => valueOfFill(fill));
        return values.length === 0 ? null : mean(values);
      }),
    ),
  };
}
