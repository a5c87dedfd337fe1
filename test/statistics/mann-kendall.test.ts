import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { normalUpperTail } from "../../src/numeric/distributions/normal.ts";
import { mannKendall } from "../../src/statistics/mann-kendall.ts";
import { column, present, printedTolerance, recomputed, reference } from "../support/reference.ts";

describe("mannKendall", () => {
  // EPA QA/G-9, Box 4-7 (from memory, agrees with R): five measurements, S = 6, one-sided p 0.117.
  it("reaches the published score and probability for five measurements", () => {
    const set = reference("trend/mann-kendall-epa.json");
    const test = mannKendall(column(set, "y"));
    const printed = present(set.certified.p_one_sided);
    expect(test.score).toBe(Number(set.certified.S));
    expect(Math.abs(test.pValue / 2 - Number(printed))).toBeLessThanOrEqual(
      printedTolerance(printed),
    );
    expect(test.pValue / 2).toBeCloseTo(recomputed(set, "p_one_sided"), 14);
    expect(test.tau).toBeCloseTo(recomputed(set, "tau"), 14);
    expect(test.method).toBe("exact");
  });

  // Helsel and Hirsch 2002, chapter 10 (from memory, agrees with R).
  it("reaches the published score for a line with one wild point", () => {
    const set = reference("trend/theil-sen-usgs.json");
    const test = mannKendall(column(set, "y"));
    expect(test.score).toBe(Number(set.certified.S));
    expect(test.tau).toBeCloseTo(recomputed(set, "tau"), 14);
    expect(test.pValue).toBeCloseTo(recomputed(set, "p_two_sided"), 14);
  });

  it("counts every order of five values as brute force does", () => {
    const orders = permutations([1, 2, 3, 4, 5]);
    const scores = orders.map((order) => mannKendall(order).score);
    for (const order of orders.slice(0, 40)) {
      const { score, pValue } = mannKendall(order);
      const asFar = scores.filter((other) => Math.abs(other) >= Math.abs(score)).length;
      expect(pValue).toBeCloseTo(asFar / orders.length, 14);
    }
  });

  it("cannot reject at 5 % with four values", () => {
    expect(mannKendall([1, 2, 3, 4]).pValue).toBeCloseTo(2 / 24, 14);
  });

  it("counts up to 49 values, where counting and the normal approximation have come together", () => {
    const values = Array.from({ length: 49 }, (_, i) => ((20 * i) % 49) + 0.3 * i);
    const counted = mannKendall(values);
    const variance = (49 * 48 * (2 * 49 + 5)) / 18;
    const approximation = normalTwoSided((Math.abs(counted.score) - 1) / Math.sqrt(variance));
    expect(counted.method).toBe("exact");
    expect(counted.pValue / approximation).toBeGreaterThan(0.95);
    expect(counted.pValue / approximation).toBeLessThan(1.05);
    expect(mannKendall([...values, 80]).method).toBe("normal");
  });

  it("says nothing when all values agree", () => {
    expect(mannKendall([2, 2, 2, 2])).toEqual({ score: 0, tau: null, pValue: 1, method: "normal" });
  });

  it("keeps p within 0 and 1 and turns the score when time runs backwards", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 3, maxLength: 60 }),
        (values) => {
          const test = mannKendall(values);
          expect(test.pValue).toBeGreaterThan(0);
          expect(test.pValue).toBeLessThanOrEqual(1);
          expect(mannKendall(values.toReversed()).score + test.score).toBe(0);
        },
      ),
    );
  });

  it("refuses too few values and values that are not numbers", () => {
    expect(() => mannKendall([1, 2])).toThrow(NumericalError);
    expect(() => mannKendall([1, 2, Number.POSITIVE_INFINITY])).toThrow(NumericalError);
  });
});

function permutations(items: readonly number[]): number[][] {
  if (items.length <= 1) return [[...items]];
  return items.flatMap((item) =>
    permutations(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
  );
}

function normalTwoSided(z: number): number {
  return 2 * normalUpperTail(z);
}

it("counts three values exactly, the fewest, and takes the normal law for any tie", () => {
  // Of six orders one has all three pairs rising and one all falling.
  expect(mannKendall([1, 2, 3])).toEqual({ score: 3, tau: 1, pValue: 2 / 6, method: "exact" });
  // Two pairs rise, one is tied: variance (3·2·11 − 2·1·9)/18 = 8/3, one step of continuity.
  const tied = mannKendall([1, 2, 2]);
  expect(tied).toMatchObject({ score: 2, method: "normal" });
  expect(tied.tau).toBeCloseTo(2 / Math.sqrt(3 * 2), 12);
  // 2·(1 − Φ(√0.375)): Φ(0.612372) is 0.729861.
  expect(tied.pValue).toBeCloseTo(2 * (1 - 0.729861), 4);
});
