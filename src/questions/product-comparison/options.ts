import { OptionError } from "../../errors/errors.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import {
  each,
  fraction,
  type OptionsOf,
  oneOf,
  option,
  orNull,
  resolve,
  text,
} from "../../results/options.ts";

/** What this question can be told beyond level, tolerance and scale division. */
export const productComparisonRules = {
  /** Those that are compared, others left aside; null: all that the file names. */
  products: option(null, orNull(each(text))),
  /** In which order they are told of, and which of a pair is first: as `products` or the file lists them, or the heaviest first. */
  order: option("as listed", oneOf("as listed", "by size")),
  /** Product that every other one is compared with; null: all pairs. */
  reference: option(null, orNull(text)),
  /** Which pairs are told of. Their intervals hold together with those of all pairs, whichever are told. */
  pairs: option("all", oneOf("all", "sharing a bin")),
  /**
   * Whether fills of every product spread alike (one spread is estimated) or each its own way. "by design": alike within
   * 2 to 8 complete blocks of three products or more, else each its own way.
   */
  // With few blocks a pair by itself says next to nothing; elsewhere a common spread is a claim that must be made. A test
  // of spreads could not choose: with few fills it finds nothing.
  spread: option("by design", oneOf("by design", "separate", "common")),
  /** "log" compares ratios of geometric means; "by design": within blocks. */
  // A block that makes one product heavier makes the others heavier in proportion, and so do spreads grow.
  scale: option("by design", oneOf("by design", "as measured", "log")),
  /** What fills of different products share: "bin", "date", or a column of the file, such as "day"; null: nothing. */
  // Pairing by a block that fills do not share loses degrees of freedom for nothing.
  blocks: option(null, orNull(text)),
  /** Products count as equivalent when their ratio is within 1/(1 + margin) … 1 + margin; a fraction; null: not asked. */
  // How much difference is none is for the person who uses the product; a default would decide it unseen.
  equivalenceMargin: option(null, orNull(fraction)),
};

export interface ProductComparisonChoices extends OptionsOf<typeof productComparisonRules> {}

export interface ProductComparisonOptions extends ModelOptions, ProductComparisonChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function productComparisonOptions(
  model: ModelOptions,
  given: Partial<ProductComparisonChoices> = {},
): ProductComparisonOptions {
  const chosen = resolve(productComparisonRules, given);
  // Below one half the two one-sided tests would each accept what is more likely wrong than right.
  if (chosen.equivalenceMargin !== null && model.level <= 0.5)
    throw new OptionError("level", model.level, { need: "level-with-margin", facts: {} });
  return { ...modelOptionsOf(model), ...chosen };
}
