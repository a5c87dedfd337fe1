import { describe, expect, it } from "vitest";
import { dunnettQuantile, dunnettUpperTail } from "../../src/numeric/distributions/dunnett.ts";
import { studentTQuantile, studentTTwoSided } from "../../src/numeric/distributions/student-t.ts";
import {
  allPairs,
  bonferroniRule,
  dunnettRule,
  pairsWithReference,
  referenceLoadings,
  studentizedRangeRule,
} from "../../src/statistics/simultaneous.ts";
import { evalR } from "../support/webr.ts";

describe("rules for a family", () => {
  it("of Bonferroni share the error rate among two-sided tests, p at most 1", () => {
    const rule = bonferroniRule(4);
    expect(rule.criticalValue(0.9, 7)).toBeCloseTo(studentTQuantile(1 - 0.0125, 7), 12);
    expect(rule.adjustedPValue(-3, 7)).toBeCloseTo(4 * studentTTwoSided(3, 7), 12);
    expect(rule.adjustedPValue(0.5, 7)).toBe(1);
  });

  it("of Tukey and Dunnett do not mind the sign", async () => {
    const [range = 0] = await evalR("qtukey(0.95, 3, 10)");
    const tukey = studentizedRangeRule(3);
    expect(tukey.criticalValue(0.95, 10)).toBeCloseTo(range / Math.SQRT2, 5);
    expect(tukey.adjustedPValue(-range / Math.SQRT2, 10)).toBeCloseTo(0.05, 5);
    const dunnett = dunnettRule([0.6, 0.8]);
    expect(dunnett.criticalValue(0.9, 8)).toBeCloseTo(dunnettQuantile(0.9, [0.6, 0.8], 8), 12);
    expect(dunnett.adjustedPValue(-2, 8)).toBeCloseTo(dunnettUpperTail(2, [0.6, 0.8], 8), 12);
  });
});

describe("pairs", () => {
  it("are each two once, or each with the reference second", () => {
    expect(allPairs(3)).toEqual([
      { first: 0, second: 1 },
      { first: 0, second: 2 },
      { first: 1, second: 2 },
    ]);
    expect(allPairs(1)).toEqual([]);
    expect(pairsWithReference(3, 1)).toEqual([
      { first: 0, second: 1 },
      { first: 2, second: 1 },
    ]);
  });

  it("have the reference's share of their variance, by sizes or by spreads too", () => {
    const samples = [
      { n: 4, mean: 0, variance: 8 },
      { n: 12, mean: 0, variance: 6 },
      { n: 3, mean: 0, variance: 0 },
    ];
    const pairs = [
      { first: 0, second: 1 },
      { first: 2, second: 1 },
      { first: 2, second: 2 },
    ];
    const [byN, , alike] = referenceLoadings(samples, pairs, "common");
    expect(byN).toBeCloseTo(Math.sqrt(1 / 12 / (1 / 12 + 1 / 4)), 12);
    expect(alike).toBeCloseTo(Math.SQRT1_2, 12);
    const [bySpread, whole, none] = referenceLoadings(samples, pairs, "separate");
    expect(bySpread).toBeCloseTo(Math.sqrt(0.5 / 2.5), 12);
    // All of it, but for what keeps the other's share a density.
    expect(whole).toBeLessThan(1);
    expect(whole).toBeGreaterThan(0.99);
    expect(none).toBeCloseTo(Math.SQRT1_2, 12);
  });
});
