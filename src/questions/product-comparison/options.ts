import { OptionError } from "../../errors/errors.ts";
import type { ModelOptions } from "../../model/model.ts";
import { refuseUnknownOptions, requireFraction, requireOneOf } from "../../results/options.ts";
import type { ProductComparisonOptions } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale division. */
export type ProductComparisonChoices = Omit<ProductComparisonOptions, keyof ModelOptions>;

/** Defaults of this question, with the reason for each. */
export const productComparisonDefaults: ProductComparisonChoices = {
  reference: null,
  pairs: "all",
  /** Fills of one product may spread more than those of another; a common spread is a claim, so it must be made. */
  spread: "separate",
  scale: "as measured",
  /** Pairing by a block that fills do not share loses degrees of freedom for nothing. */
  blocks: null,
  /** How much difference is none is for the person who uses the product; a default would decide it unseen. */
  equivalenceMargin: null,
};

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function productComparisonOptions(
  model: ModelOptions,
  given: Partial<ProductComparisonChoices> = {},
): ProductComparisonOptions {
  refuseUnknownOptions(given, Object.keys(productComparisonDefaults));
  const chosen = { ...productComparisonDefaults, ...given };
  requireOneOf("pairs", chosen.pairs, ["all", "sharing a bin"]);
  requireOneOf("spread", chosen.spread, ["separate", "common"]);
  requireOneOf("scale", chosen.scale, ["as measured", "log"]);
  const { level, tolerance, scaleDivisionKg } = model;
  if (chosen.equivalenceMargin !== null) {
    requireFraction("equivalenceMargin", chosen.equivalenceMargin);
    // Below one half the two one-sided tests would each accept what is more likely wrong than right.
    if (level <= 0.5) throw new OptionError("level", level, "above 0.5 with an equivalence margin");
  }
  return { level, tolerance, scaleDivisionKg, ...chosen };
}
