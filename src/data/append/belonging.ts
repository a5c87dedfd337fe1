import type { PlainColumn } from "../column-kinds.ts";
import { meanings, spelled } from "../header-names.ts";
import { cellText, type TableRow } from "../table.ts";
import { keyedRows } from "./keyed-rows.ts";
import type { Missing } from "./missing.ts";
import { type OpenTable, textIn } from "./open-table.ts";

/** Where new catches belong; what is left out is as in the newest catch of the bin. */
export interface Belonging {
  readonly bin?: string;
  readonly product?: string;
  /** "next": a new filling. */
  readonly fill?: number | "next";
  /** Mass of the container, in the unit of the file, where what was typed is weighed with it. */
  readonly tare?: string;
  /** Values of other columns, for all of them. */
  readonly set?: Readonly<Record<string, string>>;
  /** The day, for a file that says when catches were taken. */
  readonly takenAt: string;
  /** Whether catches that stand there may be added once more. */
  readonly again?: boolean;
}

interface Found {
  /** Rows of the same fill, in the order of the file. */
  readonly fellows: readonly TableRow[];
  /** Cells of the i-th new catch, but for turns and masses. */
  readonly cells: (i: number) => ReadonlyMap<number, string>;
}

/** Bin, product, fill and number of new catches, and what else is the same for all of them; or what has to be told first. */
export function belongingOf(file: OpenTable, to: Belonging): Found | Missing {
  const { columns } = file;
  const told = toldCells(file, to);
  if ("is" in told) return told;
  const day = told.get(columns.plain.get("taken_at")?.index ?? -1) ?? to.takenAt;
  const keyed = keyedRows(file, { cells: told, bin: to.bin, day });
  if ("is" in keyed) return keyed;
  const { rows } = keyed;
  const same = new Map([...keyed.cells, ...told]);
  if (!columns.plain.has("bin")) {
    const named = to.bin ?? to.product ?? to.fill;
    if (named !== undefined) return { is: "column", name: "bin" };
    return { fellows: rows, cells: () => same };
  }
  const of = (row: TableRow | undefined, name: PlainColumn) => textIn(row, columns, name);
  const bins = [...new Set(rows.map((row) => of(row, "bin")))];
  const bin = to.bin ?? (bins.length === 1 ? bins[0] : undefined);
  if (bin === undefined) return { is: "bin", names: bins };
  const ofBin = rows.filter((row) => of(row, "bin") === bin);
  const newest = ofBin.at(-1);
  const highest = ofBin.reduce((most, row) => Math.max(most, Number(of(row, "fill"))), 0);
  const held = newest === undefined ? null : of(newest, "product");
  const fill = fillOf(to.fill, highest, of(newest, "fill"));
  const inFill = ofBin.filter((row) => of(row, "fill") === fill);
  const product = to.product ?? held;
  // Another product in a fill is a new filling that nobody has told of.
  const holds = inFill.at(-1);
  if (product === null || (holds !== undefined && of(holds, "product") !== product))
    return { is: "product", bin, held: holds === undefined ? null : of(holds, "product") };
  const outlet = columns.plain.get("outlet")?.index;
  const fellows = inFill.filter(
    (row) => outlet === undefined || cellText(row.cells[outlet]) === (told.get(outlet) ?? ""),
  );
  const last = fellows.reduce((most, row) => Math.max(most, Number(of(row, "catch"))), 0);
  const place = (name: PlainColumn, value: string): [number, string][] => {
    const index = columns.plain.get(name)?.index;
    return index === undefined ? [] : [[index, value]];
  };
  return {
    fellows,
    cells: (i) =>
      new Map([
        ...same,
        ...place("bin", bin),
        ...place("product", product),
        ...place("fill", fill),
        ...place("catch", String(last + i + 1)),
      ]),
  };
}

function fillOf(asked: Belonging["fill"], highest: number, newest: string): string {
  if (asked === "next") return String(highest + 1);
  if (asked !== undefined) return String(asked);
  return newest === "" ? "1" : newest;
}

function toldCells(
  { table, columns }: OpenTable,
  { set = {}, takenAt }: Belonging,
): ReadonlyMap<number, string> | Missing {
  const cells = new Map<number, string>();
  const day = columns.plain.get("taken_at")?.index;
  if (day !== undefined) cells.set(day, takenAt);
  for (const [name, value] of Object.entries(set)) {
    const wanted = spelled(name).spelling;
    const meant = meanings.get(wanted);
    const known = meant !== undefined && "plain" in meant ? columns.plain.get(meant.plain) : null;
    const index =
      known?.index ?? table.headers.findIndex((header) => spelled(header).spelling === wanted);
    if (index === -1) return { is: "column", name };
    cells.set(index, value);
  }
  return cells;
}
