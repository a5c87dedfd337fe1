import { groupsOf } from "../groups.ts";
import { cellText } from "../table.ts";
import type { Grid } from "./grid.ts";

/** Text of the cell above that a blank one was merged with, by row number and column; "" where it was with none. */
export type MergedAbove = (row: number, column: number) => string;

/** Merged cells are sought by column and row: a sheet may have a million of both. */
export function mergedAbove({ merged, rows }: Pick<Grid, "merged" | "rows">): MergedAbove {
  if (merged.length === 0) return () => "";
  const sorted = merged.toSorted((one, other) => one.rows[0] - other.rows[0]);
  const byColumn = new Map(
    groupsOf(sorted, ({ columns }) => String(columns[0])).map((group) => [
      group[0]?.columns[0],
      group,
    ]),
  );
  const byNumber = new Map(rows.map((row) => [row.number, row]));
  return (row, column) => {
    const own = byColumn.get(column) ?? [];
    // No two of a sheet overlap, so that only the last one that begins above can reach down here.
    let [from, to] = [0, own.length];
    while (from < to) {
      const middle = (from + to) >> 1;
      if ((own[middle]?.rows[0] ?? row) < row) from = middle + 1;
      else to = middle;
    }
    const over = own[from - 1];
    if (over === undefined || row > over.rows[1]) return "";
    return cellText(byNumber.get(over.rows[0])?.cells[column]);
  };
}
