import type { DataIssue } from "../errors/data-issue.ts";
import type { PlainColumn } from "./column-kinds.ts";
import { type FoundColumns, headerIn } from "./headers.ts";
import { dataIssue, type Place } from "./issues.ts";
import type { CatchIdentity } from "./rows.ts";

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
  return [
    ...twins(rows, under("catch")),
    ...mixedFills(rows, under("product")),
    ...twoSpellings(rows, "bin", under("bin")),
    ...twoSpellings(rows, "product", under("product")),
  ];
}

function twins(rows: readonly CatchIdentity[], place: Place): readonly DataIssue[] {
  const key = (row: CatchIdentity) => [row.bin, row.product, row.fill, row.catch, row.outlet];
  return laterOnes(rows, key).map(({ row: { row, ...names }, first }) =>
    dataIssue(
      { ...place, row },
      { problem: "catch-repeated", facts: { ...names, firstRow: first.row } },
      String(names.catch),
    ),
  );
}

function mixedFills(rows: readonly CatchIdentity[], place: Place): readonly DataIssue[] {
  return laterOnes(rows, (row) => [row.bin, row.fill])
    .filter(({ row, first }) => row.product.toLowerCase() !== first.product.toLowerCase())
    .map(({ row, first }) =>
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

function twoSpellings(
  rows: readonly CatchIdentity[],
  name: "bin" | "product",
  place: Place,
): readonly DataIssue[] {
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
