import type { LawfulRates } from "../../model/lawful-rates.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import { assumedNow, assumedValue, type WithFormerNames } from "../../model/rate-error.ts";
import {
  each,
  fraction,
  type OptionsOf,
  option,
  orNull,
  parts,
  positiveOrNull,
  resolve,
} from "../../results/options.ts";

/** What label or law sets, beside the rate that is drilled for. */
export interface LawfulAim extends LawfulRates {
  /** Null: not known. */
  readonly targetKgPerHa: number | null;
}

/** What this question can be told beyond level, tolerance and scale. */
export const skippingRules = {
  /** What the drive is left at; default the average of fills, because it errs least of those the log can give. */
  // The last fill's value errs more. Whether the value exists is found out with the fills at hand.
  assumed: option({ source: "average of fills" }, assumedValue),
  /** Rate errors whose chance is asked for, fractions above zero; the tolerance is always added. */
  // The tolerances met in extension bulletins and test codes.
  limits: option([0.02, 0.05, 0.1], each(fraction)),
  /** Chance that can be borne of any fill between two calibrations being off by more than the tolerance. */
  // The counterpart of the usual assurance of 80 %.
  acceptedRisk: option(0.2, fraction),
  /** Share of fills that an interval is to hold. */
  // The content most tolerance tables carry besides 95 and 99 %, and the one an operator can picture: 9 in 10.
  content: option(0.9, fraction),
  /** Rates that label or law sets; null: none. */
  lawful: option(
    null,
    orNull(
      parts<LawfulAim>({
        targetKgPerHa: positiveOrNull,
        lowestKgPerHa: positiveOrNull,
        highestKgPerHa: positiveOrNull,
      }),
    ),
  ),
};

export interface SkippingChoices extends OptionsOf<typeof skippingRules> {}

export interface SkippingOptions extends ModelOptions, SkippingChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function skippingOptions(
  model: ModelOptions,
  given: Partial<WithFormerNames<SkippingChoices>> = {},
): SkippingOptions {
  return { ...modelOptionsOf(model), ...resolve(skippingRules, assumedNow(given)) };
}
