import { at } from "../errors/at.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import type { PlainColumn } from "./column-kinds.ts";
import { groupsOf } from "./groups.ts";
import { type FoundColumns, headerIn } from "./headers.ts";
import { fillKey } from "./identity.ts";
import { dataIssue, type Place } from "./issues.ts";
import type { CatchIdentity } from "./rows.ts";

/** Rows of one filling of a bin, in file order. */
type FillRows = readonly CatchIdentity[];

/** What is wrong between rows that are right one by one: twins, mixed fills, names spelled in two ways. */
export function checkTogether(
  rows: readonly CatchIdentity[],
  columns: FoundColumns,
  place: Place,
): readonly DataIssue[] {
  const under = (name: PlainColumn): Place => ({
    ...place,
    column: headerIn(columns, name),
  });
  const fills = groupsOf(rows, fillKey);
  const [ofCatch, ofProduct] = [under("catch"), under("product")];
  return [
    ...fills.filter(mayHoldTwins).flatMap((fill) => twins(fill, ofCatch)),
    ...fills.flatMap((fill) => mixedFill(fill, ofProduct)),
    ...twoSpellings(rows, "bin", under("bin")),
    ...twoSpellings(rows, "product", under("product")),
  ];
}

/** Catches numbered upwards are all different, and nothing more needs to be asked of most fills. */
function mayHoldTwins(fill: FillRows): boolean {
  return fill.some((row, i) => i > 0 && row.catch <= at(fill, i - 1).catch);
}

function twins(fill: FillRows, place: Place): readonly DataIssue[] {
  const key = (row: CatchIdentity) => [row.product, row.catch, row.outlet];
  return laterOnes(fill, key).map(({ row, first }) => {
    const { bin, product, fill: number, catch: caught, outlet } = row;
    const facts = { bin, product, fill: number, catch: caught, outlet, firstRow: first.row };
    return dataIssue(
      { ...place, row: row.row },
      { problem: "catch-repeated", facts },
      String(caught),
    );
  });
}

function mixedFill(fill: FillRows, place: Place): readonly DataIssue[] {
  const first = at(fill, 0);
  if (fill.every(({ product }) => product === first.product)) return [];
  return fill
    .filter(({ product }) => isOtherName(product, first.product))
    .map((row) =>
      dataIssue(
        { ...place, row: row.row },
        {
          problem: "two-products-in-fill",
          facts: {
            product: row.product,
            bin: row.bin,
            fill: row.fill,
            first: first.product,
            firstRow: first.row,
          },
        },
        row.product,
      ),
    );
}

/** Whether two names differ by more than their capitals. */
function isOtherName(one: string, other: string): boolean {
  return one !== other && one.toLowerCase() !== other.toLowerCase();
}

function twoSpellings(
  rows: readonly CatchIdentity[],
  name: "bin" | "product",
  place: Place,
): readonly DataIssue[] {
  const names = new Set(rows.map((row) => row[name]));
  const lowered = new Set([...names].map((one) => one.toLowerCase()));
  if (lowered.size === names.size) return [];
  return laterOnes(rows, (row) => [row[name].toLowerCase()])
    .filter(({ row, first }) => row[name] !== first[name])
    .map(({ row, first }) =>
      dataIssue(
        { ...place, row: row.row },
        { problem: `${name}-spelt-twice`, facts: { first: first[name], firstRow: first.row } },
        row[name],
      ),
    );
}

/** Rows whose key an earlier row has too, each with the first such row. */
function laterOnes(
  rows: readonly CatchIdentity[],
  key: (row: CatchIdentity) => readonly unknown[],
): readonly { readonly row: CatchIdentity; readonly first: CatchIdentity }[] {
  const seen = new Map<string, CatchIdentity>();
  return rows.flatMap((row) => {
    const name = JSON.stringify(key(row));
    const first = seen.get(name);
    if (first === undefined) seen.set(name, row);
    return first === undefined ? [] : { row, first };
  });
}
