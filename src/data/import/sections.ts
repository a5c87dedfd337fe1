import { spelled } from "../header-names.ts";
import type { TableRow } from "../table.ts";
import {
  findHead,
  type Head,
  hasFigures,
  type MeaningOf,
  namesColumns,
  textsOf,
} from "./find-head.ts";
import type { Grid } from "./grid.ts";
import type { HeaderMeaning } from "./header-meaning.ts";

/** A stretch of a sheet below one head. */
export interface Section {
  readonly grid: Grid;
  /** Row that names the columns anew, in another way than the head above; null: the first head of the sheet. */
  readonly anew: number | null;
}

/**
 * A sheet in stretches, each with a head of its own. A row lower down that names the columns otherwise, such as the mass in
 * another unit, begins one; the lines of text just above it are its titles.
 */
export function sectionsOf(grid: Grid, meaningOf: MeaningOf): readonly Section[] {
  const best = findHead(grid.rows, grid.merged, meaningOf);
  if (best === null) return [{ grid, anew: null }];
  const head = firstHead(grid, best, meaningOf);
  const starts: { readonly from: number; readonly head: number }[] = [];
  let headers = head.headers;
  for (let i = head.last + 1; i < grid.rows.length; i++) {
    const row = grid.rows[i];
    if (row === undefined || !namesColumns(row, meaningOf)) continue;
    const own = findHead(grid.rows.slice(i, i + 2), grid.merged, meaningOf);
    if (own === null || own.first > 0 || sameColumns(own.headers, headers, meaningOf)) continue;
    headers = own.headers;
    starts.push({ from: titlesAbove(grid.rows, i, starts.at(-1)?.head ?? head.last), head: i });
    i += own.last;
  }
  const parts = [{ from: 0, head: null }, ...starts];
  return parts.map(({ from, head: at }, i) => ({
    grid: {
      ...grid,
      rows: grid.rows.slice(from, parts[i + 1]?.from),
      windows1252: i === 0 ? grid.windows1252 : null,
    },
    anew: at === null ? null : (grid.rows[at]?.number ?? null),
  }));
}

/** The best head names most columns, and another with catches of its own may stand above it. */
function firstHead({ rows, merged }: Grid, best: Head, meaningOf: MeaningOf): Head {
  const at = rows
    .slice(0, best.first)
    .findIndex(
      (row, i) =>
        namesColumns(row, meaningOf) &&
        rows.slice(i + 1, best.first).some((one) => hasFigures(one)),
    );
  const head = at === -1 ? null : findHead(rows.slice(at, at + 2), merged, meaningOf);
  return head === null || head.first > 0 ? best : { ...head, first: at, last: at + head.last };
}

/** Whether two heads say the same of every column, in whatever words. */
export function sameColumns(
  one: readonly string[],
  other: readonly string[],
  meaningOf: MeaningOf,
): boolean {
  const length = Math.max(one.length, other.length);
  return Array.from({ length }, (_, i) => [one[i] ?? "", other[i] ?? ""] as const).every(
    ([first, second]) =>
      spelled(first).spelling === spelled(second).spelling ||
      (first !== "" && second !== "" && alike(meaningOf(first), meaningOf(second))),
  );
}

function alike(one: HeaderMeaning | null, other: HeaderMeaning | null): boolean {
  return one !== null && other !== null && JSON.stringify(one) === JSON.stringify(other);
}

function titlesAbove(rows: readonly TableRow[], at: number, after: number): number {
  let from = at;
  while (from - 1 > after && isTitle(rows[from - 1])) from--;
  return from;
}

function isTitle(row: TableRow | undefined): boolean {
  return row !== undefined && !hasFigures(row) && textsOf(row).some((text) => text !== "");
}
