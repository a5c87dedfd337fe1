import { massUnits } from "../../data/column-kinds.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import { listed, type OptionsOf, option, resolve } from "../../results/options.ts";

/** What this question can be told beyond level, tolerance and scale. */
export const outliersRules = {
  /** Unit the masses were written in: swapped digits are looked for in what was written. */
  // The unit results are in.
  massUnit: option("kg", listed(massUnits)),
};

export interface OutliersChoices extends OptionsOf<typeof outliersRules> {}

export interface OutliersOptions extends ModelOptions, OutliersChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function outliersOptions(
  model: ModelOptions,
  given: Partial<OutliersChoices> = {},
): OutliersOptions {
  return { ...modelOptionsOf(model), ...resolve(outliersRules, given) };
}
