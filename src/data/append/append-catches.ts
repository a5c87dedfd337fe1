import Papa from "papaparse";
import type { FillName } from "../../results/fill-name.ts";
import { convert } from "../../units/convert.ts";
import { guarded } from "../formula-guard.ts";
import { type Checked, passed } from "../issues.ts";
import { logNames } from "../log-names.ts";
import { checkText } from "../read-text.ts";
import type { CatchIdentity } from "../rows.ts";
import type { CatchLog, MassUnit } from "../types.ts";
import { type Belonging, belongingOf } from "./belonging.ts";
import { massCells, type NewCatch, sameAsNewest } from "./mass-cells.ts";
import type { Missing } from "./missing.ts";
import { type OpenTable, openTable } from "./open-table.ts";

export type Appended =
  | {
      readonly ok: true;
      /** What goes behind the last byte of the file. */
      readonly added: string;
      readonly rows: readonly AddedRow[];
    }
  | { readonly ok: false; readonly missing: Missing };

export interface AddedRow {
  /** Null: the file names no bins. */
  readonly where: {
    readonly bin: string;
    readonly product: string;
    readonly fill: FillName;
    readonly catch: number;
  } | null;
  /** Why it has no mass; null: it has one. */
  readonly spilled: string | null;
  /** What stands in the file now, read back from it; null: it has no mass. */
  readonly caught: Caught | null;
}

/** Masses in the unit of the file, whatever the unit they were typed in. */
export interface Caught {
  readonly turns: number;
  readonly net: number;
  /** Null: the file keeps net. */
  readonly tare: number | null;
  readonly unit: MassUnit;
}

/**
 * More catches for the end of a file: under the headers it has, with its separator, decimal mark, units and line ends. The
 * whole that comes out has been read and checked as any file is.
 *
 * @param name   of a file of text: .csv, .tsv or .txt
 * @param bytes  UTF-8; a header and nothing below it will do
 */
export function appendCatches(
  name: string,
  bytes: Uint8Array,
  catches: readonly NewCatch[],
  to: Belonging,
): Checked<Appended> {
  const opened = openTable(name, bytes);
  if (!opened.ok) return opened;
  const file = opened.value;
  const belonging = belongingOf(file, to);
  if ("is" in belonging) return passed({ ok: false, missing: belonging });
  const masses = massCells(file, catches, to.tare);
  if ("is" in masses) return passed({ ok: false, missing: masses });
  if (to.again !== true && sameAsNewest(file, belonging.fellows, masses))
    return passed({ ok: false, missing: { is: "again", catches: catches.length } });
  const rows = masses.map((cells, i) => new Map([...belonging.cells(i), ...cells]));
  const lines = rows.map((row) =>
    file.table.headers.map((_, column) => guarded(row.get(column) ?? "")),
  );
  const text = Papa.unparse(lines, { delimiter: file.separator, newline: file.lineEnd });
  const start = /[\r\n]$/.test(file.text) ? "" : file.lineEnd;
  const added = `${start}${text}${file.lineEnd}`;
  const check = checkText({ name, text: file.text + added });
  return check.ok
    ? passed({ ok: true, added, rows: addedRows(check.value, file, rows.length) })
    : check;
}

/** The last rows of the log, named as they are on every surface. */
function addedRows(log: CatchLog, { columns }: OpenTable, count: number): readonly AddedRow[] {
  const identities: readonly CatchIdentity[] = [...log.catches, ...(log.missed ?? [])];
  const names = logNames(identities);
  const caught = caughtIn(log);
  const spilled = new Map((log.missed ?? []).map(({ row, reason }) => [row, reason]));
  return identities
    .toSorted((one, other) => one.row - other.row)
    .slice(-count)
    .map((row) => ({
      where: columns.plain.has("bin")
        ? { bin: names.bin(row), product: row.product, fill: names.fill(row), catch: row.catch }
        : null,
      spilled: spilled.get(row.row) ?? null,
      caught: caught.get(row.row) ?? null,
    }));
}

/** By row. */
function caughtIn({ catches, written = [] }: CatchLog): ReadonlyMap<number, Caught> {
  const weights = new Map(written.map((one) => [one.row, one]));
  return new Map(
    catches.flatMap(({ row, turns, netKg }) => {
      const own = weights.get(row);
      if (own === undefined) return [];
      const { unit, tare } = own;
      const net = convert(netKg, "kg", unit);
      return [[row, { turns, net, tare: tare === null ? null : Number(tare), unit }] as const];
    }),
  );
}
