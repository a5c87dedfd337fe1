import { describe, expect, it } from "vitest";
import { NumericalError } from "../../../src/errors/errors.ts";
import {
  studentTQuantile,
  studentTTwoSided,
} from "../../../src/numeric/distributions/student-t.ts";
import {
  studentizedRangeLowerTail,
  studentizedRangeQuantile,
  studentizedRangeUpperTail,
} from "../../../src/numeric/distributions/studentized-range.ts";
import {
  combinations,
  distributionReference,
  expectDigits,
  numberAt,
  probabilities,
} from "../../support/distributions.ts";
import { evalR } from "../../support/webr.ts";

const infinite = Number.POSITIVE_INFINITY;

describe("the studentized range against 25-digit values", () => {
  const reference = distributionReference("studentized-range");

  it("has both tails to 13 digits, from 2 to 20 means", () => {
    for (const row of reference.tails) {
      const [q, means, df] = [numberAt(row, "x"), numberAt(row, "means"), numberAt(row, "df")];
      expectDigits(studentizedRangeLowerTail(q, means, df), numberAt(row, "lower"), 13, row);
      expectDigits(studentizedRangeUpperTail(q, means, df), numberAt(row, "upper"), 13, row);
    }
  });

  it("has quantiles to 13 digits, from 2 to 20 means", () => {
    for (const row of reference.quantiles) {
      const [p, means, df] = [numberAt(row, "p"), numberAt(row, "means"), numberAt(row, "df")];
      expectDigits(studentizedRangeQuantile(p, means, df), numberAt(row, "quantile"), 13, row);
    }
  });
});

describe("the studentized range against R", () => {
  // R's ptukey is wrong at 2 degrees of freedom, its upper tail is poor below 10, it loses digits with dozens of means or
  // thousands of degrees of freedom, and from 25,000 on it takes the error as known: none of these is used as truth.
  it("agrees on the lower tail to 1e-8 from 10 to 200 degrees of freedom", async () => {
    const rows = combinations([1, 2.5, 3.8, 5.5], [2, 3, 5, 12], [10, 17.4, 200]);
    const column = (place: number) => rows.map((row) => row[place] ?? 0);
    const found = await evalR("ptukey(q, means, df)", {
      q: column(0),
      means: column(1),
      df: column(2),
    });
    rows.forEach(([q = 0, means = 0, df = 0], i) => {
      const lower = studentizedRangeLowerTail(q, means, df);
      expect(Math.abs(lower - (found[i] ?? 0)), JSON.stringify({ q, means, df })).toBeLessThan(
        1e-8,
      );
    });
  });
});

describe("the studentized range against SciPy", () => {
  it("agrees to 12 digits for 40 means", () => {
    // scipy 1.17.1: scipy.stats.studentized_range.cdf(2.5, 40, 10)
    expectDigits(studentizedRangeLowerTail(2.5, 40, 10), 0.012375311494538277, 12, "40 means");
  });
});

describe("the studentized range", () => {
  it("is √2·|t| for two means, over 16 decades of probability", () => {
    for (const [p = 0, df = 1] of combinations(probabilities, [0.6, 1, 2, 3, 9.7, 200, 1e6])) {
      const t = -studentTQuantile(0.5 * (1 - p), df);
      const q = Math.SQRT2 * t;
      const upper = studentTTwoSided(t, df);
      expectDigits(studentizedRangeUpperTail(q, 2, df), upper, 12, { p, df });
      // 1 − p has already rounded the smallest p.
      expectDigits(studentizedRangeQuantile(p, 2, df), q, p < 1e-3 ? 7 : 12, { p, df });
    }
  });

  it("is √2·|z| for two means whose error is known", () => {
    const q = -Math.SQRT2 * studentTQuantile(0.005, infinite);
    expectDigits(studentizedRangeUpperTail(q, 2, infinite), 0.01, 13, q);
    expectDigits(studentizedRangeQuantile(0.99, 2, infinite), q, 13, q);
  });

  it("has near 0 the chance √3·q²/(2π) for three means whose error is known", () => {
    const w = 1e-4;
    const limit = (Math.sqrt(3) * w * w) / (2 * Math.PI);
    expectDigits(studentizedRangeLowerTail(w, 3, infinite), limit, 7, w);
  });

  it("grows with the number of means and shrinks with the degrees of freedom", () => {
    const quantiles = [2, 3, 5, 10, 50].map((means) => studentizedRangeQuantile(0.95, means, 7.5));
    expect(quantiles).toEqual([...quantiles].sort((a, b) => a - b));
    const byDf = [1, 2, 5, 30, 1000, infinite].map((df) => studentizedRangeQuantile(0.95, 4, df));
    expect(byDf).toEqual([...byDf].sort((a, b) => b - a));
  });

  it("has its limits outside the positive numbers and at infinity", () => {
    expect(studentizedRangeLowerTail(-1, 3, 5)).toBe(0);
    expect(studentizedRangeUpperTail(0, 3, 5)).toBe(1);
    expect(studentizedRangeLowerTail(infinite, 3, 5)).toBe(1);
    expect(studentizedRangeUpperTail(infinite, 3, infinite)).toBe(0);
  });

  it("refuses what it cannot answer and names the argument", () => {
    expect(() => studentizedRangeLowerTail(Number.NaN, 3, 5)).toThrow(NumericalError);
    expect(() => studentizedRangeUpperTail(3, 1, 5)).toThrow(
      "means is 1; it must be a whole number of at least 2",
    );
    expect(() => studentizedRangeUpperTail(3, 2.5, 5)).toThrow("means is 2.5");
    expect(() => studentizedRangeUpperTail(3, 3, 0)).toThrow("df is 0");
    expect(() => studentizedRangeQuantile(1, 3, 5)).toThrow("p is 1");
    expect(() => studentizedRangeQuantile(0.5, infinite, 5)).toThrow("means is Infinity");
  });
});
