import Papa from "papaparse";
import type { DataIssue } from "../errors/data-issue.ts";
import { textTooMuch } from "./budget.ts";
import { withoutGuards } from "./formula-guard.ts";
import { countKnown } from "./header-names.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { limits } from "./limits.ts";
import { isBlank, type Table, type TableRow } from "./table.ts";

/** A longer line is another kind of file, and would only waste memory. */
export const longestLine = limits.lineLetters;

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
  const tooMuch = textTooMuch(place, text);
  if (tooMuch !== null) return failed([tooMuch]);
  const { separator, body } = separatorOf(text.replace(/\r\n?/g, "\n"));
  const parsed = Papa.parse<string[]>(body, { delimiter: separator, newline: "\n" });
  const quotes = parsed.errors.find(({ type }) => type === "Quotes");
  if (quotes !== undefined) {
    const row = { ...place, row: (quotes.row ?? 0) + 1 };
    return failed([dataIssue(row, { problem: "quote-stray", facts: {} }, '"')]);
  }
  const [header, ...rows] = withoutGuards(parsed.data, body)
    .map((cells, index) => ({ number: index + 1, cells }))
    .filter(({ cells }) => !cells.every(isBlank));
  const headers = header?.cells.map((cell) => cell.trim()) ?? [];
  const isTooWide = ({ cells }: TableRow) => !cells.slice(headers.length).every(isBlank);
  return passed({
    headers,
    headerRow: header?.number ?? 1,
    rows: rows.filter((row) => !isTooWide(row)),
    issues: rows
      .filter(isTooWide)
      .slice(0, limits.problems)
      .map((row) => tooManyCells(place, row, headers.length, separator)),
    rowKind: "row",
    decimalMark: separator === "," ? "point" : "unknown",
  });
}

function separatorOf(text: string): { readonly separator: string; readonly body: string } {
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
