import { type DriveGeometry, driveRules } from "../../model/drive.ts";
import { moneyResponse } from "../../model/fill-prices.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import {
  count,
  notNegative,
  type OptionsOf,
  oneOf,
  option,
  orNull,
  resolve,
  such,
  text,
} from "../../results/options.ts";

/** What this question can be told beyond level, tolerance, scale and drive. */
export const uncertaintyBudgetRules = {
  /** Shown ÷ known − 1, found with a known mass; null: not tested. */
  scaleTestedError: option(
    null,
    orNull(
      such<number>(
        "a fraction between −1 and 1",
        (error) => Number.isFinite(error) && Math.abs(error) < 1,
      ),
    ),
  ),
  /** Of one catch, in turns; null: not given. */
  turnCountStandardUncertainty: option(null, orNull(notNegative)),
  /** Whether the value is used for the fill that was caught, or kept for those that follow. */
  // A catch is made to set the drive for the fill in the bin.
  valueFor: option("this fill", oneOf("this fill", "next fills")),
  /** What a rate error costs a hectare; null: no money is counted. */
  response: option(null, orNull(moneyResponse)),
  /** Of that cost; null: not named. */
  currency: option(null, orNull(text)),
  /** Of the Monte Carlo check. */
  // The ends of a 95 % interval then come out within about 1 % of their distance from the middle, in about a tenth of a second.
  draws: option(50_000, count(20_000)),
  seed: option(1, count(0)),
};

export interface UncertaintyBudgetChoices
  extends DriveGeometry,
    OptionsOf<typeof uncertaintyBudgetRules> {}

export interface UncertaintyBudgetOptions extends ModelOptions, UncertaintyBudgetChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function uncertaintyBudgetOptions(
  model: ModelOptions,
  given: Partial<UncertaintyBudgetChoices> = {},
): UncertaintyBudgetOptions {
  return {
    ...modelOptionsOf(model),
    ...resolve({ ...driveRules, ...uncertaintyBudgetRules }, given),
  };
}
