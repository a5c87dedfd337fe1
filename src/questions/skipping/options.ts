import type { ModelOptions } from "../../model/model.ts";
import { assumedNow, type WithFormerNames } from "../../model/rate-error.ts";
import { refuseUnknownOptions, requireFraction } from "../../results/options.ts";
import type { SkippingOptions } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale. */
export type SkippingChoices = Omit<SkippingOptions, keyof ModelOptions>;

/** Defaults of this question, with the reason for each. */
export const skippingDefaults: SkippingChoices = {
  /** Of the values a log can give, the mean of fills errs least; the previous fill's value errs more. */
  assumed: { source: "average of fills" },
  /** The tolerances met in extension bulletins and test codes. */
  limits: [0.02, 0.05, 0.1],
  /** The counterpart of the usual assurance of 80 %. */
  acceptedRisk: 0.2,
  /** The content most tolerance tables carry besides 95 and 99 %, and the one an operator can picture: 9 in 10. */
  content: 0.9,
};

/**
 * Fills in what is not given. Whether the assumed value exists is found out with the fills at hand.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function skippingOptions(
  { level, tolerance, scaleDivisionKg }: ModelOptions,
  given: Partial<WithFormerNames<SkippingChoices>> = {},
): SkippingOptions {
  refuseUnknownOptions(given, Object.keys(skippingDefaults));
  const assumed = assumedNow(given.assumed ?? skippingDefaults.assumed);
  const chosen = { ...skippingDefaults, ...given, assumed };
  for (const limit of chosen.limits) requireFraction("limits", limit);
  requireFraction("acceptedRisk", chosen.acceptedRisk);
  requireFraction("content", chosen.content);
  return { level, tolerance, scaleDivisionKg, ...chosen };
}
