import type { CellObject, ParsingOptions, WorkBook, WorkSheet } from "@e965/xlsx";
import { type Checked, failed, type Place, passed } from "./issues.ts";
import { notAWorkbook, safeWorkbook } from "./safe-workbook.ts";
import { type Cell, isBlank, type TableRow } from "./table.ts";

type Library = typeof import("@e965/xlsx");

/** What lies in one sheet: rows with anything in them, numbered as the sheet numbers them. */
export interface SheetContent {
  readonly rows: readonly TableRow[];
  /** Cells that were made one, by row as the sheet counts and column from 0; the value stands in the first. */
  readonly merged: readonly Merged[];
  /** Formulas by row and column, as `cellKey` names them. Their stored values stand in the rows. */
  readonly formulas: ReadonlyMap<string, string>;
  /** Cells, named so too, that show a hundred times their figure with a percent sign. */
  readonly percents: ReadonlySet<string>;
  /** Cells, named so too, whose formula nobody worked out: they stand as blank. */
  readonly valueless: ReadonlySet<string>;
  /** Rows that a filter or a hand hides, by number. */
  readonly hiddenRows: ReadonlySet<number>;
}

export interface Merged {
  readonly rows: readonly [first: number, last: number];
  readonly columns: readonly [first: number, last: number];
}

export interface Workbook {
  readonly sheets: readonly string[];
  /** Those whose tab nobody sees. */
  readonly hidden: ReadonlySet<string>;
  /** Null where the workbook has no such sheet. */
  readonly content: (sheet: string) => Checked<SheetContent> | null;
}

export function cellKey(row: number, column: number): string {
  return `${row}:${column}`;
}

/** The part of the library's number formatter that is used here; it comes without types. */
interface DateFormatter {
  is_date(format: string): boolean;
  parse_date_code(
    serial: number,
    options: { date1904: boolean },
  ): { y: number; m: number; d: number; H: number; M: number; S: number } | null;
}

/**
 * A workbook in memory. The library is loaded only when a workbook comes, since it is larger than everything else together.
 */
export async function openWorkbook(name: string, bytes: Uint8Array): Promise<Checked<Workbook>> {
  const place: Place = { source: name, rowKind: "row" };
  const read = await readBook(place, bytes, {
    cellNF: true,
    cellText: false,
    cellHTML: false,
    // Hidden rows are told with the styles only, and formulas without a value with the empty cells.
    cellStyles: true,
    sheetStubs: true,
  });
  if (!read.ok) return read;
  const { library, book } = read.value;
  namesOf.set(bytes, book.SheetNames);
  const readCell = cellReader(library, book);
  return passed({
    sheets: book.SheetNames,
    hidden: new Set(
      (book.Workbook?.Sheets ?? []).flatMap(({ name, Hidden }) =>
        name !== undefined && Hidden !== undefined && Hidden > 0 ? [name] : [],
      ),
    ),
    content: (name) => {
      const sheet = book.SheetNames.includes(name) ? book.Sheets[name] : undefined;
      if (sheet === undefined) return null;
      const content = contentOf(library, sheet, readCell);
      return content === null ? failed([notAWorkbook(place, bytes)]) : passed(content);
    },
  });
}

/** Of workbooks that were read: a report names the sheet, and need not unpack all of them again. */
const namesOf = new WeakMap<Uint8Array, readonly string[]>();

/** Names of the sheets of a workbook, without reading what lies in them. */
export async function sheetNames(
  name: string,
  bytes: Uint8Array,
): Promise<Checked<readonly string[]>> {
  const known = namesOf.get(bytes);
  if (known !== undefined) return passed(known);
  const read = await readBook({ source: name, rowKind: "row" }, bytes, { bookSheets: true });
  return read.ok ? passed(read.value.book.SheetNames) : read;
}

/** The only way by which the library comes to a file. */
async function readBook(
  place: Place,
  bytes: Uint8Array,
  options: ParsingOptions,
): Promise<Checked<{ readonly library: Library; readonly book: WorkBook }>> {
  const safe = await safeWorkbook(place, bytes);
  if (!safe.ok) return safe;
  const library = await import("@e965/xlsx");
  try {
    return passed({ library, book: library.read(safe.value, options) });
  } catch {
    return failed([notAWorkbook(place, bytes)]);
  }
}

type ReadCell = (cell: CellObject | undefined) => Cell;

/** No sheet is larger; a damaged file may say so, and must not make us go through rows that are not there. */
const sheetRows = 1_048_576;
const sheetColumns = 16_384;

/** From the cells that exist. Null when one lies outside any sheet. */
function contentOf(library: Library, sheet: WorkSheet, readCell: ReadCell): SheetContent | null {
  const formulas = new Map<string, string>();
  const percents = new Set<string>();
  const valueless = new Set<string>();
  const cellsByRow = new Map<number, Cell[]>();
  for (const address of Object.keys(sheet)) {
    // What is not a cell, such as the range of the sheet, has a name with an exclamation mark.
    if (address.startsWith("!")) continue;
    const { r: row, c: column } = library.utils.decode_cell(address);
    const inside = row >= 0 && row < sheetRows && column >= 0 && column < sheetColumns;
    if (!inside) return null;
    const cells = cellsByRow.get(row) ?? [];
    cells[column] = readCell(sheet[address]);
    cellsByRow.set(row, cells);
    const { f: formula, z: format, t: type } = sheet[address];
    if (typeof formula === "string") formulas.set(cellKey(row + 1, column), formula);
    if (typeof formula === "string" && (type === "z" || sheet[address].v === ""))
      valueless.add(cellKey(row + 1, column));
    if (type === "n" && String(format).endsWith("%")) percents.add(cellKey(row + 1, column));
  }
  const rows = [...cellsByRow]
    .map(([row, cells]) => ({ number: row + 1, cells }))
    .filter(({ cells }) => !cells.every(isBlank))
    .sort((one, other) => one.number - other.number);
  const merged = (sheet["!merges"] ?? []).map(
    ({ s, e }): Merged => ({
      rows: [s.r + 1, e.r + 1],
      columns: [s.c, e.c],
    }),
  );
  const hiddenRows = new Set(
    (sheet["!rows"] ?? []).flatMap((row, i) => (row?.hidden === true ? [i + 1] : [])),
  );
  return { rows, merged, formulas, percents, valueless, hiddenRows };
}

function cellReader(library: Library, book: WorkBook): ReadCell {
  const formatter: DateFormatter = library.SSF;
  const date1904 = book.Workbook?.WBProps?.date1904 ?? false;
  return (cell) => {
    const value = cell?.v;
    if (cell?.t === "z") return null;
    if (cell?.t === "e") return errorTexts[Number(value)] ?? "#VALUE!";
    if (typeof value === "string" || typeof value === "boolean") return value;
    if (typeof value !== "number") return null;
    if (!Number.isFinite(value)) return value;
    if (typeof cell?.z === "string" && formatter.is_date(cell.z)) {
      const date = formatter.parse_date_code(value, { date1904 });
      // Below one there is a time of day and no day: the day that the format counts from is none of anybody's.
      const timeAlone = value >= 0 && value < 1;
      return (timeAlone ? timeText(date) : isoText(date)) ?? value;
    }
    // A spreadsheet works to 15 digits: what it shows as 5.89 may be stored as 5.890000000000001.
    return Number(value.toPrecision(15));
  };
}

/** What a cell shows whose formula failed, by the code the file stores. */
const errorTexts: Readonly<Record<number, string>> = {
  0: "#NULL!",
  7: "#DIV/0!",
  15: "#VALUE!",
  23: "#REF!",
  29: "#NAME?",
  36: "#NUM!",
  42: "#N/A",
};

type DateCode = ReturnType<DateFormatter["parse_date_code"]>;

function isoText(date: DateCode): string | null {
  if (date === null) return null;
  const day = `${String(date.y).padStart(4, "0")}-${two(date.m)}-${two(date.d)}`;
  const time = timeText(date);
  return time === "00:00:00" ? day : `${day}T${time}`;
}

function timeText(date: DateCode): string | null {
  return date === null ? null : `${two(date.H)}:${two(date.M)}:${two(date.S)}`;
}

function two(part: number): string {
  return String(part).padStart(2, "0");
}
