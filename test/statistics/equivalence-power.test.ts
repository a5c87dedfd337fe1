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

// Simulated by an independent program (numpy, 6,000 trials a figure, so ± 0.013): k fills of 3 catches a product,
// catch scatter 1.5 %, a true difference of 5 % or none.
const simulationError = 0.02;

const planned = (spread: number, fills: number) => ({
  standardError: Math.sqrt((spread ** 2 + 0.015 ** 2 / 3) * (2 / fills)),
  df: 2 * (fills - 1),
});

describe("power for two products, against simulated figures of an independent program", () => {
  it.each([
    [0.01, 2, 0.29],
    [0.01, 3, 0.84],
    [0.02, 3, 0.46],
    [0.02, 4, 0.71],
    [0.02, 6, 0.94],
    [0.04, 6, 0.46],
    [0.04, 10, 0.73],
  ])("of Welch's test, spread %s, %s fills, is %s", (spread, fills, simulated) => {
    const power = meanOverWelchDf(fills, (df) =>
      contrastPower(0.05, planned(spread, fills), studentTQuantile(0.975, df)),
    );
    expect(Math.abs(power - simulated)).toBeLessThan(simulationError);
  });

  it.each([
    [0.01, 2, 0.53],
    [0.01, 3, 0.93],
    [0.02, 3, 0.56],
    [0.02, 4, 0.77],
  ])("of the pooled test, spread %s, %s fills, is %s", (spread, fills, simulated) => {
    const plan = planned(spread, fills);
    const power = contrastPower(0.05, plan, studentTQuantile(0.975, plan.df));
    expect(Math.abs(power - simulated)).toBeLessThan(simulationError);
  });

  it.each([
    [0.02, 0.05, 3, 0.45],
    [0.02, 0.05, 4, 0.73],
    [0.02, 0.05, 6, 0.96],
    [0.04, 0.05, 6, 0.28],
    [0.04, 0.05, 10, 0.68],
    [0.02, 0.03, 4, 0.17],
    [0.02, 0.03, 6, 0.43],
    [0.02, 0.03, 10, 0.81],
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
