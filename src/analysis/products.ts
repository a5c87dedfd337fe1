import { OptionError } from "../errors/errors.ts";
import type { Model } from "../model/model.ts";
import { explainingVariablesOptions } from "../questions/explaining-variables/options.ts";
import {
  type ExplainingVariables,
  explainingVariables,
} from "../questions/explaining-variables.ts";
import { productComparisonOptions } from "../questions/product-comparison/options.ts";
import { type ProductComparison, productComparison } from "../questions/product-comparison.ts";
import type { ComparisonChoices } from "./options.ts";

/** What is said about products side by side. */
export interface ProductAnswers {
  readonly comparison: ProductComparison;
  readonly explaining: ExplainingVariables;
}

/**
 * Compares the products of a log where that makes sense, or where it is asked for.
 *
 * @throws  OptionError for a reference that is no product of the log
 * @returns null when there is one product, or each bin kept to its own and a comparison was not asked for
 */
export function productAnswers(model: Model, choices: ComparisonChoices): ProductAnswers | null {
  const { when = "one bin held several", newDensityKgPerM3 = null, ...comparison } = choices;
  const products = model.meters.map(({ product }) => product);
  const { reference = null } = comparison;
  if (reference !== null && !products.includes(reference))
    throw new OptionError("reference", reference, `one of ${[...new Set(products)].join(", ")}`);
  if (when === "never" || new Set(products).size < 2) return null;
  if (when !== "always" && !oneBinHeldSeveral(model)) return null;
  const { blocks = null, spread = "separate" } = comparison;
  return {
    comparison: productComparison(model, productComparisonOptions(model.options, comparison)),
    explaining: explainingVariables(
      model,
      explainingVariablesOptions(model.options, { newDensityKgPerM3, blocks, spread }),
    ),
  };
}

function oneBinHeldSeveral({ meters }: Model): boolean {
  return meters.some(({ bin, product }) =>
    meters.some((other) => other.bin === bin && other.product !== product),
  );
}
