import { type KeyColumn, keyColumns } from "../column-kinds.ts";
import { logNames } from "../log-names.ts";
import { cellText, type TableRow } from "../table.ts";
import type { Missing } from "./missing.ts";
import { type OpenTable, textIn } from "./open-table.ts";

/** Where the search for the fellows of new catches begins. */
export interface Told {
  /** By column: what is told for all of them. */
  readonly cells: ReadonlyMap<number, string>;
  /** Undefined: nobody says which. */
  readonly bin: string | undefined;
  /** ISO 8601. */
  readonly day: string;
}

interface Keyed {
  /** Rows of the same farm, machine and season. */
  readonly rows: readonly TableRow[];
  /** Cells that name these. */
  readonly cells: ReadonlyMap<number, string>;
}

/**
 * Whose catches are added: of the only farm and machine it can be, in the newest season; or which of them has to be told first.
 * A season named by years that are not that of the day is over, and goes on only when it is told.
 */
export function keyedRows({ table, columns }: OpenTable, told: Told): Keyed | Missing {
  const ofBin = table.rows.filter((row) => textIn(row, columns, "bin") === told.bin);
  let rows = ofBin.length > 0 ? ofBin : table.rows;
  const cells = new Map<number, string>();
  for (const key of keyColumns) {
    const index = columns.plain.get(key)?.index;
    if (index === undefined) continue;
    const names = namesIn(rows.length > 0 ? rows : table.rows, key, index);
    const value = told.cells.get(index) ?? (key === "season" ? names.at(-1) : names[0]);
    if (!told.cells.has(index) && isOpen(key, names, told.day))
      return { is: "key", name: key, names };
    if (value === undefined) continue;
    cells.set(index, value);
    rows = rows.filter((row) => cellText(row.cells[index]) === value);
  }
  return { rows, cells };
}

/** Each name once; seasons from the first to the newest. */
function namesIn(rows: readonly TableRow[], key: KeyColumn, index: number): readonly string[] {
  const all = rows.map((row) => cellText(row.cells[index])).filter((text) => text !== "");
  const names = [...new Set(all)];
  if (key !== "season") return names;
  const { seasonRank } = logNames(names.map((season) => ({ farm: null, machine: null, season })));
  return names.toSorted((one, other) => seasonRank(one) - seasonRank(other));
}

function isOpen(key: KeyColumn, names: readonly string[], day: string): boolean {
  if (key !== "season") return names.length > 1;
  const years = yearsIn(names.at(-1) ?? "");
  return years.length > 0 && !years.includes(day.slice(0, 4));
}

/** The years that a season is named by: 2026, or 2025 and 2026 in "2025/26". */
function yearsIn(season: string): readonly string[] {
  return [...season.matchAll(/(\d\d)(\d\d)(?:\s?[/–-]\s?(\d{2}|\d{4})(?!\d))?/g)].flatMap(
    ([, century = "", year = "", second]) => [
      century + year,
      ...(second === undefined ? [] : [second.length === 2 ? century + second : second]),
    ],
  );
}
