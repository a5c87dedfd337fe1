import type { DataFrame } from "danfojs-node";
import { type CatchValues, catchFields, extraCells, extraPrefix } from "./data/catch-values.ts";
import { alwaysInFrame, cellIssues, frameSource, missingColumns } from "./data/frame-issues.ts";
import type { Cell } from "./data/table.ts";
import type { Catch } from "./data/types.ts";
import { knownColumns, type PlainRow } from "./data/write-csv.ts";
import { dataError } from "./errors/data-error.ts";
import { OptionError } from "./errors/errors.ts";

/** A row as a plain object; null is a gap. */
export type FrameRow = Readonly<Record<string, Cell>>;

/** What is needed of a data frame to read it. */
export interface FrameContent {
  readonly columns: readonly string[];
  /** Row by row. */
  readonly values: unknown;
}

/**
 * The catches as a data frame for tables and plots: one row a catch, columns named as in a file of catches with masses in
 * kg, and row, left_out (the reason, or a gap) and extra.HEADER beside them. Optional columns in which nothing is
 * known are left out.
 *
 * Every digit is kept, but danfojs-node computes between frames in single precision (8 digits at most), mixes up group keys
 * that hold a dash and turns "007" into 7 when it reads or writes text: use a frame to look at numbers, not to make them.
 *
 * @param catches  as read from a file, any number
 * @throws         Error when the optional package danfojs-node is not installed
 */
export async function catchesToFrame(catches: readonly Catch[]): Promise<DataFrame> {
  const rows = catches.map(frameRow);
  const columns = rows.length === 0 ? [...alwaysInFrame] : knownColumns(rows, alwaysInFrame);
  return newFrame(
    columns,
    rows.map((row) => columns.map((name) => row[name] ?? null)),
  );
}

function frameRow(row: Catch): PlainRow {
  const known = catchFields.map(({ field, column }) => [column, row[field]]);
  return { ...Object.fromEntries(known), ...extraCells(row) };
}

/**
 * Catches from a data frame, the way back from `catchesToFrame`. A gap, NaN or undefined in an optional column is null.
 * Each cell is checked by itself; whether rows agree with one another is not, since they were read from a file before.
 *
 * @param frame  with the columns row, bin, product, fill, catch, turns and net_kg, and others as catchesToFrame names them
 * @throws       DataError `bad-data` with every column that is missing and every cell that cannot be a catch's
 */
export function frameToCatches(frame: FrameContent): readonly Catch[] {
  const missing = missingColumns(frame.columns);
  if (missing.length > 0) throw dataError(frameSource, missing);
  const rows = frameToRows(frame);
  const issues = rows.flatMap((row, index) =>
    catchFields.flatMap((known) => cellIssues(index + 1, known, row[known.column] ?? null)),
  );
  if (issues.length > 0) throw dataError(frameSource, issues);
  return rows.map((row) => ({ ...fieldsOf(row), extra: extraOf(row) }));
}

/**
 * Any list of plain rows as a data frame, such as a tidy table of results. A key that a row lacks is a gap. Digits are kept; see
 * `catchesToFrame` for what not to do with a frame.
 *
 * @param rows  objects whose values are texts, finite numbers, true, false or null
 * @throws      OptionError `bad-option` for another kind of value, or a column named like a part of the frame itself
 */
export async function rowsToFrame(rows: readonly object[]): Promise<DataFrame> {
  const entries = rows.map((row) => new Map<string, unknown>(Object.entries(row)));
  const columns = [...new Set(entries.flatMap((row) => [...row.keys()]))];
  return newFrame(
    columns,
    entries.map((row) => columns.map((name) => plainCell(name, row.get(name) ?? null))),
  );
}

/**
 * The rows of a data frame as plain objects, the way back from `rowsToFrame`. What danfojs-node marks as missing (NaN or
 * undefined) is null.
 *
 * @throws  OptionError `bad-option` for a cell that holds no plain value
 */
export function frameToRows(frame: FrameContent): readonly FrameRow[] {
  const rows = frame.values as readonly (readonly unknown[])[];
  return rows.map((cells) =>
    Object.fromEntries(
      frame.columns.map((name, at) => {
        const cell = cells[at];
        return [name, cell === undefined || Number.isNaN(cell) ? null : plainCell(name, cell)];
      }),
    ),
  );
}

/** The package takes half a second to load, so only who asks for a frame pays for it. */
async function newFrame(columns: readonly string[], rows: Cell[][]): Promise<DataFrame> {
  const module = await import("danfojs-node");
  // A CommonJS package: some loaders give its parts by name, some only as a whole.
  const DataFrame = module.DataFrame ?? module.default.DataFrame;
  const empty = new DataFrame([]);
  const taken = columns.find((name) => name in empty);
  if (taken !== undefined) {
    throw new OptionError("column", taken, "a name that is no part of a data frame itself");
  }
  const dtypes = columns.map((_, at) => dtypeOf(rows.map((row) => row[at] ?? null)));
  return new DataFrame(rows, { columns: [...columns], dtypes });
}

/** Told, not left to be guessed: danfojs-node looks at the first rows only, and takes "007" for a number. */
function dtypeOf(cells: readonly Cell[]): string {
  const known = cells.filter((cell) => cell !== null);
  if (known.length > 0 && known.every((cell) => typeof cell === "boolean")) return "boolean";
  if (!known.every((cell) => typeof cell === "number")) return "string";
  // Every number is kept as it is under either name; int32 is for whole columns without a gap.
  return cells.every((cell) => typeof cell === "number" && (cell | 0) === cell)
    ? "int32"
    : "float32";
}

function plainCell(column: string, cell: unknown): Cell {
  const plain = cell === null || typeof cell === "string" || typeof cell === "boolean";
  if (plain || (typeof cell === "number" && Number.isFinite(cell))) return cell;
  throw new OptionError(column, cell, "text, a finite number, true, false or null in every row");
}

/** The cells have been checked against the rules of the same fields. */
function fieldsOf(row: FrameRow): CatchValues {
  return Object.fromEntries(
    catchFields.map(({ field, column }) => [field, row[column] ?? null]),
  ) as CatchValues;
}

function extraOf(row: FrameRow): Readonly<Record<string, string>> {
  const extra = Object.entries(row).filter(
    ([name, cell]) => name.startsWith(extraPrefix) && cell !== null,
  );
  return Object.fromEntries(
    extra.map(([name, cell]) => [name.slice(extraPrefix.length), String(cell)]),
  );
}
