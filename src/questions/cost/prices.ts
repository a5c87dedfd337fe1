import { priceOfCatch, priceOfSetUp } from "../../model/fill-prices.ts";
import type { MissingPrice, Prices } from "./result.ts";

const needed: readonly MissingPrice[] = [
  "response",
  "pricePerKg",
  "targetKgPerHectare",
  "valueOfHour",
  "minutesPerCatch",
  "areaHectares",
  "areaPerFillHectares",
];
/** Not asked for where a catch has its price. */
const insteadOfTime: readonly MissingPrice[] = ["valueOfHour", "minutesPerCatch"];

/** What is not given; each switches off what needs it. */
export function missingPrices(prices: Prices): readonly MissingPrice[] {
  const unneeded = prices.costPerCatch === null ? [] : insteadOfTime;
  return needed.filter((name) => prices[name] === null && !unneeded.includes(name));
}

/** What the catches of one fill cost; null: neither given nor to be worked out. */
export function catchingCost(catches: number, prices: Prices): number | null {
  if (catches === 0) return 0;
  const perCatch = priceOfCatch(prices);
  return perCatch === null ? null : (priceOfSetUp(prices) ?? 0) + catches * perCatch;
}

/** What one percent of the target rate costs in product, money/ha; null: price or target not given. */
export function productPerPercent({ pricePerKg, targetKgPerHectare }: Prices): number | null {
  return pricePerKg === null || targetKgPerHectare === null
    ? null
    : (pricePerKg * targetKgPerHectare) / 100;
}
