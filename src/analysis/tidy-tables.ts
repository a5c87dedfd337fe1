import type { CatchLog } from "../data/types.ts";
import type { PlainRow } from "../data/write-csv.ts";
import { fitModel } from "../model/model.ts";
import {
  catchTable,
  contrastTable,
  effectTable,
  estimateTable,
  productTable,
} from "../questions/tidy-tables.ts";
import type { Analysis } from "./analyse.ts";

/** Tidy tables of an analysis by name: one row a catch, an estimate, a product, a contrast, an effect. */
export type TidyTables = Readonly<Record<string, readonly PlainRow[]>>;

/** The tables a statistician takes away; those of products only where products were compared. */
export function tidyTables(log: CatchLog, { options, products }: Analysis): TidyTables {
  const { level, tolerance, scaleDivisionKg, varianceLaw } = options;
  const model = fitModel(log.catches, { level, tolerance, scaleDivisionKg, varianceLaw });
  return {
    catches: catchTable(model),
    estimates: estimateTable(model),
    ...(products === null
      ? {}
      : {
          products: productTable(products.comparison),
          contrasts: contrastTable(products.comparison),
          effects: effectTable(products.explaining),
        }),
  };
}
