import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../../src/errors/errors.ts";
import {
  chiSquaredLowerTail,
  chiSquaredQuantile,
  chiSquaredUpperTail,
} from "../../../src/numeric/distributions/chi-squared.ts";
import {
  combinations,
  distributionReference,
  expectDigits,
  numberAt,
  probabilities,
} from "../../support/distributions.ts";
import { evalR } from "../../support/webr.ts";

describe("chi-squared against 25-digit values", () => {
  const reference = distributionReference("chi-squared");

  it("has both tails to 13 digits", () => {
    for (const row of reference.tails) {
      const [x, df] = [numberAt(row, "x"), numberAt(row, "df")];
      expectDigits(chiSquaredLowerTail(x, df), numberAt(row, "lower"), 13, row);
      expectDigits(chiSquaredUpperTail(x, df), numberAt(row, "upper"), 13, row);
    }
  });

  it("has quantiles to 13 digits", () => {
    for (const row of reference.quantiles) {
      const quantile = chiSquaredQuantile(numberAt(row, "p"), numberAt(row, "df"));
      expectDigits(quantile, numberAt(row, "quantile"), 13, row);
    }
  });
});

describe("chi-squared against R", () => {
  it("agrees on quantiles and tails to 11 digits", async () => {
    const rows = combinations(probabilities, [1, 2, 2.5, 3, 17.4, 200, 1e6]);
    const data = { p: rows.map(([p = 0]) => p), df: rows.map(([, df = 0]) => df) };
    const found = await evalR(
      "x <- qchisq(p, df); c(x, pchisq(x, df), pchisq(x, df, lower.tail = FALSE))",
      data,
    );
    rows.forEach(([p = 0, df = 0], i) => {
      const [x = 0, lower = 0, upper = 0] = [0, 1, 2].map(
        (block) => found[block * rows.length + i] ?? 0,
      );
      expectDigits(chiSquaredQuantile(p, df), x, 11, { p, df });
      expectDigits(chiSquaredLowerTail(x, df), lower, 11, { p, df });
      expectDigits(chiSquaredUpperTail(x, df), upper, 11, { p, df });
    });
  });
});

describe("chi-squared", () => {
  it("is exponential for two degrees of freedom", () => {
    for (const x of [1e-9, 0.3, 2, 40]) {
      expectDigits(chiSquaredLowerTail(x, 2), -Math.expm1(-x / 2), 14, x);
      expectDigits(chiSquaredUpperTail(x, 2), Math.exp(-x / 2), 14, x);
    }
  });

  it("has a quantile that its nearer tail turns back into the probability", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }),
        fc.double({ min: 0.3, max: 1e4, noNaN: true }),
        (p, df) => {
          const x = chiSquaredQuantile(p, df);
          const back = p < 0.5 ? chiSquaredLowerTail(x, df) : chiSquaredUpperTail(x, df);
          expectDigits(back, p < 0.5 ? p : 1 - p, 10, { p, df });
        },
      ),
    );
  });

  it("has its limits outside the positive numbers and at infinity", () => {
    expect(chiSquaredLowerTail(0, 3)).toBe(0);
    expect(chiSquaredUpperTail(-2, 3)).toBe(1);
    expect(chiSquaredLowerTail(Number.POSITIVE_INFINITY, 3)).toBe(1);
    expect(chiSquaredUpperTail(Number.POSITIVE_INFINITY, 3)).toBe(0);
  });

  it("refuses what it cannot answer and names the argument", () => {
    expect(() => chiSquaredLowerTail(Number.NaN, 3)).toThrow(NumericalError);
    expect(() => chiSquaredLowerTail(Number.NaN, 3)).toThrow("x is NaN");
    expect(() => chiSquaredUpperTail(1, 0)).toThrow("df is 0; it must be a finite number above 0");
    expect(() => chiSquaredUpperTail(1, Number.POSITIVE_INFINITY)).toThrow("df is Infinity");
    expect(() => chiSquaredQuantile(1, 3)).toThrow("p is 1");
    expect(() => chiSquaredQuantile(0.5, Number.NaN)).toThrow("df is NaN");
  });
});
