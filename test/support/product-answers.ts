import type { Catch } from "../../src/data/types.ts";
import { fitModel } from "../../src/model/model.ts";
import {
  type ExplainingVariablesChoices,
  explainingVariablesOptions,
} from "../../src/questions/explaining-variables/options.ts";
import { explainingVariables } from "../../src/questions/explaining-variables.ts";
import {
  type ProductComparisonChoices,
  productComparisonOptions,
} from "../../src/questions/product-comparison/options.ts";
import { productComparison } from "../../src/questions/product-comparison.ts";
import { trialPlanOptions } from "../../src/questions/trial-plan/options.ts";
import type { TrialPlanOptions } from "../../src/questions/trial-plan/result.ts";
import { trialPlan } from "../../src/questions/trial-plan.ts";
import { aFill } from "./catches.ts";
import { trialOptions } from "./product-trial.ts";

/** Fills of two catches about the given deliveries; bulk density as given, or none. */
export function fillsOf(
  product: string,
  deliveries: readonly number[],
  given: Partial<Catch> = {},
): readonly Catch[] {
  return deliveries.flatMap((delivery, i) =>
    aFill(
      [
        [20, 20 * delivery * 1.01],
        [20, 20 * delivery * 0.99],
      ],
      { product, fill: i + 1, ...given },
    ),
  );
}

/** Two products that differ, a third close to the first, and one of a single fill. */
export const fourProducts: readonly Catch[] = [
  ...fillsOf("wheat", [0.41, 0.412, 0.409, 0.411], { bulkDensityKgPerM3: 770 }),
  ...fillsOf("pea", [0.38, 0.382, 0.379, 0.381], { bulkDensityKgPerM3: 790 }),
  ...fillsOf("durum", [0.411, 0.4105, 0.4125, 0.4092], { bulkDensityKgPerM3: 775 }),
  ...fillsOf("rye", [0.36], { bulkDensityKgPerM3: 700 }),
];

/** The same with the first fill of every product in one block, the second in the next, and so on. */
export function inBlocks(catches: readonly Catch[]): readonly Catch[] {
  return catches.map((row) => ({ ...row, extra: { block: String(row.fill) } }));
}

export function compared(catches: readonly Catch[], given: Partial<ProductComparisonChoices> = {}) {
  const model = fitModel(catches, trialOptions);
  return productComparison(model, productComparisonOptions(trialOptions, given));
}

export function explained(
  catches: readonly Catch[],
  given: Partial<ExplainingVariablesChoices> = {},
) {
  const model = fitModel(catches, trialOptions);
  return explainingVariables(model, explainingVariablesOptions(trialOptions, given));
}

export function planned(given: Partial<TrialPlanOptions> = {}) {
  return trialPlan(trialPlanOptions({ products: ["wheat", "pea", "barley"], ...given }));
}
