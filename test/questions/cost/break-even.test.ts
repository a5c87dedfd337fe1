import { describe, expect, it } from "vitest";
import { breakEvens, firstToPay } from "../../../src/questions/cost/break-even.ts";
import { priceRules } from "../../../src/questions/cost/options.ts";
import {
  catchingCost,
  missingPrices,
  productPerPercent,
} from "../../../src/questions/cost/prices.ts";
import type { BreakEven, CostPoint } from "../../../src/questions/cost/result.ts";
import { resolve } from "../../../src/results/options.ts";

const none = resolve(priceRules, {});
const priced = { ...none, costPerCatch: 3, costToSetUp: 4 };

const point = (
  catches: number,
  perHectare: number | null,
  lower: number | null = null,
  upper: number | null = null,
) =>
  ({
    catches,
    loss: {
      perHectare,
      lowerPerHectare: lower,
      upperPerHectare: upper,
      productWastedPerHectare: null,
    },
  }) as CostPoint;

describe("the price of catches", () => {
  it("is that of getting ready and of each catch, and nothing for none", () => {
    expect([0, 1, 3].map((count) => catchingCost(count, priced))).toEqual([0, 7, 13]);
    expect(catchingCost(2, { ...priced, costToSetUp: null })).toBe(6);
    expect(catchingCost(1, none)).toBeNull();
    expect(catchingCost(0, none)).toBe(0);
    // 5 minutes a catch and 12 to get ready, an hour worth 60: 5 and 12.
    const time = { ...none, valueOfHour: 60, minutesPerCatch: 5, minutesToSetUp: 12 };
    expect(catchingCost(2, time)).toBe(22);
    expect(catchingCost(1, { ...none, valueOfHour: 60 })).toBeNull();
  });

  it("of one percent of the target is a hundredth of what a hectare takes", () => {
    expect(productPerPercent({ ...none, pricePerKg: 0.5, targetKgPerHectare: 120 })).toBeCloseTo(
      0.6,
      12,
    );
    expect(productPerPercent({ ...none, pricePerKg: 0.5 })).toBeNull();
    expect(productPerPercent({ ...none, targetKgPerHectare: 120 })).toBeNull();
  });

  it("is missing by name, time not where a catch has its price", () => {
    expect(missingPrices(none)).toEqual([
      "response",
      "pricePerKg",
      "targetKgPerHectare",
      "valueOfHour",
      "minutesPerCatch",
      "areaHectares",
      "areaPerFillHectares",
    ]);
    expect(missingPrices({ ...none, costPerCatch: 0 })).toEqual([
      "response",
      "pricePerKg",
      "targetKgPerHectare",
      "areaHectares",
      "areaPerFillHectares",
    ]);
    expect(missingPrices({ ...none, valueOfHour: 60, pricePerKg: 1 })).not.toContain("valueOfHour");
  });
});

describe("the area from which catches pay", () => {
  it("is their cost over what they save a hectare, its ends by the limits of the loss when skipping", () => {
    const [one, two] = breakEvens([point(0, 1, 0.8, 1.5), point(1, 0.5), point(2, 0.9)], priced);
    // 7 ÷ (1 − 0.5), 7 ÷ (1.5 − 0.5), 7 ÷ (0.8 − 0.5).
    expect(one).toEqual({
      catches: 1,
      hectares: 14,
      lowerHectares: 7,
      upperHectares: expect.closeTo(7 / 0.3, 9),
      verdict: "pays above",
    });
    // At most 0.8 when skipping is less than 0.9: the upper end is open.
    expect(two).toEqual({
      catches: 2,
      hectares: expect.closeTo(100, 9),
      lowerHectares: expect.closeTo(10 / 0.6, 9),
      upperHectares: null,
      verdict: "pays above",
    });
  });

  it("is none where catches lose as much, and unknown where a figure is", () => {
    expect(breakEvens([point(0, 1), point(1, 1)], priced)).toMatchObject([
      { hectares: null, verdict: "does not pay" },
    ]);
    for (const points of [
      [point(0, null), point(1, 1)],
      [point(0, 1), point(1, null)],
      [point(1, 0.5)],
    ])
      expect(breakEvens(points, priced)).toMatchObject([{ hectares: null, verdict: "unknown" }]);
    expect(breakEvens([point(0, 1), point(1, 0.5)], none)).toMatchObject([{ verdict: "unknown" }]);
  });

  it("is smallest for the first number of catches of the smallest area", () => {
    const even = (catches: number, hectares: number | null) => ({ catches, hectares }) as BreakEven;
    expect(firstToPay([])).toBeNull();
    expect(firstToPay([even(1, null), even(2, null)])).toBeNull();
    expect(
      firstToPay([even(1, null), even(2, 9), even(3, 7), even(4, 7), even(5, 8)])?.catches,
    ).toBe(3);
  });
});
