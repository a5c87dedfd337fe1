import { groupsOf } from "../data/groups.ts";
import { binKey } from "../data/identity.ts";
import { OptionError } from "../errors/errors.ts";
import type { Model } from "../model/model.ts";
import { explainingVariablesOptions } from "../questions/explaining-variables/options.ts";
import {
  type ExplainingVariables,
  explainingVariables,
} from "../questions/explaining-variables.ts";
import { productComparisonOptions } from "../questions/product-comparison/options.ts";
import { type ProductComparison, productComparison } from "../questions/product-comparison.ts";
import { known } from "../results/options.ts";
import type { ComparisonChoices } from "./options.ts";

/** What is said about products side by side. */
export interface ProductAnswers {
  readonly comparison: ProductComparison;
  readonly explaining: ExplainingVariables;
}

/**
 * Compares the products of a log where that makes sense, or where it is asked for. Unasked, only products that shared a
 * bin are compared, each with those it shared one with; those of a trial always are, whichever bin they were in.
 *
 * @throws  OptionError for a reference that is no product of the log
 * @returns null when there is one product, or each bin kept to its own and a comparison was not asked for
 */
export function productAnswers(model: Model, choices: ComparisonChoices): ProductAnswers | null {
  const { when = "one bin held several", trial, newDensityKgPerM3, ...comparison } = choices;
  const products = new Set(model.meters.map(({ product }) => product));
  const { reference = null, products: named = null } = comparison;
  if (reference !== null && !products.has(reference) && !named?.includes(reference))
    throw new OptionError("reference", reference, {
      need: "listed",
      facts: { choices: [...products] },
    });
  if (when === "never" || (products.size < 2 && trial === undefined)) return null;
  const asked = when === "always" || trial !== undefined;
  const wanted = named === null ? model : ofProducts(model, named);
  const compared = asked ? wanted : thoseThatSharedABin(wanted);
  if (compared.meters.length === 0) return null;
  const pairs = asked ? "all" : "sharing a bin";
  const options = productComparisonOptions(model.options, { pairs, ...comparison });
  const { blocks, spread } = options;
  return {
    comparison: productComparison(compared, options),
    explaining: explainingVariables(
      compared,
      explainingVariablesOptions(model.options, {
        ...known({ newDensityKgPerM3 }),
        blocks,
        spread,
      }),
    ),
  };
}

function ofProducts(model: Model, names: readonly string[]): Model {
  return { ...model, meters: model.meters.filter(({ product }) => names.includes(product)) };
}

/** The meters of products that had a bin in common with another product. */
function thoseThatSharedABin(model: Model): Model {
  const bins = groupsOf(model.meters, ({ place }) => binKey(place));
  const shared = new Set(
    bins
      .map((meters) => [...new Set(meters.map(({ product }) => product))])
      .filter((products) => products.length > 1)
      .flat(),
  );
  return { ...model, meters: model.meters.filter(({ product }) => shared.has(product)) };
}
