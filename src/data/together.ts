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
  return laterOnes(rows, key).map(({ row, first }) =>
    dataIssue(
      { ...place, row: row.row },
      {
        code: "duplicate-catch",
        received: String(row.catch),
        found: `catch ${row.catch} of ${inFill(row)} again, first in ${place.rowWord} ${first.row}`,
        expected: "each catch once",
        remedy: "Delete the copy, or give the catch a number of its own.",
      },
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
          code: "two-products-in-fill",
          received: row.product,
          found: `"${row.product}" in bin ${row.bin}, fill ${row.fill}`,
          expected: `"${first.product}" as in ${place.rowWord} ${first.row}, since a fill holds one product`,
          remedy: "Correct the product or the bin, or number the new filling as the next fill.",
        },
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
        {
          code: "two-spellings",
          received: row[name],
          expected: `"${first[name]}" as in ${place.rowWord} ${first.row}, or a name that differs in more than capitals`,
          remedy: `Spell each ${name} in one way throughout.`,
        },
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

function inFill({ bin, product, fill, outlet }: CatchIdentity): string {
  return `bin ${bin}, ${product}, fill ${fill}${outlet === null ? "" : `, outlet ${outlet}`}`;
}
