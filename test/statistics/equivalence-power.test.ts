import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import {
  equivalencePower,
  type PlannedContrast,
  welchDfs,
} from "../../src/statistics/equivalence-power.ts";
import { tTestPower } from "../../src/statistics/t-test-power.ts";

/** Mean over the degrees of freedom that Welch's formula may give. */
function meanOverWelchDf(n: number, f: (df: number) => number): number {
  return welchDfs(n).reduce((sum, { df, weight }) => sum + weight * f(df), 0);
}

const contrastPower = (difference: number, plan: PlannedContrast, critical: number) =>
  tTestPower(difference / plan.standardError, plan.df, critical);

// Simulated in R, 20,000 trials a figure: test/reference/generate/compared-products.R. Fills of 3 catches a product, catch
// scatter 1.5 %, a true difference of 5 % or none. Three standard errors.
const simulationError = 0.0106;

const planned = (spread: number, fills: number) => ({
  standardError: Math.sqrt((spread ** 2 + 0.015 ** 2 / 3) * (2 / fills)),
  df: 2 * (fills - 1),
});

describe("power for two products, against simulated figures", () => {
  it.each([
    [0.01, 2, 0.281],
    [0.01, 3, 0.85],
    [0.02, 3, 0.459],
    [0.02, 4, 0.72],
    [0.02, 6, 0.937],
    [0.04, 6, 0.462],
    [0.04, 10, 0.726],
  ])("of Welch's test, spread %s, %s fills, is %s", (spread, fills, simulated) => {
    const power = meanOverWelchDf(fills, (df) =>
      contrastPower(0.05, planned(spread, fills), studentTQuantile(0.975, df)),
    );
    expect(Math.abs(power - simulated)).toBeLessThan(simulationError);
  });

  it.each([
    [0.01, 2, 0.534],
    [0.01, 3, 0.926],
    [0.02, 3, 0.567],
    [0.02, 4, 0.766],
  ])("of the pooled test, spread %s, %s fills, is %s", (spread, fills, simulated) => {
    const plan = planned(spread, fills);
    const power = contrastPower(0.05, plan, studentTQuantile(0.975, plan.df));
    expect(Math.abs(power - simulated)).toBeLessThan(simulationError);
  });

  it.each([
    [0.02, 0.05, 3, 0.449],
    [0.02, 0.05, 4, 0.74],
    [0.02, 0.05, 6, 0.956],
    [0.04, 0.05, 6, 0.274],
    [0.04, 0.05, 10, 0.67],
    [0.02, 0.03, 4, 0.167],
    [0.02, 0.03, 6, 0.426],
    [0.02, 0.03, 10, 0.807],
  ])("to show equality, spread %s, margin %s, %s fills, is %s", (spread, margin, fills, sim) => {
    const limits = { lower: -margin, upper: margin };
    const power = meanOverWelchDf(fills, (df) =>
      equivalencePower(0, planned(spread, fills), limits, studentTQuantile(0.95, df)),
    );
    expect(Math.abs(power - sim)).toBeLessThan(simulationError);
  });
});

describe("limits of power", () => {
  it("is the size of the test when there is no difference", () => {
    const plan = { standardError: 0.3, df: 7 };
    expect(contrastPower(0, plan, studentTQuantile(0.975, 7))).toBeCloseTo(0.05, 10);
  });

  it("is at most the size when the difference is at the margin", () => {
    const plan = { standardError: 0.1, df: 8 };
    const power = equivalencePower(1, plan, { lower: -1, upper: 1 }, studentTQuantile(0.95, 8));
    expect(power).toBeCloseTo(0.05, 8);
  });

  it("leaves no chance of showing equality within limits narrower than the error", () => {
    const plan = { standardError: 1, df: 4 };
    expect(equivalencePower(0, plan, { lower: -0.01, upper: 0.01 }, 2)).toBeLessThan(1e-6);
  });

  it("weighs degrees of freedom between those of one group and of both together", () => {
    for (const n of [2, 3, 9]) {
      expect(meanOverWelchDf(n, () => 1)).toBeCloseTo(1, 12);
      for (const { df } of welchDfs(n)) {
        expect(df).toBeGreaterThan(n - 1);
        expect(df).toBeLessThan(2 * (n - 1));
      }
    }
  });

  it("has Welch's mean degrees of freedom", () => {
    // Groups of four: 3(a + b)²/(a² + b²) with a/(a + b) beta(3/2, 3/2), a semicircle, so 6·(2/π)∫√(1 − v²)/(1 + v²)dv
    // over −1 … 1, which is 12(√2 − 1).
    expect(meanOverWelchDf(4, (df) => df)).toBeCloseTo(12 * (Math.SQRT2 - 1), 9);
  });
});

it("refuses groups of one value and a standard error of zero", () => {
  expect(() => welchDfs(1)).toThrow(NumericalError);
  const limits = { lower: -1, upper: 1 };
  expect(() => equivalencePower(1, { standardError: 0, df: 3 }, limits, 2)).toThrow(NumericalError);
});
