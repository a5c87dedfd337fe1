import type { PlainRow } from "../../data/write-csv.ts";
import { type OwnColumn, ownColumns, type TableColumn } from "./columns.ts";

/** The tidy tables, in the order in which they are listed; what one row of each is, the words say. */
export const tableNames = [
  "bins",
  "catches",
  "estimates",
  "fills",
  "flags",
  "variance_components",
  "drift_steps",
  "drift_stretches",
  "drift_tests",
  "skipping",
  "skipping_chances",
  "skipping_runs",
  "setting",
  "setting_rates",
  "budget",
  "budget_totals",
  "products",
  "product_fills",
  "contrasts",
  "scatter_contrasts",
  "product_tests",
  "variables",
  "effects",
  "regressions",
  "density",
  "density_fills",
  "density_volumes",
  "density_contrasts",
  "density_predictions",
] as const;

export type TableName = (typeof tableNames)[number];

/** Names as here, or as R's package broom has them where it has one. */
export type ColumnNames = "own" | "broom";

export interface NamesOption {
  /** Default "own". */
  readonly names?: ColumnNames;
}

/** Rows under the names asked for: `value` is `estimate` by broom, `lower` is `conf.low`, `leverage` is `.hat`. */
export function namedAs(
  rows: readonly PlainRow[],
  names: ColumnNames = "own",
): readonly PlainRow[] {
  if (names === "own") return rows;
  return rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([name, cell]) => [columnNameIn(name, names), cell]),
    ),
  );
}

/** What a column is called. */
export function columnNameIn(name: string, names: ColumnNames): string {
  const column: TableColumn | undefined = isOwnColumn(name) ? ownColumns[name] : undefined;
  return (names === "broom" ? column?.broom : undefined) ?? name;
}

/** Whether a column is one of the tables' own, and none of a file of catches. */
export function isOwnColumn(name: string): name is OwnColumn {
  return Object.hasOwn(ownColumns, name);
}
