import type { DataIssue } from "../../errors/data-issue.ts";
import { tooMany } from "../budget.ts";
import { checkedLines, separators, splitCells, toldSeparator } from "../csv.ts";
import { decodeText } from "../decode.ts";
import { type Checked, failed, type Place, passed } from "../issues.ts";
import { readJson } from "../json.ts";
import { limits } from "../limits.ts";
import {
  bytesOf,
  type CatchSource,
  formatOf,
  largestBytes,
  tooLarge,
  unknownType,
} from "../source.ts";
import { isBlank, type Table, type TableRow } from "../table.ts";
import { cellKey, type Merged, openWorkbook, type SheetContent } from "../workbook.ts";
import { noSuchSheet } from "../xlsx.ts";
import { findHead, type MeaningOf } from "./find-head.ts";
import { asWindows1252 } from "./windows-1252.ts";

/** Rows of cells as they lie in a file, before anybody knows which of them names the columns. */
export interface Grid {
  readonly source: string;
  /** Null: the file has no sheets. */
  readonly sheet: string | null;
  /** What problems call the place: the file, and its sheet where it has several. */
  readonly place: Place;
  readonly rows: readonly TableRow[];
  readonly merged: readonly Merged[];
  readonly formulas: ReadonlyMap<string, string>;
  readonly decimalMark: Table["decimalMark"];
  /** What separates its cells; null: nothing that could stand in a cell. */
  readonly separator: string | null;
  /** Words that only Windows-1252 could tell; null: the text is UTF-8. */
  readonly windows1252: {
    readonly words: readonly string[];
    readonly rows: readonly number[];
  } | null;
}

const plain = {
  merged: [],
  formulas: new Map<string, string>(),
  separator: null,
  windows1252: null,
};

/** The sheets of a workbook with anything in them, or the one table of any other file. */
export async function gridsOf(
  source: CatchSource,
  wanted: readonly string[] | undefined,
  meaningOf: MeaningOf,
): Promise<Checked<readonly Grid[]>> {
  const { name } = source;
  const format = formatOf(name);
  if (format === null) return failed([unknownType(name)]);
  const size = "bytes" in source ? source.bytes.length : source.text.length;
  if (size > largestBytes[format]) return failed([tooLarge(name, format, size)]);
  if (format === "xlsx") return sheetsOf(source, wanted);
  const decoded = format === "csv" ? asWindows1252(source) : null;
  const text =
    decoded === null
      ? decodeText(source, format === "csv" ? "table" : "list")
      : passed(decoded.text);
  if (!text.ok) return text;
  const place: Place = { source: name, rowKind: format === "json" ? "entry" : "row" };
  const grid = { ...plain, source: name, sheet: null, place };
  if (format === "json") {
    const table = readJson(name, text.value);
    if (!table.ok) return table;
    const { headers, rows, issues, decimalMark } = table.value;
    if (issues.length > 0) return failed(issues);
    return passed([{ ...grid, rows: [{ number: 0, cells: headers }, ...rows], decimalMark }]);
  }
  const split = bestSplit(place, text.value, meaningOf);
  if (!split.ok) return split;
  const { rows, separator } = split.value;
  const tooWide = widerThanRead(place, rows);
  if (tooWide !== null) return failed([tooWide]);
  const decimalMark = separator === "," ? "point" : "unknown";
  return passed([{ ...grid, rows, separator, decimalMark, windows1252: decoded?.found ?? null }]);
}

async function sheetsOf(
  source: CatchSource,
  wanted: readonly string[] | undefined,
): Promise<Checked<readonly Grid[]>> {
  const { name } = source;
  const bytes = bytesOf(source);
  const book = await openWorkbook(name, bytes);
  if (!book.ok) return book;
  const { sheets } = book.value;
  const lost = wanted?.find((sheet) => !sheets.includes(sheet));
  if (lost !== undefined || sheets.length === 0)
    return failed([noSuchSheet({ source: name, rowKind: "row" }, lost, sheets)]);
  const grids: Grid[] = [];
  for (const sheet of sheets.filter((one) => wanted?.includes(one) ?? true)) {
    const content = book.value.content(sheet);
    if (content === null) continue;
    if (!content.ok) return content;
    const { rows, merged, formulas } = content.value;
    const asShown = (row: TableRow) => asSheetShows(row, content.value);
    if (rows.length === 0) continue;
    const place: Place = {
      source: sheets.length > 1 ? `${name} › ${sheet}` : name,
      rowKind: "row",
    };
    const tooWide = widerThanRead(place, rows);
    if (tooWide !== null) return failed([tooWide]);
    grids.push({
      ...plain,
      source: name,
      sheet,
      place,
      rows: rows.map(asShown),
      merged,
      formulas,
      decimalMark: "unknown",
    });
  }
  return passed(grids);
}

/**
 * A percentage with its sign, since the figure behind it is a hundredth; and a formula without a stored value as one that
 * has failed, since its cell is not blank.
 */
function asSheetShows(row: TableRow, { formulas, percents }: SheetContent): TableRow {
  // Holes stay: a sheet may have a cell far to the right in each of a million rows.
  const cells = row.cells.map((cell, column) => {
    const key = cellKey(row.number, column);
    if (typeof cell === "number" && percents.has(key))
      return `${Number((100 * cell).toPrecision(12))}%`;
    return isBlank(cell) && formulas.has(key) ? "#VALUE!" : cell;
  });
  return { ...row, cells };
}

/** The issue for more columns than any file of catches may have. */
function widerThanRead(place: Place, rows: readonly TableRow[]): DataIssue | null {
  const width = rows.reduce((widest, { cells }) => Math.max(widest, cells.length), 0);
  return width > limits.columns ? tooMany(place, "columns", width, limits.columns) : null;
}

/** By the separator under which a row names most columns; titles above it may hold any of them. */
function bestSplit(place: Place, text: string, meaningOf: MeaningOf) {
  const lines = checkedLines(place, text);
  if (!lines.ok) return lines;
  const told = toldSeparator(lines.value);
  const body = told?.body ?? lines.value;
  const tried = (told === null ? separators : [told.separator]).map((separator) => {
    const rows = splitCells(place, body, separator);
    const score = rows.ok ? (findHead(rows.value, [], meaningOf)?.score ?? 0) : 0;
    const cells = rows.ok
      ? rows.value.reduce((most, row) => Math.max(most, row.cells.length), 0)
      : 0;
    return { rows, separator, score, cells };
  });
  const best = tried.reduce((one, other) =>
    (other.score - one.score || other.cells - one.cells) > 0 ? other : one,
  );
  return best.rows.ok ? passed({ rows: best.rows.value, separator: best.separator }) : best.rows;
}
