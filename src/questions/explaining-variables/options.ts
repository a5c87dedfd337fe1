import { OptionError } from "../../errors/errors.ts";
import type { ModelOptions } from "../../model/model.ts";
import { refuseUnknownOptions, requirePositiveOrNull } from "../../results/options.ts";
import type { ExplainingVariablesOptions } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale division. */
export type ExplainingVariablesChoices = Omit<ExplainingVariablesOptions, keyof ModelOptions>;

/** Defaults of this question, with the reason for each. */
export const explainingVariablesDefaults: ExplainingVariablesChoices = {
  /** Whatever the file records may explain; choosing after a look at the answers would spoil the p-values. */
  variables: null,
  newDensityKgPerM3: null,
  /** As in a comparison of products: a common spread is a claim. */
  spread: "separate",
  blocks: null,
};

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function explainingVariablesOptions(
  model: ModelOptions,
  given: Partial<ExplainingVariablesChoices> = {},
): ExplainingVariablesOptions {
  refuseUnknownOptions(given, Object.keys(explainingVariablesDefaults));
  const chosen = { ...explainingVariablesDefaults, ...given };
  requirePositiveOrNull("newDensityKgPerM3", chosen.newDensityKgPerM3);
  if (!["separate", "common"].includes(chosen.spread)) {
    throw new OptionError("spread", chosen.spread, "separate or common");
  }
  const { variables } = chosen;
  if (variables !== null && new Set(variables).size < variables.length) {
    throw new OptionError("variables", variables.join(", "), "names that are all different");
  }
  const { level, tolerance, scaleDivisionKg } = model;
  return { level, tolerance, scaleDivisionKg, ...chosen };
}
