import type { TableName } from "../../analysis/tables/table-names.ts";
import { tableColumns } from "./table-columns.ts";

/** What a row of each tidy table is. */
const rows: Readonly<Record<TableName, string>> = {
  bins: "One row a bin and product: its newest fill, what to do, whether the meter has moved, and how much it scatters",
  catches: "One row a catch, with what the fit of its fill says of it",
  estimates:
    "One row an estimate: delivery of each fill, mean over fills, next fill, spread of fills",
  fills:
    "One row a fill: its delivery, where it stands among the others, and what was found among its catches",
  flags: "One row a finding; one that names catches has a row for each of them",
  variance_components: "One row a part of the scatter: catches within fills, and fills",
  drift_steps:
    "One row a fill: what was decided when it came, and its place on the charts of scores",
  drift_stretches: "One row a stretch of fills of one level; the last is in force",
  drift_tests: "One row a test of whether the meter has moved",
  skipping: "One row a bin and product: what it risks not to catch the next fill",
  skipping_chances: "One row a limit: how likely the rate of the next fill is off by more",
  skipping_runs: "One row a number of fills in a row without a catch",
  setting: "One row a quantity that the target rate needs of the drive",
  setting_rates: "One row a setting of the drive: the rate it gives",
  budget: "One row a source of uncertainty of the applied rate",
  budget_totals: "One row a bin and product: what its sources of uncertainty come to",
  products: "One row a product of the comparison",
  product_fills: "One row a fill that products are compared by",
  contrasts: "One row a pair of products, first against second, in delivery",
  scatter_contrasts: "One row a pair of products, first against second, in the scatter of catches",
  product_tests: "One row an F test over all products",
  variables: "One row something recorded that may explain why deliveries differ",
  effects: "One row an effect of such a variable on the delivery",
  regressions: "One row a regression that effects are of",
  density: "One row: whether bulk density alone explains how products differ",
  density_fills: "One row a fill, with bulk density and volume per turn",
  density_volumes: "One row a product: its volume per turn",
  density_contrasts: "One row a pair of products, first against second, in volume per turn",
  density_predictions: "One row a way to work out the delivery of a product not tried yet",
};

/** What the tidy tables hold; columns of a file of catches are described where the template describes them. */
export const tables = {
  title: "Tidy tables of a catch test report",
  rows,
  columns: tableColumns,
  extra: (header: string) => `Column of the file's own: ${header}`,
  unit: (unit: string) => unit,
  /** The list of all columns in a workbook. */
  dictionary: {
    sheet: "columns",
    table: "table",
    column: "column",
    type: "type",
    unit: "unit",
    meaning: "meaning",
  },
};
