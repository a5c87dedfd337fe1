import type { MassUnit } from "../../data/types.ts";
import { OptionError } from "../../errors/errors.ts";
import type { ModelOptions } from "../../model/model.ts";
import { refuseUnknownOptions } from "../../results/options.ts";
import type { OutliersOptions } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale. */
export type OutliersChoices = Omit<OutliersOptions, keyof ModelOptions>;

/** Defaults of this question, with the reason for each. */
export const outliersDefaults: OutliersChoices = {
  /** The unit results are in. */
  massUnit: "kg",
};

const massUnits: readonly MassUnit[] = ["kg", "g", "lb", "oz"];

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function outliersOptions(
  { level, tolerance, scaleDivisionKg }: ModelOptions,
  given: Partial<OutliersChoices> = {},
): OutliersOptions {
  refuseUnknownOptions(given, Object.keys(outliersDefaults));
  const chosen = { ...outliersDefaults, ...given };
  if (!massUnits.includes(chosen.massUnit))
    throw new OptionError("massUnit", chosen.massUnit, `one of ${massUnits.join(", ")}`);
  return { level, tolerance, scaleDivisionKg, ...chosen };
}
