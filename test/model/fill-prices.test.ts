import { describe, expect, it } from "vitest";
import { OptionError } from "../../src/errors/errors.ts";
import {
  expectedLoss,
  type FillPrices,
  fillPrices,
  fillPricesOf,
  priceOfCatch,
  priceOfSetUp,
} from "../../src/model/fill-prices.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const linear = {
  kind: "linear",
  heavyCostPerHectarePerPercent: 0.6,
  lightCostPerHectarePerPercent: 1.3,
} as const;
const quadratic = { kind: "quadratic", curvaturePerHectarePerPercentSquared: 0.04 } as const;
const nothing = {
  costPerCatch: null,
  costToSetUp: null,
  valueOfHour: null,
  minutesPerCatch: null,
  minutesToSetUp: null,
};
const timed = { ...nothing, valueOfHour: 60, minutesPerCatch: 4, minutesToSetUp: 10 };

describe("the price of a catch", () => {
  it("is its own, else its minutes at the value of an hour", () => {
    expect(priceOfCatch(timed)).toBe(4);
    expect(priceOfSetUp(timed)).toBe(10);
    expect(priceOfCatch({ ...timed, costPerCatch: 2.5 })).toBe(2.5);
    expect(priceOfSetUp({ ...timed, costToSetUp: 0 })).toBe(0);
    expect(priceOfCatch({ ...timed, valueOfHour: null })).toBeNull();
    expect(priceOfSetUp(nothing)).toBeNull();
  });

  it("makes the prices of a fill with response and area, and none where one of the three is missing", () => {
    const given = { ...timed, currency: "CAD", response: linear, areaPerFillHectares: 40 };
    const prices = { currency: "CAD", response: linear, hectares: 40, perCatch: 4, toSetUp: 10 };
    expect(fillPricesOf(given)).toEqual(prices);
    expect(fillPricesOf({ ...given, currency: null, minutesToSetUp: null })).toEqual({
      ...prices,
      currency: null,
      toSetUp: 0,
    });
    for (const missing of [
      { response: null },
      { areaPerFillHectares: null },
      { minutesPerCatch: null },
    ])
      expect(fillPricesOf({ ...given, ...missing })).toBeNull();
  });

  it("that cannot be meant is refused", () => {
    const prices: FillPrices = {
      currency: null,
      response: linear,
      hectares: 40,
      perCatch: 4,
      toSetUp: 0,
    };
    expect(() => fillPrices("prices", prices)).not.toThrow();
    for (const wrong of [
      { hectares: 0 },
      { perCatch: -1 },
      { toSetUp: Number.NaN },
      { response: { ...linear, lightCostPerHectarePerPercent: -1 } },
      { currency: 5 as never },
    ])
      expect(() => fillPrices("prices", { ...prices, ...wrong })).toThrow(OptionError);
  });
});

describe("what a rate error costs on average", () => {
  it("is R's integral of the response over the law of the error", async () => {
    for (const law of [
      { location: 0, scale: 0.01, df: 3.589712306 },
      { location: 0.008, scale: 0.01, df: 6 },
      { location: -0.02, scale: 0.015, df: 12 },
    ]) {
      const [line, square] = await evalR(
        `cost <- function(p) ifelse(p > 0, 0.6 * p, -1.3 * p)
         e <- function(x) 100 * (location + scale * x)
         over <- function(g) integrate(function(y) { x <- sinh(y); g(e(x)) * dt(x, df) * cosh(y) },
           -40, 40, rel.tol = 1e-12, subdivisions = 2000)$value
         c(over(cost), over(function(p) 0.04 * p^2))`,
        law,
      );
      expect(digits(present(expectedLoss(law, linear)), present(line))).toBeGreaterThan(8);
      expect(digits(present(expectedLoss(law, quadratic)), present(square))).toBeGreaterThan(8);
    }
  });

  it("has no bound on one degree of freedom, with the square on two", () => {
    const law = { location: 0, scale: 0.01 };
    expect(expectedLoss({ ...law, df: 1 }, linear)).toBeNull();
    expect(expectedLoss({ ...law, df: 1.1 }, linear)).not.toBeNull();
    expect(expectedLoss({ ...law, df: 2 }, quadratic)).toBeNull();
  });
});

it("has no expected square below three degrees of freedom, and one at three: σ²·3", () => {
  const law = { location: 0.01, scale: 0.02 };
  expect(expectedLoss({ ...law, df: 2.99 }, quadratic)).toBeNull();
  expect(present(expectedLoss({ ...law, df: 3 }, quadratic))).toBeCloseTo(
    0.04 * 100 ** 2 * (0.01 ** 2 + 3 * 0.02 ** 2),
    10,
  );
});
