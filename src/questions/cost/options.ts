import { moneyResponse } from "../../model/fill-prices.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import { assumedNow, assumedValue, type WithFormerNames } from "../../model/rate-error.ts";
import {
  count,
  judgedLater,
  notNegative,
  type OptionsOf,
  option,
  orNull,
  positiveOrNull,
  resolve,
  text,
} from "../../results/options.ts";

/**
 * What things cost, all in one currency; null: not given, and what needs it is left out by name. No price is ever assumed:
 * what is not given stays unknown and is named.
 */
export const priceRules = {
  currency: option(null, orNull(text)),
  /** What a rate error costs a hectare; whatever it costs, product included. */
  response: option(null, orNull(moneyResponse)),
  /** For the value of product wasted alone. */
  pricePerKg: option(null, positiveOrNull),
  targetKgPerHectare: option(null, positiveOrNull),
  valueOfHour: option(null, orNull(notNegative)),
  minutesPerCatch: option(null, orNull(notNegative)),
  /** Before the first catch of a fill; with costToSetUp null too it counts as none (caution set-up-time-not-counted). */
  minutesToSetUp: option(null, orNull(notNegative)),
  /** Where it is not to be worked out from minutes and the value of an hour. */
  costPerCatch: option(null, orNull(notNegative)),
  /** The same before the first catch of a fill. */
  costToSetUp: option(null, orNull(notNegative)),
  /** Drilled with this product in a season. */
  areaHectares: option(null, positiveOrNull),
  /** Drilled with one fill. */
  areaPerFillHectares: option(null, positiveOrNull),
};

export interface Prices extends OptionsOf<typeof priceRules> {}

/** What this question can be told beyond level, tolerance and scale. */
export const costRules = {
  /** What the drive is left at when no catch is made. */
  // Of the values a log can give, the average of fills errs least. Whether the value exists is found out with the fills at hand.
  assumed: option({ source: "average of fills" }, assumedValue),
  // By their own table.
  prices: option(resolve(priceRules, {}), judgedLater<Prices>()),
  /** Catches of a fill up to which costs are worked out. */
  // As far as the next-catch curve goes.
  mostCatches: option(8, count(1)),
};

export interface CostChoices extends OptionsOf<typeof costRules> {}

export interface CostOptions extends ModelOptions, CostChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function costOptions(
  model: ModelOptions,
  given: Partial<WithFormerNames<Omit<CostChoices, "prices">>> & {
    readonly prices?: Partial<Prices>;
  } = {},
): CostOptions {
  const prices = resolve(priceRules, given.prices ?? {}, "prices.");
  return { ...modelOptionsOf(model), ...resolve(costRules, { ...assumedNow(given), prices }) };
}
