import type { CellObject, WorkBook, WorkSheet } from "@e965/xlsx";
import type { DataIssue } from "../errors/data-issue.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { notAWorkbook, safeWorkbook } from "./safe-workbook.ts";
import { type Cell, cellText, isBlank, type Table, type TableRow } from "./table.ts";

type Library = typeof import("@e965/xlsx");

/** The part of the library's number formatter that is used here; it comes without types. */
interface DateFormatter {
  is_date(format: string): boolean;
  parse_date_code(
    serial: number,
    options: { date1904: boolean },
  ): { y: number; m: number; d: number; H: number; M: number; S: number } | null;
}

/**
 * A table from the first sheet of a workbook, or from the one named. Row numbers are the sheet's own. The library is
 * loaded only when a workbook comes, since it is larger than everything else together.
 */
export async function readXlsx(
  name: string,
  bytes: Uint8Array,
  sheetName: string | undefined,
): Promise<Checked<Table>> {
  const place: Place = { source: name, rowKind: "row" };
  const safe = await safeWorkbook(place, bytes);
  if (!safe.ok) return safe;
  const library = await import("@e965/xlsx");
  let book: WorkBook;
  try {
    book = library.read(safe.value, { cellNF: true, cellText: false, cellHTML: false });
  } catch {
    return failed([notAWorkbook(place, bytes)]);
  }
  const chosen = sheetName ?? book.SheetNames[0];
  const sheet = chosen === undefined ? undefined : book.Sheets[chosen];
  if (chosen === undefined || sheet === undefined || !book.SheetNames.includes(chosen)) {
    return failed([noSuchSheet(place, sheetName, book.SheetNames)]);
  }
  const rows = rowsOf(library, sheet, cellReader(library, book));
  if (rows === null) return failed([notAWorkbook(place, bytes)]);
  const [header, ...rest] = rows;
  if (header === undefined) return failed([emptySheet(place, chosen, book.SheetNames)]);
  const width = rows.reduce((widest, { cells }) => Math.max(widest, cells.length), 0);
  const headers = Array.from({ length: width }, (_, index) => cellText(header.cells[index]));
  return passed({
    headers,
    headerRow: header.number,
    rows: rest,
    issues: [],
    rowKind: "row",
    // Numbers of a sheet have no mark; a figure typed as text has that of whoever typed it.
    decimalMark: "unknown",
  });
}

type ReadCell = (cell: CellObject | undefined) => Cell;

/** No sheet is larger; a damaged file may say so, and must not make us go through rows that are not there. */
const sheetRows = 1_048_576;
const sheetColumns = 16_384;

/** Rows with anything in them, from the cells that exist. Null when a cell lies outside any sheet. */
function rowsOf(
  library: Library,
  sheet: WorkSheet,
  readCell: ReadCell,
): readonly TableRow[] | null {
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
  }
  return [...cellsByRow]
    .map(([row, cells]) => ({ number: row + 1, cells }))
    .filter(({ cells }) => !cells.every(isBlank))
    .sort((one, other) => one.number - other.number);
}

function cellReader(library: Library, book: WorkBook): ReadCell {
  const formatter: DateFormatter = library.SSF;
  const date1904 = book.Workbook?.WBProps?.date1904 ?? false;
  return (cell) => {
    const value = cell?.v;
    if (cell?.t === "e") return errorTexts[Number(value)] ?? "#VALUE!";
    if (typeof value === "string" || typeof value === "boolean") return value;
    if (typeof value !== "number") return null;
    if (!Number.isFinite(value)) return value;
    if (typeof cell?.z === "string" && formatter.is_date(cell.z)) {
      return isoText(formatter.parse_date_code(value, { date1904 })) ?? value;
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

function isoText(date: ReturnType<DateFormatter["parse_date_code"]>): string | null {
  if (date === null) return null;
  const two = (part: number) => String(part).padStart(2, "0");
  const day = `${String(date.y).padStart(4, "0")}-${two(date.m)}-${two(date.d)}`;
  const time = `${two(date.H)}:${two(date.M)}:${two(date.S)}`;
  return time === "00:00:00" ? day : `${day}T${time}`;
}

function noSuchSheet(
  place: Place,
  sheet: string | undefined,
  sheets: readonly string[],
): DataIssue {
  const facts = { sheet: sheet ?? null, sheets };
  return dataIssue(place, { problem: "sheet-not-found", facts }, sheet);
}

function emptySheet(place: Place, sheet: string, sheets: readonly string[]): DataIssue {
  const others = sheets.filter((other) => other !== sheet);
  return dataIssue(place, { problem: "sheet-empty", facts: { sheet, others } });
}
