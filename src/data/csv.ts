import Papa from "papaparse";
import type { DataIssue } from "../errors/data-issue.ts";
import { countKnown } from "./header-names.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { cellText, isBlank, type Table, type TableRow } from "./table.ts";

/** No row of catches is a tenth as long; a longer one is another kind of file, and would only waste memory. */
export const longestLine = 1_000_000;

/** Separators in order of preference, should two fit the header equally well. */
export const separators = [",", ";", "\t"] as const;

/**
 * A table from comma, semicolon or tab separated text. The separator is the one that finds most known columns in
 * the first row with anything in it. Blank lines are left out but counted, so that row numbers are a spreadsheet's.
 */
export function readCsv(name: string, text: string): Checked<Table> {
  const place: Place = { source: name, rowKind: "row" };
  const lines = checkedLines(place, text);
  if (!lines.ok) return lines;
  const { separator, body } = separatorOf(lines.value);
  const cells = splitCells(place, body, separator);
  if (!cells.ok) return cells;
  const [header, ...rows] = cells.value;
  const headers = header?.cells.map((cell) => cellText(cell)) ?? [];
  const isTooWide = ({ cells }: TableRow) => !cells.slice(headers.length).every(isBlank);
  return passed({
    headers,
    headerRow: header?.number ?? 1,
    rows: rows.filter((row) => !isTooWide(row)),
    issues: rows
      .filter(isTooWide)
      .map((row) => tooManyCells(place, row, headers.length, separator)),
    rowKind: "row",
    decimalMark: separator === "," ? "point" : "unknown",
  });
}

/** Text whose lines end in line feeds, none of them longer than any line of catches. */
export function checkedLines(place: Place, text: string): Checked<string> {
  const long = longLine(text);
  return long === null
    ? passed(text.replace(/\r\n?/g, "\n"))
    : failed([lineTooLong({ ...place, rowKind: "line", row: long })]);
}

/** Rows with anything in them, parted by this separator. */
export function splitCells(
  place: Place,
  body: string,
  separator: string,
): Checked<readonly TableRow[]> {
  const parsed = Papa.parse<string[]>(body, { delimiter: separator, newline: "\n" });
  const quotes = parsed.errors.find(({ type }) => type === "Quotes");
  if (quotes !== undefined) {
    const row = { ...place, row: (quotes.row ?? 0) + 1 };
    return failed([dataIssue(row, { problem: "quote-stray", facts: {} }, '"')]);
  }
  return passed(
    parsed.data
      .map((cells, index) => ({ number: index + 1, cells }))
      .filter(({ cells }) => !cells.every(isBlank)),
  );
}

/** The separator that finds most columns in the first row, and the text without the line that tells it. */
export function separatorOf(text: string): { readonly separator: string; readonly body: string } {
  const told = toldSeparator(text);
  if (told !== null) return told;
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

/** The separator that spreadsheets write in a line for one another, which they do not count as a row. */
export function toldSeparator(text: string): { separator: string; body: string } | null {
  const told = /^sep=([,;\t])\n/i.exec(text);
  return told?.[1] === undefined ? null : { separator: told[1], body: text.slice(told[0].length) };
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

/** The issue for a row that goes on behind the last header. */
export function tooManyCells(
  place: Place,
  row: TableRow,
  columns: number,
  separator: string,
): DataIssue {
  const cells = row.cells.length;
  return dataIssue(
    { ...place, row: row.number },
    { problem: "too-many-cells", facts: { cells, columns, comma: separator === "," } },
    `${cells} cells`,
  );
}
