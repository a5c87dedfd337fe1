import type { ModelOptions } from "../../model/model.ts";
import { assumedNow, type WithFormerNames } from "../../model/rate-error.ts";
import {
  refuseUnknownOptions,
  requireCount,
  requireNotNegative,
  requirePositiveOrNull,
} from "../../results/options.ts";
import type { CostOptions, Prices } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale. */
export interface CostChoices extends Omit<CostOptions, keyof ModelOptions | "prices"> {
  readonly prices: Partial<Prices>;
}

/** No price is ever assumed: what is not given stays unknown and is named. */
export const noPrices: Prices = {
  currency: null,
  response: null,
  pricePerKg: null,
  targetKgPerHectare: null,
  valueOfHour: null,
  minutesPerCatch: null,
  minutesToSetUp: null,
  areaHectares: null,
  areaPerFillHectares: null,
};

/** Defaults of this question, with the reason for each. */
export const costDefaults: CostChoices = {
  /** Of the values a log can give, the mean of fills errs least. */
  assumed: { source: "average of fills" },
  prices: noPrices,
  /** As far as the next-catch curve goes. */
  mostCatches: 8,
};

/**
 * Fills in what is not given. Whether the assumed value exists is found out with the fills at hand.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function costOptions(
  { level, tolerance, scaleDivisionKg }: ModelOptions,
  given: Partial<WithFormerNames<CostChoices>> = {},
): CostOptions {
  refuseUnknownOptions(given, Object.keys(costDefaults));
  const assumed = assumedNow(given.assumed ?? costDefaults.assumed);
  const chosen = { ...costDefaults, ...given, assumed };
  requireCount("mostCatches", chosen.mostCatches, 1);
  return { level, tolerance, scaleDivisionKg, ...chosen, prices: checkedPrices(chosen.prices) };
}

function checkedPrices(given: Partial<Prices>): Prices {
  refuseUnknownOptions(given, Object.keys(noPrices));
  const prices = { ...noPrices, ...given };
  requirePositiveOrNull("prices.pricePerKg", prices.pricePerKg);
  requirePositiveOrNull("prices.targetKgPerHectare", prices.targetKgPerHectare);
  requireNotNegative("prices.valueOfHour", prices.valueOfHour ?? 0);
  requireNotNegative("prices.minutesPerCatch", prices.minutesPerCatch ?? 0);
  requireNotNegative("prices.minutesToSetUp", prices.minutesToSetUp ?? 0);
  requirePositiveOrNull("prices.areaHectares", prices.areaHectares);
  requirePositiveOrNull("prices.areaPerFillHectares", prices.areaPerFillHectares);
  if (prices.response?.kind === "linear") {
    requireNotNegative("prices.response.heavy", prices.response.heavyCostPerHectarePerPercent);
    requireNotNegative("prices.response.light", prices.response.lightCostPerHectarePerPercent);
  }
  if (prices.response?.kind === "quadratic")
    requireNotNegative(
      "prices.response.curvature",
      prices.response.curvaturePerHectarePerPercentSquared,
    );
  return prices;
}
