import Papa from "papaparse";
import { isEssential } from "./column-kinds.ts";
import { type CatchColumn, catchColumns } from "./columns.ts";
import { guarded } from "./formula-guard.ts";
import type { Cell } from "./table.ts";
import type { Catch } from "./types.ts";

/** A row as a plain object; null is an empty cell. */
export type PlainRow = Readonly<Record<string, Cell>>;

/** How rows are written; everything optional. */
export interface CsvOptions {
  /**
   * Default "point": comma between cells. "comma": what a spreadsheet opens where numbers have a decimal comma, with semicolons
   * between cells and a byte order mark, without which it takes the text for one of an older encoding.
   */
  readonly decimal?: DecimalMark;
}

/** How numbers are written in a file for a spreadsheet. */
export type DecimalMark = "point" | "comma";

export const byteOrderMark = "\ufeff";

/** Between the cells, by decimal mark. */
export const delimiters: Readonly<Record<DecimalMark, string>> = { point: ",", comma: ";" };

/**
 * Rows as comma-separated text with a header, lines ended by a line feed, numbers with every digit they have. A column
 * stands where the first row that has it puts it; a key that a row lacks is an empty cell. A text that a spreadsheet would
 * take for a formula has an apostrophe before it, which reading takes off again.
 *
 * @param rows     any number; none gives an empty text
 * @param options  decimal: mark of numbers, default "point"
 * Source          RFC 4180; OWASP, CSV Injection
 */
export function rowsToCsv(
  rows: readonly PlainRow[],
  { decimal = "point" }: CsvOptions = {},
): string {
  if (rows.length === 0) return "";
  const fields = columnsOf(rows);
  const data = rows.map((row) =>
    fields.map((field) => guarded(withMark(row[field] ?? null, decimal))),
  );
  const text = Papa.unparse(
    { fields: fields.map(guarded), data },
    { newline: "\n", delimiter: delimiters[decimal] },
  );
  return `${decimal === "comma" ? byteOrderMark : ""}${text}\n`;
}

function withMark(cell: Cell, decimal: DecimalMark): Cell {
  return typeof cell === "number" && decimal === "comma" ? String(cell).replace(".", ",") : cell;
}

/** Every column of the rows, in the order in which they first appear. */
export function columnsOf(rows: readonly PlainRow[]): readonly string[] {
  return [...new Set(rows.flatMap((row) => Object.keys(row)))];
}

/** The columns in which some row has something, and those that stand whether or not it has. */
export function knownColumns(
  rows: readonly PlainRow[],
  always: ReadonlySet<string>,
): readonly string[] {
  return columnsOf(rows).filter(
    (name) => always.has(name) || rows.some((row) => (row[name] ?? null) !== null),
  );
}

const alwaysInFile: ReadonlySet<string> = new Set(
  catchColumns.filter(isEssential).map(({ name }) => name),
);

/**
 * Catches as the text of a file of catches, which `readCatches` reads back to the same catches but for their row numbers.
 * Masses in kg; optional columns in which nothing is known are left out.
 */
export function catchesToCsv(catches: readonly Catch[]): string {
  const rows = catches.map(catchRow);
  const columns = knownColumns(rows, alwaysInFile);
  return rowsToCsv(
    rows.map((row) => Object.fromEntries(columns.map((name) => [name, row[name] ?? null]))),
  );
}

/** One catch under the headers of a file of catches, in the order of an empty sheet. */
export function catchRow(row: Catch): PlainRow {
  const cells = catchColumns.map((column) => [column.name, cellOf(row, column)]);
  return { ...Object.fromEntries(cells), ...row.extra };
}

function cellOf(row: Catch, { name, field }: CatchColumn): Cell {
  if (name === "exclude") return row.leftOut === null ? null : "yes";
  return field === null ? null : row[field];
}
