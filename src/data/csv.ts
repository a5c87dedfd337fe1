import Papa from "papaparse";
import { at } from "../errors/at.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import { textTooMuch } from "./budget.ts";
import { mayBeGuarded, withoutGuard } from "./formula-guard.ts";
import { countKnown } from "./header-names.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { limits } from "./limits.ts";
import { keptText } from "./remembered.ts";
import { isBlank, type Table, type TableRow } from "./table.ts";

/** A longer line is another kind of file, and would only waste memory. */
export const longestLine = limits.lineLetters;

/** Separators in order of preference, should two fit the header equally well. */
export const separators = [",", ";", "\t"] as const;

/**
 * A table from comma, semicolon or tab separated text. The separator is the one that finds most known columns in
 * the first row with anything in it. Blank lines are left out but counted, so that row numbers are a spreadsheet's.
 */
export function readCsv(name: string, text: string): Checked<Table> {
  const place: Place = { source: name, rowKind: "row" };
  const checked = checkedLines(place, text);
  if (!checked.ok) return checked;
  const { separator, body } = separatorOf(checked.value);
  const lines = linesOf(place, body, separator);
  if (!lines.ok) return lines;
  const { length, cellsOf, widthOf } = lines.value;
  let headerAt = 0;
  while (headerAt < length && !saysSomething(cellsOf(headerAt))) headerAt += 1;
  const headers = headerAt < length ? cellsOf(headerAt).map((cell) => cell.trim()) : [];
  const rows: number[] = [];
  const tooWide: TableRow[] = [];
  for (let index = headerAt + 1; index < length; index++) {
    if (widthOf(index) > headers.length) {
      const row = { number: index + 1, cells: cellsOf(index) };
      if (!row.cells.slice(headers.length).every(isBlank)) {
        if (tooWide.length < limits.problems) tooWide.push(row);
        continue;
      }
    }
    if (lines.value.saysSomething(index)) rows.push(index);
  }
  return passed({
    headers,
    headerRow: (headerAt < length ? headerAt : 0) + 1,
    rows: {
      length: rows.length,
      *[Symbol.iterator]() {
        for (const index of rows) yield { number: index + 1, cells: cellsOf(index) };
      },
    },
    issues: tooWide.map((row) => tooManyCells(place, row, headers.length, separator)),
    rowKind: "row",
    decimalMark: separator !== "," ? "unknown" : body.includes('"') ? "point" : "only point",
  });
}

/** Text whose lines end in line feeds: none of them longer, and no more of them and their cells, than `limits` allow. */
export function checkedLines(place: Place, text: string): Checked<string> {
  const long = longLine(text);
  if (long !== null) return failed([lineTooLong({ ...place, rowKind: "line", row: long })]);
  const tooMuch = textTooMuch(place, text);
  if (tooMuch !== null) return failed([tooMuch]);
  return passed(text.includes("\r") ? text.replace(/\r\n?/g, "\n") : text);
}

/** Rows with anything in them, parted by this separator. */
export function splitCells(
  place: Place,
  body: string,
  separator: string,
): Checked<readonly TableRow[]> {
  const lines = linesOf(place, body, separator);
  if (!lines.ok) return lines;
  const { length, cellsOf } = lines.value;
  const rows = Array.from({ length }, (_, index) => ({
    number: index + 1,
    cells: cellsOf(index),
  }));
  return passed(rows.filter(({ cells }) => saysSomething(cells)));
}

/** The lines of a text, each cut into cells only when it is asked for. */
interface Lines {
  readonly length: number;
  readonly cellsOf: (index: number) => readonly string[];
  readonly widthOf: (index: number) => number;
  readonly saysSomething: (index: number) => boolean;
}

function saysSomething(cells: readonly string[]): boolean {
  return !cells.every(isBlank);
}

function linesOf(place: Place, body: string, separator: string): Checked<Lines> {
  const lines = body.includes('"')
    ? quotedLines(body, separator, place)
    : passed(plainLines(body, separator));
  if (!lines.ok || !mayBeGuarded(body)) return lines;
  const { cellsOf } = lines.value;
  return passed({ ...lines.value, cellsOf: (index) => cellsOf(index).map(withoutGuard) });
}

function quotedLines(body: string, separator: string, place: Place): Checked<Lines> {
  const { data, errors } = Papa.parse<string[]>(body, { delimiter: separator, newline: "\n" });
  const quotes = errors.find(({ type }) => type === "Quotes");
  if (quotes === undefined)
    return passed({
      length: data.length,
      cellsOf: (index) => at(data, index),
      widthOf: (index) => at(data, index).length,
      saysSomething: (index) => saysSomething(at(data, index)),
    });
  const row = { ...place, row: (quotes.row ?? 0) + 1 };
  return failed([dataIssue(row, { problem: "quote-stray", facts: {} }, '"')]);
}

/**
 * Lines of text without a quote, in which nothing stands between separators but what is meant. Of each only where it begins is
 * kept: of a long text the lines themselves would fill the memory once more.
 */
function plainLines(body: string, separator: string): Lines {
  const starts = lineStarts(body);
  const startOf = (index: number) => at(starts, index);
  const endOf = (index: number) => startOf(index + 1) - 1;
  const cellsOf = (index: number) => body.slice(startOf(index), endOf(index)).split(separator);
  return {
    length: starts.length - 1,
    cellsOf,
    widthOf: (index) => 1 + timesIn(body, separator, startOf(index), endOf(index)),
    // Most lines begin with a name or a number, and need not be cut to be known.
    saysSomething: (index) =>
      /^[!-+\--:<-~]/.test(body.charAt(startOf(index))) || saysSomething(cellsOf(index)),
  };
}

/** Where each line begins, and where one behind the last would. */
function lineStarts(body: string): readonly number[] {
  const starts = [0];
  for (let feed = body.indexOf("\n"); feed !== -1; feed = body.indexOf("\n", feed + 1))
    starts.push(feed + 1);
  starts.push(body.length + 1);
  return starts;
}

function timesIn(text: string, separator: string, from: number, to: number): number {
  const letter = separator.charCodeAt(0);
  let times = 0;
  for (let i = from; i < to; i++) if (text.charCodeAt(i) === letter) times += 1;
  return times;
}

/** The separator that finds most columns in the first row, and the text without the line that tells it. */
export function separatorOf(text: string): { readonly separator: string; readonly body: string } {
  const told = toldSeparator(text);
  if (told !== null) return told;
  const firstLine = /\S[^\n]*/.exec(text)?.[0] ?? "";
  if (header?.line !== firstLine)
    header = { line: keptText(firstLine), separator: separatorIn(firstLine) };
  return { separator: header.separator, body: text };
}

/** The header that was parted last: a log that grows is read at every catch, under the same one. */
let header: { readonly line: string; readonly separator: string } | null = null;

function separatorIn(firstLine: string): string {
  const split = separators.map((separator) => {
    const cells = Papa.parse<string[]>(firstLine, { delimiter: separator }).data[0] ?? [];
    return { separator, known: countKnown(cells), cells: cells.length };
  });
  const best = split.reduce((one, other) =>
    (other.known - one.known || other.cells - one.cells) > 0 ? other : one,
  );
  return best.separator;
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
