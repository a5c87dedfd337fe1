import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { vangelInterval } from "../../src/statistics/coefficient-of-variation.ts";
import {
  chiSquaredVariationInterval,
  compareScatter,
  logVariance,
  type Scatter,
} from "../../src/statistics/scatter-comparison.ts";

const scatters = (sds: readonly number[], df: number): Scatter[] =>
  sds.map((standardDeviation) => ({ standardDeviation, df }));

describe("logarithm of a variance", () => {
  it("has the mean of the true logarithm whatever the degrees of freedom", () => {
    const random = randomStream(20260211);
    for (const df of [1, 2, 3, 8]) {
      const runs = 40_000;
      let total = 0;
      for (let i = 0; i < runs; i++) {
        total += logVariance({ standardDeviation: Math.sqrt(random.chiSquared(df) / df), df });
      }
      // The spread of ln χ² is √trigamma(df/2), 2.2 at df = 1, so 4 standard errors are 0.045.
      expect(Math.abs(total / runs)).toBeLessThan(0.045);
    }
  });

  it("needs scatter", () => {
    expect(() => logVariance({ standardDeviation: 0, df: 3 })).toThrow(NumericalError);
  });
});

describe("comparison of the scatter of two kinds of samples", () => {
  const a = [0.9, 1.1, 1.4, 1.0];
  const b = [2.1, 1.6, 2.6];

  it("is the ratio of geometric means where all have the same df, with the pooled t", () => {
    const found = compareScatter(scatters(a, 3), scatters(b, 3));
    expect(found?.method).toBe("pooled");
    expect(found?.df).toBe(5);
    const logs = (sds: readonly number[]) => sds.map((sd) => 2 * Math.log(sd));
    const meanOf = (values: readonly number[]) => values.reduce((x, y) => x + y) / values.length;
    const difference = meanOf(logs(a)) - meanOf(logs(b));
    expect(found?.ratio).toBeCloseTo(Math.exp(difference / 2), 12);
  });

  it("takes Welch's t where degrees of freedom differ", () => {
    const found = compareScatter(scatters(a, 3), scatters(b, 5));
    expect(found?.method).toBe("welch");
    expect(found?.df).toBeLessThan(5);
  });

  it("finds a ratio within its interval, and its inverse when the kinds change places", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.2, max: 5, noNaN: true }), { minLength: 2, maxLength: 6 }),
        fc.array(fc.double({ min: 0.2, max: 5, noNaN: true }), { minLength: 2, maxLength: 6 }),
        (x, y) => {
          const there = compareScatter(scatters(x, 2), scatters(y, 4));
          const back = compareScatter(scatters(y, 4), scatters(x, 2));
          if (there === null || back === null) return;
          expect(there.ratio * back.ratio).toBeCloseTo(1, 9);
          expect(there.lower).toBeLessThanOrEqual(there.ratio);
          expect(there.upper).toBeGreaterThanOrEqual(there.ratio);
        },
      ),
    );
  });

  it("does not change with the unit of the deviations", () => {
    const grams = (sds: readonly number[]) => sds.map((sd) => sd * 1000);
    const kg = compareScatter(scatters(a, 3), scatters(b, 4));
    const g = compareScatter(scatters(grams(a), 3), scatters(grams(b), 4));
    expect(g?.ratio).toBeCloseTo(kg?.ratio ?? 0, 12);
    expect(g?.pValue).toBeCloseTo(kg?.pValue ?? 0, 12);
  });

  it("says nothing when the deviations of both kinds agree exactly", () => {
    expect(compareScatter(scatters([1, 1], 3), scatters([2, 2], 3))).toBeNull();
  });

  it("rejects at its level when scatter is equal, with three fills of three catches", () => {
    const random = randomStream(7);
    const draw = () =>
      scatters([0, 0, 0], 2).map(({ df }) => ({
        standardDeviation: Math.sqrt(random.chiSquared(df) / df),
        df,
      }));
    const runs = 4000;
    let rejected = 0;
    for (let i = 0; i < runs; i++) {
      if ((compareScatter(draw(), draw())?.pValue ?? 1) < 0.05) rejected++;
    }
    expect(Math.abs(rejected / runs - 0.05)).toBeLessThan(0.014);
  });
});

describe("intervals of a coefficient of variation", () => {
  it("are the χ² interval of a standard deviation: NIST/SEMATECH e-Handbook 7.2.3.1 formula, df 9", () => {
    // χ² quantiles on 9 df: 19.0228 and 2.70039, printed in the handbook's table 1.3.6.7.4.
    const { lower, upper } = chiSquaredVariationInterval(0.02, 9);
    expect(lower).toBeCloseTo(0.02 * Math.sqrt(9 / 19.0228), 6);
    expect(upper).toBeCloseTo(0.02 * Math.sqrt(9 / 2.70039), 6);
  });

  it("agree with Vangel's for a small cv, and are a little too narrow for a large one", () => {
    for (const n of [3, 6, 20]) {
      const simple = chiSquaredVariationInterval(0.02, n - 1);
      const better = vangelInterval(0.02, n, 0.95);
      expect(Math.abs(simple.lower / better.lower - 1)).toBeLessThan(0.001);
      expect(Math.abs(simple.upper / (better.upper ?? 0) - 1)).toBeLessThan(0.01);
    }
    expect(vangelInterval(0.3, 10, 0.95).upper).toBeGreaterThan(
      chiSquaredVariationInterval(0.3, 9).upper,
    );
  });

  it("refuse a negative cv", () => {
    expect(() => chiSquaredVariationInterval(-0.1, 4)).toThrow(NumericalError);
  });
});
