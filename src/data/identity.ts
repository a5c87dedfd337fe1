import type { Catch } from "./types.ts";

/** What tells bins, meters and fills apart, in this order; one more is one more here. */
const binColumns = ["farm", "machine", "bin"] as const;
const meterColumns = [...binColumns, "product"] as const;
const fillColumns = [...binColumns, "season", "fill"] as const;

/** The bin of one machine: what a meter sits under. */
export type BinPlace = Pick<Catch, (typeof binColumns)[number]>;

/** What makes a meter: a bin of one machine with one product in it. */
export type MeterPlace = Pick<Catch, (typeof meterColumns)[number]>;

/** What makes a fill of any product: the bin's number for it, within its season. */
export type FillingPlace = Pick<Catch, (typeof fillColumns)[number]>;

/** The same for rows of one bin, and for no others. */
export const binKey: (row: BinPlace) => string = keyOf(binColumns);

/** The same for rows of one meter, and for no others. */
export const meterKey: (row: MeterPlace) => string = keyOf(meterColumns);

/** The same for rows of one filling of a bin, and for no others. */
export const fillKey: (row: FillingPlace) => string = keyOf(fillColumns);

/**
 * A text for the values of some columns: every value with its length before it, so that no two rows of different values have
 * the same. Rows of one fill follow one another in most files, so the last one is remembered.
 */
function keyOf<Column extends keyof Catch>(
  columns: readonly Column[],
): (row: Pick<Catch, Column>) => string {
  let last: readonly unknown[] | null = null;
  let key = "";
  return (row) => {
    if (last !== null && columns.every((name, i) => row[name] === last?.[i])) return key;
    last = columns.map((name) => row[name]);
    key = last.map((value) => `${value === null ? "" : String(value).length} ${value}`).join("");
    return key;
  };
}
