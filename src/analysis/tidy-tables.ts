import type { Setup } from "../data/setup.ts";
import type { CatchLog } from "../data/types.ts";
import type { PlainRow } from "../data/write-csv.ts";
import { fitModel } from "../model/model.ts";
import { delivery } from "../questions/delivery.ts";
import {
  catchTable,
  contrastTable,
  type DeliveryOfFill,
  effectTable,
  estimateTable,
  productTable,
} from "../questions/tidy-tables.ts";
import type { Analysis } from "./analyse.ts";
import { glance } from "./glance.ts";
import { modelChoices } from "./resolved-setup.ts";

/** Tidy tables of an analysis by name: one row a bin, a catch, an estimate, a product, a contrast, an effect. */
export type TidyTables = Readonly<Record<string, readonly PlainRow[]>>;

/**
 * The tables a statistician takes away; those of products only where products were compared.
 *
 * @param log    catches of the analysis
 * @param setup  of the analysis; null: it had none
 */
export function tidyTables(
  log: CatchLog,
  analysis: Analysis,
  setup: Setup | null = null,
): TidyTables {
  const { options, products } = analysis;
  const model = fitModel(log.catches, options, modelChoices(options, setup));
  const deliveryOf: DeliveryOfFill = (meter, fill) => delivery(meter, options, fill);
  return {
    bins: glance(analysis),
    catches: catchTable(model, deliveryOf),
    estimates: estimateTable(model, deliveryOf),
    ...(products === null
      ? {}
      : {
          products: productTable(products.comparison),
          contrasts: contrastTable(products.comparison),
          effects: effectTable(products.explaining),
        }),
  };
}
