import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { lastingShiftLimit } from "../../src/statistics/shift-evidence-limit.ts";

describe("the limit of a lasting shift's evidence", () => {
  it("is the simulated one where there is one", () => {
    expect(lastingShiftLimit(4, 0)).toBeCloseTo(1.94, 12);
    expect(lastingShiftLimit(8, 0)).toBeCloseTo(5.38, 12);
    expect(lastingShiftLimit(8, 2)).toBeCloseTo(6.12, 12);
    expect(lastingShiftLimit(9, 2)).toBeCloseTo(6.09, 12);
    expect(lastingShiftLimit(12, 30)).toBeCloseTo(4.3, 12);
  });

  // Simulated anew: test/reference/generate/shift-limits.R. Both simulations err by 3 % or so.
  it.each([
    [0, [1.94, 2.63, 3.6, 4.6, 5.36, 5.74, 5.82, 5.64, 5.46]],
    [1, [2.86, 3.64, 4.57, 5.31, 5.78, 6.03, 5.78, 5.54, 5.32]],
    [2, [3.76, 4.5, 5.28, 5.77, 6.0, 5.98, 5.95, 5.58, 5.23]],
    [3, [4.64, 5.34, 5.85, 6.12, 6.29, 6.14, 5.87, 5.59, 5.14]],
    [5, [6.05, 6.14, 6.42, 6.4, 6.32, 5.97, 5.79, 5.4, 4.96]],
    [10, [7.79, 7.22, 6.78, 6.6, 6.14, 5.86, 5.56, 5.21, 4.77]],
    [30, [8.72, 7.58, 7.01, 6.74, 5.82, 5.44, 5.08, 4.62, 4.37]],
  ])("is what spends three in a hundred over 4 to 12 values, prior of %i df", (nu0, limits) => {
    limits.forEach((limit, i) => {
      expect(Math.abs(lastingShiftLimit(4 + i, nu0) / limit - 1)).toBeLessThan(0.045);
    });
  });

  it("is linear in 1/(1 + ν0) between two priors", () => {
    // Between ν0 = 5 (1/6) and 10 (1/11) lies 1/8 at ν0 = 7: (1/6 − 1/8)/(1/6 − 1/11) = 0.55 of the way.
    expect(lastingShiftLimit(6, 7)).toBeCloseTo(6.35 + 0.55 * (6.97 - 6.35), 12);
    // Between ν0 = 0 (1) and 1 (1/2) lies 3/4 at ν0 = 1/3: half way.
    expect(lastingShiftLimit(4, 1 / 3)).toBeCloseTo((1.94 + 2.85) / 2, 12);
  });

  it("stays what it is beyond the table", () => {
    expect(lastingShiftLimit(30, 0)).toBe(lastingShiftLimit(12, 0));
    expect(lastingShiftLimit(7, 400)).toBe(lastingShiftLimit(7, 30));
  });

  it("refuses fewer than four values and a prior below none", () => {
    expect(() => lastingShiftLimit(3, 0)).toThrow(NumericalError);
    expect(() => lastingShiftLimit(8, -0.1)).toThrow(NumericalError);
  });
});
