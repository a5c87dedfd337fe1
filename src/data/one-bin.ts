import { type Caution, caution } from "../results/caution.ts";
import { meanings, spelled } from "./header-names.ts";
import { unnamed } from "./identity.ts";
import type { Table } from "./table.ts";

/** What tells catches apart; a sheet that has none of these columns is that of one fill of one bin. */
const identity = ["bin", "product", "fill", "catch"] as const;

/**
 * The least that can be read: turns and masses alone, in the order they were caught. They are taken as the first fill of
 * one bin. A header that is not known, or any of the columns that tell catches apart, says that more was meant.
 *
 * @returns the table with these columns, and a note that says what was taken for granted; null: more was meant
 */
export function asOneBin(table: Table): { readonly table: Table; readonly note: Caution } | null {
  const known = table.headers.filter((header) => header.trim() !== "").map(meaningOf);
  if (known.some((meaning) => meaning === undefined)) return null;
  const plain = known.flatMap((meaning) =>
    meaning !== undefined && "plain" in meaning ? [meaning.plain] : [],
  );
  if (!plain.includes("turns") || identity.some((name) => plain.includes(name))) return null;
  const places = table.headers.length;
  const rows = Array.from(table.rows, (row, i) => {
    const own = Array.from({ length: places }, (_, column) => row.cells[column] ?? null);
    return { ...row, cells: [...own, "1", unnamed, "1", String(i + 1)] };
  });
  return {
    table: { ...table, headers: [...table.headers, ...identity], rows },
    note: caution("one-bin-taken", {}, { catches: rows.length }),
  };
}

function meaningOf(header: string) {
  return meanings.get(spelled(header).spelling);
}
