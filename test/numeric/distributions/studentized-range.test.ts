import { describe, expect, it } from "vitest";
import { studentizedRangeQuantile } from "../../../src/numeric/distributions/studentized-range.ts";

describe("the studentized range of two means at chances near none", () => {
  // With one degree of freedom it is √2·|T| of a Cauchy value, whose quantile is a tangent.
  it.each([1e-9, 1e-11, 1e-50, 1e-99])("is that of a pair, p %d", (p) => {
    const cauchy = Math.SQRT2 * Math.tan(0.5 * Math.PI * p);
    expect(studentizedRangeQuantile(p, 2, 1) / cauchy).toBeCloseTo(1, 12);
  });

  it("ends at a chance that is named", () => {
    expect(() => studentizedRangeQuantile(1e-120, 3, 5)).toThrow("it must be at least 1e-100");
  });
});
