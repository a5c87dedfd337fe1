import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { accurateSum } from "../../src/numeric/summation.ts";

describe("the accurate sum", () => {
  it("keeps what plain addition loses", () => {
    expect(accurateSum([1, 1e100, 1, -1e100])).toBe(2);
    expect(accurateSum(Array.from({ length: 1_000_000 }, () => 0.1))).toBe(100_000);
  });

  it("is exact to one rounding, whole numbers being the witness", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1e9, max: 1e9 }), { maxLength: 60 }), (whole) => {
        const exact = whole.reduce((total, value) => total + BigInt(value), 0n);
        // Eighths of whole numbers have exact sums; moving them far from 0 and back must not matter.
        const shifted = [2 ** 40, ...whole.map((value) => value / 8), -(2 ** 40)];
        expect(accurateSum(shifted) * 8).toBe(Number(exact));
      }),
    );
  });

  it("is 0 for no values", () => {
    expect(accurateSum([])).toBe(0);
  });

  it("names the place of a value that is not finite", () => {
    expect(() => accurateSum([1, Number.NaN])).toThrow(NumericalError);
    expect(() => accurateSum([1, Number.NaN])).toThrow(
      "value 2 is NaN; it must be a finite number",
    );
    expect(() => accurateSum([Number.POSITIVE_INFINITY])).toThrow("value 1 is Infinity");
  });

  it("says so when the sum overflows", () => {
    expect(() => accurateSum([1e308, 1e308])).toThrow("outside what a number can hold");
  });
});
