import { at } from "../errors/at.ts";
import type { RowProblems } from "../errors/problems/rows.ts";
import type { ProblemOf } from "../errors/problems.ts";
import type { KeyColumn, PlainColumn } from "./column-kinds.ts";
import { groupsOf } from "./groups.ts";
import { fillKey, isSameFilling } from "./identity.ts";
import type { LogNames } from "./log-names.ts";
import type { CatchIdentity } from "./rows.ts";

/** Rows of one filling of a bin, in file order. */
type FillRows = readonly CatchIdentity[];

type RowProblem = { readonly [K in keyof RowProblems]: ProblemOf<K> }[keyof RowProblems];

/** What is wrong with a row beside an earlier one. */
export interface FoundBetweenRows {
  readonly row: number;
  readonly column: PlainColumn;
  readonly problem: RowProblem;
  readonly received: string;
}

/**
 * What is wrong between rows that are right one by one: twins, mixed fills, names spelled in two ways.
 *
 * @param keys      those of farm, machine and season that the rows have
 * @param headerOf  what the file calls a column
 */
export function betweenRows(
  rows: readonly CatchIdentity[],
  names: LogNames,
  keys: readonly KeyColumn[] = [],
  headerOf: (name: KeyColumn) => string = (name) => name,
): readonly FoundBetweenRows[] {
  const fills = areInOrder(rows) ? [] : groupsOf(rows, fillKey);
  return [
    ...keys.flatMap((name) => keysMissing(rows, name, headerOf(name))),
    ...fills.filter(mayHoldTwins).flatMap((fill) => twins(fill, names)),
    ...fills.flatMap((fill) => mixedFill(fill, names)),
    ...keys.flatMap((name) => twoSpellings(rows, name, headerOf(name))),
    ...twoSpellings(rows, "bin", "bin"),
    ...twoSpellings(rows, "product", "product"),
  ];
}

/** A machine that only some rows name would pass for two: nobody can say whose the others are. */
function keysMissing(
  rows: readonly CatchIdentity[],
  name: KeyColumn,
  header: string,
): readonly FoundBetweenRows[] {
  const first = rows.find((row) => row[name] !== null);
  if (first === undefined) return [];
  const facts = { header, named: first[name] ?? "", firstRow: first.row };
  const problem = { problem: "key-missing", facts } as const;
  return rows
    .filter((row) => row[name] === null)
    .map(({ row }) => ({ row, column: name, problem, received: "" }));
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

function twins(fill: FillRows, names: LogNames): readonly FoundBetweenRows[] {
  const key = (row: CatchIdentity) => [row.product, row.catch, row.outlet];
  return laterOnes(fill, key).map(({ row, first }) => {
    const { product, catch: number, outlet } = row;
    const facts = { ...calledBy(names, row), product, catch: number, outlet, firstRow: first.row };
    const problem = { problem: "catch-repeated", facts } as const;
    return { row: row.row, column: "catch", problem, received: String(number) };
  });
}

function mixedFill(fill: FillRows, names: LogNames): readonly FoundBetweenRows[] {
  const first = at(fill, 0);
  if (fill.every(({ product }) => product === first.product)) return [];
  return fill
    .filter(({ product }) => isOtherName(product, first.product))
    .map((row) => {
      const { product } = row;
      const facts = { product, ...calledBy(names, row), first: first.product, firstRow: first.row };
      const problem = { problem: "two-products-in-fill", facts } as const;
      return { row: row.row, column: "product", problem, received: product };
    });
}

/** Whether two names differ by more than their capitals. */
function isOtherName(one: string, other: string): boolean {
  return one !== other && one.toLowerCase() !== other.toLowerCase();
}

function twoSpellings(
  rows: readonly CatchIdentity[],
  name: "bin" | "product" | KeyColumn,
  header: string,
): readonly FoundBetweenRows[] {
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
  return laterOnes(spelt, ({ text }) => [text.toLowerCase()])
    .filter(({ row, first }) => row.text !== first.text)
    .map(({ row: { row, text }, first }) => ({
      row: row.row,
      column: name,
      problem: isKey
        ? { problem: "key-spelt-twice", facts: { ...seen(first), header } }
        : { problem: `${name}-spelt-twice`, facts: seen(first) },
      received: text,
    }));
}

/** A fill by the names it has on every surface. */
function calledBy(names: LogNames, row: CatchIdentity) {
  return { bin: names.bin(row), fill: names.fill(row) };
}

/** Rows whose key an earlier row has too, each with the first such row. */
function laterOnes<R extends object>(
  rows: readonly R[],
  key: (row: R) => readonly unknown[],
): readonly { readonly row: R; readonly first: R }[] {
  const seen = new Map<string, R>();
  return rows.flatMap((row) => {
    const name = JSON.stringify(key(row));
    const first = seen.get(name);
    if (first === undefined) seen.set(name, row);
    return first === undefined ? [] : { row, first };
  });
}
