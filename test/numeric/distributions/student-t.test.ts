import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../../src/errors/errors.ts";
import { normalLowerTail, normalQuantile } from "../../../src/numeric/distributions/normal.ts";
import {
  studentTDensity,
  studentTLowerTail,
  studentTQuantile,
  studentTTwoSided,
  studentTUpperTail,
} from "../../../src/numeric/distributions/student-t.ts";
import {
  combinations,
  distributionReference,
  expectDigits,
  numberAt,
  probabilities,
} from "../../support/distributions.ts";
import { evalR } from "../../support/webr.ts";

const reference = distributionReference("student-t");
const dfs = [1, 2, 2.5, 3, 17.4, 200, 1e6];

describe("Student's t against 25-digit values", () => {
  it("has both tails to 14 digits", () => {
    for (const row of reference.tails) {
      const [x, df] = [numberAt(row, "x"), numberAt(row, "df")];
      expectDigits(studentTLowerTail(x, df), numberAt(row, "lower"), 14, row);
      expectDigits(studentTUpperTail(x, df), numberAt(row, "upper"), 14, row);
    }
  });

  it("has quantiles to 14 digits, also close to the median", () => {
    for (const row of reference.quantiles) {
      const quantile = studentTQuantile(numberAt(row, "p"), numberAt(row, "df"));
      expectDigits(quantile, numberAt(row, "quantile"), 14, row);
    }
  });
});

describe("Student's t against R", () => {
  it("agrees on quantiles, tails and density to 12 digits", async () => {
    const rows = combinations(probabilities, dfs);
    const data = { p: rows.map(([p = 0]) => p), df: rows.map(([, df = 0]) => df) };
    const found = await evalR("x <- qt(p, df); c(x, pt(x, df), pt(-x, df), dt(x, df))", data);
    rows.forEach(([p = 0, df = 0], i) => {
      const [x = 0, lower = 0, upper = 0, density = 0] = [0, 1, 2, 3].map(
        (block) => found[block * rows.length + i] ?? 0,
      );
      // R's own quantile is 0 to within rounding here, not exactly.
      if (p !== 0.5) expectDigits(studentTQuantile(p, df), x, 12, { p, df });
      expectDigits(studentTLowerTail(x, df), lower, 12, { p, df });
      expectDigits(studentTUpperTail(x, df), upper, 12, { p, df });
      expectDigits(studentTDensity(x, df), density, 12, { p, df });
    });
  });
});

describe("Student's t", () => {
  it("is the Cauchy distribution for one degree of freedom", () => {
    for (const x of [-1e5, -3, -1e-9, 0, 1e-12, 1e-3, 0.7, 40]) {
      const cauchy = x < -1 ? Math.atan(-1 / x) / Math.PI : 0.5 + Math.atan(x) / Math.PI;
      expectDigits(studentTLowerTail(x, 1), cauchy, 14, x);
    }
  });

  it("is the normal distribution for infinitely many degrees of freedom", () => {
    const infinite = Number.POSITIVE_INFINITY;
    expect(studentTLowerTail(-1.7, infinite)).toBe(normalLowerTail(-1.7));
    expect(studentTQuantile(0.975, infinite)).toBe(normalQuantile(0.975));
    expectDigits(studentTQuantile(0.975, 1e15), normalQuantile(0.975), 14, "df 1e15");
    expectDigits(studentTDensity(1, 1e15), studentTDensity(1, infinite), 14, "df 1e15");
  });

  it("doubles the outer tail for a two-sided p-value", () => {
    expect(studentTTwoSided(-2.3, 4.5)).toBe(2 * studentTUpperTail(2.3, 4.5));
    expect(studentTTwoSided(0, 3)).toBe(1);
    expect(studentTTwoSided(Number.POSITIVE_INFINITY, 3)).toBe(0);
  });

  it("has a quantile that its lower tail turns back into the probability", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }),
        fc.double({ min: 0.3, max: 1e7, noNaN: true }),
        (p, df) => {
          const x = studentTQuantile(p, df);
          const back = p < 0.5 ? studentTLowerTail(x, df) : studentTUpperTail(x, df);
          expectDigits(back, p < 0.5 ? p : 1 - p, 12, { p, df });
        },
      ),
    );
  });

  it("is symmetric", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 0.5, noNaN: true }),
        fc.double({ min: 0.3, max: 1e7, noNaN: true }),
        (p, df) => {
          const x = studentTQuantile(p, df);
          expect(studentTLowerTail(x, df)).toBe(studentTUpperTail(-x, df));
          expect(studentTDensity(x, df)).toBe(studentTDensity(-x, df));
        },
      ),
    );
  });

  it("refuses what it cannot answer and names the argument", () => {
    expect(() => studentTLowerTail(Number.NaN, 3)).toThrow(NumericalError);
    expect(() => studentTLowerTail(Number.NaN, 3)).toThrow("studentTLowerTail: x is NaN");
    expect(() => studentTUpperTail(1, 0)).toThrow("df is 0; it must be a number above 0");
    expect(() => studentTTwoSided(1, -2)).toThrow("df is -2");
    expect(() => studentTDensity(1, Number.NaN)).toThrow("df is NaN");
    expect(() => studentTQuantile(0, 3)).toThrow("p is 0; it must be strictly between 0 and 1");
    expect(() => studentTQuantile(1, 3)).toThrow("p is 1");
    expect(() => studentTQuantile(0.3, Number.NaN)).toThrow("df is NaN");
    expect(() => studentTQuantile(1e-300, 0.01)).toThrow("outside what a number can hold");
  });
});
