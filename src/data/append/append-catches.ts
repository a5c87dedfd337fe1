import Papa from "papaparse";
import type { PlainColumn } from "../column-kinds.ts";
import { type Checked, passed } from "../issues.ts";
import { checkText } from "../read-text.ts";
import { type Belonging, belongingOf, type Missing } from "./belonging.ts";
import { massCells, type NewCatch, sameAsNewest } from "./mass-cells.ts";
import { type OpenTable, openTable } from "./open-table.ts";

export type Appended =
  | {
      readonly ok: true;
      /** What goes behind the last byte of the file. */
      readonly added: string;
      readonly rows: readonly AddedRow[];
    }
  | { readonly ok: false; readonly missing: Missing };

/** A row as it was added; null: the file has no such column. */
export interface AddedRow {
  readonly bin: string | null;
  readonly product: string | null;
  readonly fill: string | null;
  readonly catch: string | null;
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
  if (masses === null) return passed({ ok: false, missing: { is: "tare" } });
  if (to.again !== true && sameAsNewest(file, belonging.fellows, masses))
    return passed({ ok: false, missing: { is: "again", catches: catches.length } });
  const rows = masses.map((cells, i) => new Map([...belonging.cells(i), ...cells]));
  const lines = rows.map((row) => file.table.headers.map((_, column) => row.get(column) ?? ""));
  const text = Papa.unparse(lines, { delimiter: file.separator, newline: file.lineEnd });
  const start = /[\r\n]$/.test(file.text) ? "" : file.lineEnd;
  const added = `${start}${text}${file.lineEnd}`;
  const check = checkText({ name, text: file.text + added });
  return check.ok
    ? passed({ ok: true, added, rows: rows.map((row) => addedRow(row, file)) })
    : check;
}

function addedRow(row: ReadonlyMap<number, string>, { columns }: OpenTable): AddedRow {
  const cell = (name: PlainColumn) => {
    const index = columns.plain.get(name)?.index;
    return index === undefined ? null : (row.get(index) ?? null);
  };
  return { bin: cell("bin"), product: cell("product"), fill: cell("fill"), catch: cell("catch") };
}
