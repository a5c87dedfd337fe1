import { cellText, type TableRow } from "../table.ts";
import type { Merged } from "../workbook.ts";
import { figureIn } from "./figures.ts";
import { type HeaderMeaning, isMass } from "./header-meaning.ts";
import { readLocalDate } from "./local-dates.ts";
import { unitIn } from "./units-in-text.ts";

export type MeaningOf = (header: string) => HeaderMeaning | null;

/** The row, or the two rows, that name the columns. */
export interface Head {
  /** Places among the rows of the grid. */
  readonly first: number;
  readonly last: number;
  readonly headers: readonly string[];
  readonly score: number;
}

/** Titles above a table take a few rows; nobody scrolls past fifty to find it. */
const rowsLookedAt = 50;

/**
 * The head that names most columns, the first among equals; null where no row names turns or a mass and something more. Two
 * lines are a head where together they say more than either alone, as with units below the names.
 */
export function findHead(
  rows: readonly TableRow[],
  merged: readonly Merged[],
  meaningOf: MeaningOf,
): Head | null {
  const considered = rows.slice(0, rowsLookedAt);
  const single = considered.map((row, i) => headOf(i, i, textsOf(row), meaningOf));
  const double = considered.flatMap((row, i) => {
    const below = rows[i + 1];
    if (below === undefined || below.number > row.number + 1 || hasFigures(below)) return [];
    const head = headOf(i, i + 1, joined(row, below, merged, meaningOf), meaningOf);
    const alone = Math.max(single[i]?.score ?? 0, headOf(i, i, textsOf(below), meaningOf).score);
    return head.score > alone ? [head] : [];
  });
  const best = [...single, ...double].reduce<Head | null>(
    (one, other) => (other.score > (one?.score ?? 0) ? other : one),
    null,
  );
  return best;
}

function headOf(
  first: number,
  last: number,
  headers: readonly string[],
  meaningOf: MeaningOf,
): Head {
  return { first, last, headers, score: scoreOf(headers, meaningOf) };
}

/** Two for a name that says all, one for a mass without its unit; nothing below two names with turns or a mass. */
function scoreOf(headers: readonly string[], meaningOf: MeaningOf): number {
  const found = new Map<string, number>();
  for (const header of headers) {
    const meaning = header === "" ? null : meaningOf(header);
    if (meaning === null) continue;
    const points = isWhole(meaning) ? 2 : 1;
    found.set(meaning.concept, Math.max(points, found.get(meaning.concept) ?? 0));
  }
  const telling = [...found.keys()].some(
    (concept) => concept === "turns" || massNames.has(concept),
  );
  if (!telling || found.size < 2) return 0;
  return [...found.values()].reduce((sum, points) => sum + points, 0);
}

const massNames: ReadonlySet<string> = new Set(["net", "gross", "tare", "weight"]);

function isWhole({ concept, unit }: HeaderMeaning): boolean {
  return !isMass(concept) || unit !== null;
}

/** A row as texts, holes filled. */
export function textsOf({ cells }: TableRow): readonly string[] {
  return Array.from({ length: cells.length }, (_, column) => cellText(cells[column]));
}

/** Whether a row names columns, and holds nothing that could be below them. */
export function namesColumns(row: TableRow, meaningOf: MeaningOf): boolean {
  return !hasFigures(row) && scoreOf(textsOf(row), meaningOf) > 0;
}

export function hasFigures(row: TableRow): boolean {
  return textsOf(row).some(
    (text) => figureIn(text) !== null || readLocalDate(text, null).is !== "no-date",
  );
}

/** One header from two lines: a name above its unit, a group above its parts, or either alone. */
function joined(
  above: TableRow,
  below: TableRow,
  merged: readonly Merged[],
  meaningOf: MeaningOf,
): readonly string[] {
  const length = Math.max(above.cells.length, below.cells.length);
  let group = "";
  return Array.from({ length }, (_, column) => {
    const own = cellText(above.cells[column]);
    const part = cellText(below.cells[column]);
    if (own !== "") group = own;
    const over = own !== "" ? own : groupOver(above, column, merged, group);
    if (part === "" || over === "") return own || part;
    const ways = [`${over} ${part}`, part, `${part} ${over}`, over];
    // A unit below a name is part of it, and no name of its own.
    const read = ways
      .filter((header) => unitIn(header) === null)
      .map((header) => ({ header, meaning: meaningOf(header) }));
    const whole = read.find(({ meaning }) => meaning !== null && isWhole(meaning));
    return (whole ?? read.find(({ meaning }) => meaning !== null))?.header ?? `${over} ${part}`;
  });
}

/** A group reaches over the cells it was merged with; in a file without merged cells, over the blank ones behind it. */
function groupOver(
  { number, cells }: TableRow,
  column: number,
  merged: readonly Merged[],
  group: string,
): string {
  if (merged.length === 0) return group;
  const over = merged.find(
    ({ rows, columns }) =>
      rows[0] <= number && number <= rows[1] && columns[0] <= column && column <= columns[1],
  );
  return over === undefined ? "" : cellText(cells[over.columns[0]]);
}
