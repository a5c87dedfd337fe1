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
