import { at } from "../errors/at.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import { firstOf } from "./budget.ts";
import { type KeyColumn, keyColumns, type PlainColumn } from "./column-kinds.ts";
import { groupsOf } from "./groups.ts";
import { type FoundColumns, headerIn } from "./headers.ts";
import { fillKey, isSameFilling } from "./identity.ts";
import { dataIssue, type Place } from "./issues.ts";
import { type LogNames, logNames } from "./log-names.ts";
import type { CatchIdentity } from "./rows.ts";

/** Rows of one filling of a bin, in file order. */
type FillRows = readonly CatchIdentity[];

/** What is wrong between rows that are right one by one: twins, mixed fills, names spelled in two ways. */
export function checkTogether(
  rows: readonly CatchIdentity[],
  columns: FoundColumns,
  place: Place,
  names: LogNames = logNames(rows),
): readonly DataIssue[] {
  const under = (name: PlainColumn): Place => ({
    ...place,
    column: headerIn(columns, name),
  });
  const fills = areInOrder(rows) ? [] : groupsOf(rows, fillKey);
  const [ofCatch, ofProduct] = [under("catch"), under("product")];
  const keys = keyColumns.filter((name) => columns.plain.has(name));
  return [
    ...keys.flatMap((name) => keysMissing(rows, name, under(name))),
    ...firstOf(fills.filter(mayHoldTwins).flatMap(twins), twinIssue(names, ofCatch)),
    ...firstOf(fills.flatMap(otherProducts), mixedIssue(names, ofProduct)),
    ...keys.flatMap((name) => twoSpellings(rows, name, under(name))),
    ...twoSpellings(rows, "bin", under("bin")),
    ...twoSpellings(rows, "product", under("product")),
  ];
}

/** A machine that only some rows name would pass for two: nobody can say whose the others are. */
function keysMissing(
  rows: readonly CatchIdentity[],
  name: KeyColumn,
  place: Place,
): readonly DataIssue[] {
  const first = rows.find((row) => row[name] !== null);
  if (first === undefined) return [];
  const facts = { header: place.column ?? name, named: first[name] ?? "", firstRow: first.row };
  return firstOf(
    rows.filter((row) => row[name] === null),
    ({ row }) => dataIssue({ ...place, row }, { problem: "key-missing", facts }),
  );
}

/**
 * Whether the rows of each fill stand together, of one product, its catches numbered upwards, as most files have them: then
 * no catch is there twice and no fill is mixed, and nothing more needs to be asked.
 */
function areInOrder(rows: readonly CatchIdentity[]): boolean {
  const fills = new Set<string>();
  let last: CatchIdentity | null = null;
  for (const row of rows) {
    if (last !== null && isSameFilling(last, row)) {
      if (row.catch <= last.catch || row.product !== last.product) return false;
    } else {
      const key = fillKey(row);
      if (fills.has(key)) return false;
      fills.add(key);
    }
    last = row;
  }
  return true;
}

/** Catches numbered upwards are all different, and nothing more needs to be asked of most fills. */
function mayHoldTwins(fill: FillRows): boolean {
  return fill.some((row, i) => i > 0 && row.catch <= at(fill, i - 1).catch);
}

/** A row that cannot be beside an earlier one. */
interface Later<R> {
  readonly row: R;
  readonly first: R;
}

function twins(fill: FillRows): readonly Later<CatchIdentity>[] {
  return laterOnes(fill, (row) => [row.product, row.catch, row.outlet]);
}

function twinIssue(names: LogNames, place: Place) {
  return ({ row, first }: Later<CatchIdentity>): DataIssue => {
    const { product, catch: number, outlet } = row;
    const facts = { ...calledBy(names, row), product, catch: number, outlet, firstRow: first.row };
    return dataIssue(
      { ...place, row: row.row },
      { problem: "catch-repeated", facts },
      String(number),
    );
  };
}

function otherProducts(fill: FillRows): readonly Later<CatchIdentity>[] {
  const first = at(fill, 0);
  if (fill.every(({ product }) => product === first.product)) return [];
  return fill
    .filter(({ product }) => isOtherName(product, first.product))
    .map((row) => ({ row, first }));
}

function mixedIssue(names: LogNames, place: Place) {
  return ({ row, first }: Later<CatchIdentity>): DataIssue => {
    const { product } = row;
    const facts = {
      product,
      ...calledBy(names, row),
      first: first.product,
      firstRow: first.row,
    };
    return dataIssue(
      { ...place, row: row.row },
      { problem: "two-products-in-fill", facts },
      product,
    );
  };
}

/** Whether two names differ by more than their capitals. */
function isOtherName(one: string, other: string): boolean {
  return one !== other && one.toLowerCase() !== other.toLowerCase();
}

function twoSpellings(
  rows: readonly CatchIdentity[],
  name: "bin" | "product" | KeyColumn,
  place: Place,
): readonly DataIssue[] {
  const isKey = name !== "bin" && name !== "product";
  const named = new Set<string>();
  let last: string | null = null;
  for (const row of rows) {
    const text = row[name];
    if (text === null || text === last) continue;
    last = text;
    named.add(text);
  }
  const lowered = new Set([...named].map((one) => one.toLowerCase()));
  if (lowered.size === named.size) return [];
  const spelt = rows.flatMap((row) => {
    const text = row[name];
    return text === null ? [] : { row, text };
  });
  const seen = ({ text, row }: (typeof spelt)[number]) => ({ first: text, firstRow: row.row });
  const other = laterOnes(spelt, ({ text }) => [text.toLowerCase()]).filter(
    ({ row, first }) => row.text !== first.text,
  );
  return firstOf(other, ({ row: { row, text }, first }) =>
    dataIssue(
      { ...place, row: row.row },
      isKey
        ? { problem: "key-spelt-twice", facts: { ...seen(first), header: place.column ?? name } }
        : { problem: `${name}-spelt-twice`, facts: seen(first) },
      text,
    ),
  );
}

/** A fill by the names it has on every surface. */
function calledBy(names: LogNames, row: CatchIdentity) {
  return { bin: names.bin(row), fill: names.fill(row) };
}

/** Rows whose key an earlier row has too, each with the first such row. */
function laterOnes<R extends object>(
  rows: readonly R[],
  key: (row: R) => readonly unknown[],
): readonly Later<R>[] {
  const seen = new Map<string, R>();
  return rows.flatMap((row) => {
    const name = JSON.stringify(key(row));
    const first = seen.get(name);
    if (first === undefined) seen.set(name, row);
    return first === undefined ? [] : { row, first };
  });
}
