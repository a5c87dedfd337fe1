import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../../src/errors/errors.ts";
import { chiSquaredUpperTail } from "../../../src/numeric/distributions/chi-squared.ts";
import { fLowerTail, fQuantile, fUpperTail } from "../../../src/numeric/distributions/f.ts";
import { studentTTwoSided } from "../../../src/numeric/distributions/student-t.ts";
import {
  combinations,
  distributionReference,
  expectDigits,
  numberAt,
  probabilities,
} from "../../support/distributions.ts";
import { evalR } from "../../support/webr.ts";

const infinite = Number.POSITIVE_INFINITY;

describe("F against 25-digit values", () => {
  const reference = distributionReference("f");

  it("has both tails to 12 digits", () => {
    for (const row of reference.tails) {
      const [x, df1, df2] = [numberAt(row, "x"), numberAt(row, "df1"), numberAt(row, "df2")];
      expectDigits(fLowerTail(x, df1, df2), numberAt(row, "lower"), 12, row);
      expectDigits(fUpperTail(x, df1, df2), numberAt(row, "upper"), 12, row);
    }
  });

  it("has quantiles to 12 digits", () => {
    for (const row of reference.quantiles) {
      const quantile = fQuantile(numberAt(row, "p"), numberAt(row, "df1"), numberAt(row, "df2"));
      expectDigits(quantile, numberAt(row, "quantile"), 12, row);
    }
  });
});

describe("F against R", () => {
  // From df2 = 4e5 on R takes the chi-squared quantile instead.
  it("agrees on quantiles and tails to 11 digits", async () => {
    const rows = combinations(probabilities, [1, 2, 3, 11.5, 200], [1, 2, 3, 8.4, 200, 1e5]);
    const column = (place: number) => rows.map((row) => row[place] ?? 0);
    const found = await evalR(
      "x <- qf(p, a, b); c(x, pf(x, a, b), pf(x, a, b, lower.tail = FALSE))",
      { p: column(0), a: column(1), b: column(2) },
    );
    rows.forEach(([p = 0, df1 = 0, df2 = 0], i) => {
      const [x = 0, lower = 0, upper = 0] = [0, 1, 2].map(
        (block) => found[block * rows.length + i] ?? 0,
      );
      // R finds small quantiles as a difference from 1, so they carry the rounding unit of 1 as an error.
      const difference = Math.abs(fQuantile(p, df1, df2) - x);
      expect(difference, JSON.stringify({ p, df1, df2 })).toBeLessThan(
        1e-11 * x + 1e-15 * Math.max(1, df2 / df1),
      );
      expectDigits(fLowerTail(x, df1, df2), lower, 11, { p, df1, df2 });
      expectDigits(fUpperTail(x, df1, df2), upper, 11, { p, df1, df2 });
    });
  });
});

describe("F", () => {
  it("is the square of t for one numerator degree of freedom", () => {
    for (const t of [1e-6, 0.4, 1.9, 12]) {
      expectDigits(fUpperTail(t * t, 1, 6.5), studentTTwoSided(t, 6.5), 13, t);
    }
  });

  it("is chi-squared over its df for infinitely many denominator degrees of freedom", () => {
    expect(fUpperTail(1.9, 4, infinite)).toBe(chiSquaredUpperTail(7.6, 4));
    expect(fLowerTail(1.9, 4, infinite) + fUpperTail(1.9, 4, infinite)).toBeCloseTo(1, 14);
    expectDigits(fQuantile(0.95, 4, 1e12), fQuantile(0.95, 4, infinite), 10, "df2 1e12");
  });

  it("turns over when the degrees of freedom are exchanged", () => {
    const positive = { min: 0.5, max: 1e5, noNaN: true };
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        fc.double(positive),
        fc.double(positive),
        (x, df1, df2) => {
          const turned = fUpperTail(1 / x, df2, df1);
          if (turned > 1e-200) expectDigits(fLowerTail(x, df1, df2), turned, 8, { x, df1, df2 });
        },
      ),
    );
  });

  it("has its limits outside the positive numbers and at infinity", () => {
    expect(fLowerTail(-1, 2, 3)).toBe(0);
    expect(fUpperTail(0, 2, 3)).toBe(1);
    expect(fUpperTail(infinite, 2, 3)).toBe(0);
    expect(fLowerTail(infinite, 2, infinite)).toBe(1);
  });

  it("refuses what it cannot answer and names the argument", () => {
    expect(() => fLowerTail(Number.NaN, 2, 3)).toThrow(NumericalError);
    expect(() => fUpperTail(Number.NaN, 2, 3)).toThrow("fUpperTail: x is NaN");
    expect(() => fUpperTail(1, infinite, 3)).toThrow("df1 is Infinity");
    expect(() => fUpperTail(1, 2, 0)).toThrow("df2 is 0");
    expect(() => fQuantile(0, 2, 3)).toThrow("p is 0");
    expect(() => fQuantile(0.5, Number.NaN, 3)).toThrow("df1 is NaN");
  });
});
