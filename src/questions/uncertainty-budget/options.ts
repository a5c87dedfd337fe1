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
  /** The most draws of the Monte Carlo check, which ends once its interval is known to half a unit of the uncertainty's first digit. */
  // Four standard errors of a drawn end of a 95 % interval, √(0.025·0.975/n) over the normal density there, are then less than half
  // a unit of the first digit of the uncertainty up to 8 of it, and hardly more above: the digit decides, not chance.
  draws: option(30_000, count(20_000)),
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
