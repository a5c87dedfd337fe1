import { OptionError } from "../../errors/errors.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import {
  each,
  type OptionsOf,
  oneOf,
  option,
  orNull,
  positiveOrNull,
  type Rule,
  resolve,
  text,
} from "../../results/options.ts";

const allDifferent: Rule<readonly string[]> = (option, names) => {
  each(text)(option, names);
  if (new Set(names).size < names.length)
    throw new OptionError(option, names.join(", "), "names that are all different");
};

/** What this question can be told beyond level, tolerance and scale division. */
export const explainingVariablesRules = {
  /**
   * "bulk density", "moisture", "meter speed", or the header of a column of the file's own, such as "tkw_g"; null: the
   * three known ones and a column for thousand-kernel weight, as far as the file has them.
   */
  // Whatever the file records may explain; choosing after a look at the answers would spoil the p-values.
  variables: option(null, orNull(allDifferent)),
  /** Bulk density of a product not tried yet, kg/m³, to predict its delivery; null: no prediction. */
  newDensityKgPerM3: option(null, positiveOrNull),
  /** As for a comparison of products; used to compare volumes per turn. */
  spread: option("by design", oneOf("by design", "separate", "common")),
  blocks: option(null, orNull(text)),
};

export interface ExplainingVariablesChoices extends OptionsOf<typeof explainingVariablesRules> {}

export interface ExplainingVariablesOptions extends ModelOptions, ExplainingVariablesChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function explainingVariablesOptions(
  model: ModelOptions,
  given: Partial<ExplainingVariablesChoices> = {},
): ExplainingVariablesOptions {
  return { ...modelOptionsOf(model), ...resolve(explainingVariablesRules, given) };
}
