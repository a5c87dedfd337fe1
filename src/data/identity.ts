import type { Catch } from "./types.ts";

/** A name that stands in every language for one that nobody gave. */
export const unnamed = "–";

/** The bin of one machine: what a meter sits under. */
export type BinPlace = Pick<Catch, "farm" | "machine" | "bin">;

/** What makes a meter: a bin of one machine with one product in it. */
export type MeterPlace = BinPlace & Pick<Catch, "product">;

/** What makes a fill of any product: the bin's number for it, within its season. */
export type FillingPlace = BinPlace & Pick<Catch, "season" | "fill">;

/** The same for rows of one bin, and for no others. */
export const binKey: (row: BinPlace) => string = keyOf(isSameBin, ({ farm, machine, bin }) => [
  farm,
  machine,
  bin,
]);

/** The same for rows of one meter, and for no others. */
export const meterKey: (row: MeterPlace) => string = keyOf(
  (one, other) => one.product === other.product && isSameBin(one, other),
  ({ farm, machine, bin, product }) => [farm, machine, bin, product],
);

/** The same for rows of one filling of a bin, and for no others. */
export const fillKey: (row: FillingPlace) => string = keyOf(
  isSameFilling,
  ({ farm, machine, bin, season, fill }) => [farm, machine, bin, season, fill],
);

export function isSameFilling(one: FillingPlace, other: FillingPlace): boolean {
  return one.fill === other.fill && one.season === other.season && isSameBin(one, other);
}

function isSameBin(one: BinPlace, other: BinPlace): boolean {
  return one.bin === other.bin && one.machine === other.machine && one.farm === other.farm;
}

/**
 * A text for some values of a row: every value with its length before it, so that no two rows of different values have the
 * same. Rows of one fill follow one another in most files, so the last one is remembered.
 */
function keyOf<Row>(
  isSame: (one: Row, other: Row) => boolean,
  valuesOf: (row: Row) => readonly (string | number | null)[],
): (row: Row) => string {
  let last: { readonly row: Row; readonly key: string } | null = null;
  return (row) => {
    if (last !== null && isSame(last.row, row)) return last.key;
    let key = "";
    for (const value of valuesOf(row))
      key += value === null ? " " : `${String(value).length} ${value}`;
    last = { row, key };
    return key;
  };
}
