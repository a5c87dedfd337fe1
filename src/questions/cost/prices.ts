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

/** What is not given; each switches off what needs it. */
export function missingPrices(prices: Prices): readonly MissingPrice[] {
  return needed.filter((name) => prices[name] === null);
}

/** What the time for the catches of one fill costs; null: the value of an hour or the minutes are not given. */
export function catchingCost(catches: number, prices: Prices): number | null {
  const { valueOfHour, minutesPerCatch, minutesToSetUp } = prices;
  if (catches === 0) return 0;
  if (valueOfHour === null || minutesPerCatch === null) return null;
  return (((minutesToSetUp ?? 0) + catches * minutesPerCatch) / 60) * valueOfHour;
}

/** What one percent of the target rate costs in product, money/ha; null: price or target not given. */
export function productPerPercent({ pricePerKg, targetKgPerHectare }: Prices): number | null {
  return pricePerKg === null || targetKgPerHectare === null
    ? null
    : (pricePerKg * targetKgPerHectare) / 100;
}
