import Papa from "papaparse";
import { at } from "../errors/at.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import { countKnown } from "./header-names.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { remembered } from "./remembered.ts";
import { isBlank, type Table, type TableRow } from "./table.ts";

/** No row of catches is a tenth as long; a longer one is another kind of file, and would only waste memory. */
export const longestLine = 1_000_000;

/** Separators in order of preference, should two fit the header equally well. */
const separators = [",", ";", "\t"] as const;

/**
 * A table from comma, semicolon or tab separated text. The separator is the one that finds most known columns in
 * the first row with anything in it. Blank lines are left out but counted, so that row numbers are a spreadsheet's.
 */
export function readCsv(name: string, text: string): Checked<Table> {
  const place: Place = { source: name, rowKind: "row" };
  const long = longLine(text);
  if (long !== null) return failed([lineTooLong({ ...place, rowKind: "line", row: long })]);
  const { separator, body } = separatorOf(text.replace(/\r\n?/g, "\n"));
  const cells = body.includes('"')
    ? quotedCells(body, separator, place)
    : passed(plainCells(body, separator));
  if (!cells.ok) return cells;
  const { value } = cells;
  const headerAt = value.findIndex(saysSomething);
  const headers = value[headerAt]?.map((cell) => cell.trim()) ?? [];
  const rows: TableRow[] = [];
  const tooWide: TableRow[] = [];
  for (let index = headerAt + 1; index < value.length; index++) {
    const row = { number: index + 1, cells: at(value, index) };
    if (!saysSomething(row.cells)) continue;
    (row.cells.slice(headers.length).every(isBlank) ? rows : tooWide).push(row);
  }
  return passed({
    headers,
    headerRow: Math.max(headerAt, 0) + 1,
    rows,
    issues: tooWide.map((row) => tooManyCells(place, row, headers.length, separator)),
    rowKind: "row",
    decimalMark: separator === "," ? "point" : "unknown",
  });
}

function saysSomething(cells: readonly string[]): boolean {
  return !cells.every(isBlank);
}

function quotedCells(body: string, separator: string, place: Place): Checked<string[][]> {
  const parsed = Papa.parse<string[]>(body, { delimiter: separator, newline: "\n" });
  const quotes = parsed.errors.find(({ type }) => type === "Quotes");
  if (quotes === undefined) return passed(parsed.data);
  const row = { ...place, row: (quotes.row ?? 0) + 1 };
  return failed([dataIssue(row, { problem: "quote-stray", facts: {} }, '"')]);
}

/** Cells of text without a quote, in which nothing stands between separators but what is meant. */
function plainCells(body: string, separator: string): string[][] {
  // Cut out of the text, a cell would keep all of the text in memory.
  const kept = remembered((cell) => ` ${cell}`.slice(1));
  return body.split("\n").map((line) => line.split(separator).map(kept));
}

export function separatorOf(text: string): { readonly separator: string; readonly body: string } {
  // Spreadsheets write this line for one another and do not count it as a row.
  const told = /^sep=([,;\t])\n/i.exec(text);
  if (told?.[1] !== undefined) return { separator: told[1], body: text.slice(told[0].length) };
  const firstLine = /\S[^\n]*/.exec(text)?.[0] ?? "";
  const split = separators.map((separator) => {
    const cells = Papa.parse<string[]>(firstLine, { delimiter: separator }).data[0] ?? [];
    return { separator, known: countKnown(cells), cells: cells.length };
  });
  const best = split.reduce((one, other) =>
    (other.known - one.known || other.cells - one.cells) > 0 ? other : one,
  );
  return { separator: best.separator, body: text };
}

/** Number of the first line above the limit; null when there is none. */
function longLine(text: string): number | null {
  let line = 1;
  for (let start = 0; start < text.length; line++) {
    const feed = text.indexOf("\n", start);
    const end = feed === -1 ? text.length : feed;
    // A file from an old system may end its lines with carriage returns only.
    if (end - start > longestLine && longestPart(text.slice(start, end)) > longestLine) return line;
    start = end + 1;
  }
  return null;
}

function longestPart(line: string): number {
  return line.split("\r").reduce((longest, part) => Math.max(longest, part.length), 0);
}

/** The issue for a line above the limit; its place names the line. */
export function lineTooLong(place: Place): DataIssue {
  return dataIssue(place, { problem: "line-too-long", facts: { most: longestLine } });
}

function tooManyCells(place: Place, row: TableRow, columns: number, separator: string): DataIssue {
  const cells = row.cells.length;
  return dataIssue(
    { ...place, row: row.number },
    { problem: "too-many-cells", facts: { cells, columns, comma: separator === "," } },
    `${cells} cells`,
  );
}
