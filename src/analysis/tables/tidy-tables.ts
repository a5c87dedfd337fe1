import type { Setup } from "../../data/setup.ts";
import type { CatchLog } from "../../data/types.ts";
import type { PlainRow } from "../../data/write-csv.ts";
import type { Analysis } from "../analyse.ts";
import type { ProductAnswers } from "../products.ts";
import { budgetTable, budgetTotalTable } from "./budget.ts";
import { catchTable, modelOf } from "./catches.ts";
import { driftStepTable, driftStretchTable, driftTestTable } from "./drift.ts";
import { tidy } from "./estimates.ts";
import {
  densityContrastTable,
  densityFillTable,
  densityPredictionTable,
  densityTable,
  densityVolumeTable,
  effectTable,
  productTestTable,
  regressionTable,
  variableTable,
} from "./explaining.ts";
import { fillTable } from "./fills.ts";
import { flagTable, type SayFinding } from "./flags.ts";
import { glance } from "./glance.ts";
import { fileKeysOf } from "./keys.ts";
import { contrastTable, productFillTable, productTable, scatterContrastTable } from "./products.ts";
import { settingRateTable, settingTable } from "./setting.ts";
import { skippingChanceTable, skippingRunTable, skippingTable } from "./skipping.ts";
import { type NamesOption, namedAs, type TableName } from "./table-names.ts";
import { varianceComponentTable } from "./variance-components.ts";

/** Tidy tables of an analysis by name; empty: there is nothing to put into it. */
export type TidyTables = { readonly [N in TableName]: readonly PlainRow[] };

/** How tidy tables are made; everything optional. */
export interface TidyTablesOptions extends NamesOption {
  /** The sentence of a finding, such as `cautionSentence` makes it; left out: the table of flags has none. */
  readonly say?: SayFinding;
}

/**
 * The tables a statistician takes away, every figure with every digit: bins at a glance, catches, estimates, fills, findings,
 * variance components, drift, skipping, setting and budget; products, what explains their differences and their densities only
 * where products were compared. All join by the columns of the file of catches: farm, machine and season where the log
 * names them, bin, product, fill, catch. What each table and column is: `tableColumns`, and the words of a language.
 *
 * @param log      catches of the analysis
 * @param setup    of the analysis; null: it had none
 * @param options  names: "broom" for those of R's package broom; say: sentences for the table of flags
 */
export function tidyTables(
  log: CatchLog,
  analysis: Analysis,
  setup: Setup | null = null,
  { names, say }: TidyTablesOptions = {},
): TidyTables {
  const model = modelOf(log, analysis, setup);
  const withFileKeys = fileKeysOf(model);
  const keyed = (rows: readonly PlainRow[]) => namedAs(rows.map(withFileKeys), names);
  const compared = ofProducts(analysis.products);
  return {
    bins: keyed(glance(analysis)),
    catches: namedAs(catchTable(model, analysis), names),
    estimates: keyed(tidy(analysis)),
    fills: keyed(fillTable(analysis)),
    flags: keyed(flagTable(analysis, say ?? null)),
    variance_components: keyed(varianceComponentTable(analysis)),
    drift_steps: keyed(driftStepTable(analysis)),
    drift_stretches: keyed(driftStretchTable(analysis)),
    drift_tests: keyed(driftTestTable(analysis)),
    skipping: keyed(skippingTable(analysis)),
    skipping_chances: keyed(skippingChanceTable(analysis)),
    skipping_runs: keyed(skippingRunTable(analysis)),
    setting: keyed(settingTable(analysis)),
    setting_rates: keyed(settingRateTable(analysis)),
    budget: keyed(budgetTable(analysis)),
    budget_totals: keyed(budgetTotalTable(analysis)),
    products: keyed(compared.products),
    product_fills: keyed(compared.product_fills),
    contrasts: keyed(compared.contrasts),
    scatter_contrasts: keyed(compared.scatter_contrasts),
    product_tests: keyed(compared.product_tests),
    variables: keyed(compared.variables),
    effects: keyed(compared.effects),
    regressions: keyed(compared.regressions),
    density: keyed(compared.density),
    density_fills: keyed(compared.density_fills),
    density_volumes: keyed(compared.density_volumes),
    density_contrasts: keyed(compared.density_contrasts),
    density_predictions: keyed(compared.density_predictions),
  };
}

function ofProducts(products: ProductAnswers | null) {
  if (products === null) return nothingCompared;
  const { comparison, explaining } = products;
  return {
    products: productTable(comparison),
    product_fills: productFillTable(comparison),
    contrasts: contrastTable(comparison),
    scatter_contrasts: scatterContrastTable(comparison),
    product_tests: productTestTable(products),
    variables: variableTable(explaining),
    effects: effectTable(explaining),
    regressions: regressionTable(explaining),
    density: densityTable(explaining),
    density_fills: densityFillTable(explaining),
    density_volumes: densityVolumeTable(explaining),
    density_contrasts: densityContrastTable(explaining),
    density_predictions: densityPredictionTable(explaining),
  };
}

const nothingCompared = {
  products: [],
  product_fills: [],
  contrasts: [],
  scatter_contrasts: [],
  product_tests: [],
  variables: [],
  effects: [],
  regressions: [],
  density: [],
  density_fills: [],
  density_volumes: [],
  density_contrasts: [],
  density_predictions: [],
};
