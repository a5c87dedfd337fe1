import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { generalizedEsd, grubbsTest } from "../../src/statistics/outlier-tests.ts";
import rosner from "../reference/outlier/rosner-vitamin-e.json" with { type: "json" };
import { column, present, printedTolerance, recomputed, reference } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

/** Any values will do where only the critical value matters. */
function someValues(n: number): number[] {
  return Array.from({ length: n }, (_, i) => Math.sin(7 * i + 1));
}

describe("Grubbs' test", () => {
  test("agrees with the e-Handbook's mass spectrometer example", () => {
    const set = reference("outlier/grubbs-mass-spectrometer.json");
    const found = present(grubbsTest(column(set, "y"), "largest", 0.95));
    expect(found.index).toBe(7);
    expect(found.statistic).toBeCloseTo(recomputed(set, "G"), 12);
    expect(found.criticalValue).toBeCloseTo(recomputed(set, "critical_one_sided"), 12);
    expect(Math.abs(found.statistic - Number(set.certified.G))).toBeLessThan(1e-4);
    expect(Math.abs(found.criticalValue - Number(set.certified.critical_one_sided))).toBeLessThan(
      printedTolerance(present(set.certified.critical_one_sided)),
    );
    expect(found.outlying).toBe(true);
    const twoSided = present(grubbsTest(column(set, "y"), "two-sided", 0.95));
    expect(twoSided.criticalValue).toBeCloseTo(recomputed(set, "critical_two_sided"), 12);
  });

  test.each([
    ["tables/grubbs-05.json", "largest"],
    ["tables/grubbs-025.json", "two-sided"],
  ] as const)("has the critical values of the published table %s", (file, side) => {
    const set = reference(file);
    for (const n of column(set, "n")) {
      const { criticalValue } = present(grubbsTest(someValues(n), side, 0.95));
      expect(criticalValue).toBeCloseTo(recomputed(set, `n${n}`), 10);
      // The printed tables were computed with less accurate quantiles; their notes ask for 0.001.
      expect(Math.abs(criticalValue - Number(set.certified[`n${n}`]))).toBeLessThan(0.001);
    }
  });

  test("has the p value that R's t distribution gives, on all three sides", async () => {
    const values = [6.02, 5.91, 6.1, 5.97, 6.43, 6.05];
    const [statistic = 0, twoSided = 0, largest = 0, smallest = 0] = await evalR(
      `n <- length(x); t <- function(G) sqrt(n * (n - 2) * G^2 / ((n - 1)^2 - n * G^2))
       G <- (max(x) - mean(x)) / sd(x); g <- (mean(x) - min(x)) / sd(x)
       up <- function(G) pt(t(G), n - 2, lower.tail = FALSE)
       c(G, 2 * n * up(G), n * up(G), min(1, n * up(g)))`,
      { x: values },
    );
    expect(present(grubbsTest(values, "two-sided", 0.95)).statistic).toBeCloseTo(statistic, 12);
    expect(present(grubbsTest(values, "two-sided", 0.95)).pValue).toBeCloseTo(twoSided, 12);
    expect(present(grubbsTest(values, "largest", 0.95)).pValue).toBeCloseTo(largest, 12);
    expect(present(grubbsTest(values, "smallest", 0.95))).toMatchObject({ index: 1 });
    expect(present(grubbsTest(values, "smallest", 0.95)).pValue).toBeCloseTo(smallest, 12);
  });

  test("exceeds its critical value exactly when p is below the error rate", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 3, maxLength: 12 }),
        (values) => {
          const found = grubbsTest(values, "two-sided", 0.95);
          if (found === null || Math.abs(found.pValue - 0.05) < 1e-9) return;
          expect(found.outlying).toBe(found.pValue < 0.05);
        },
      ),
    );
  });

  test("does not mind the unit, the origin or the order", () => {
    const values = [6.02, 5.91, 6.1, 5.97, 6.43, 6.05];
    const found = present(grubbsTest(values, "two-sided", 0.95));
    const changed = values.map((value) => 2.2046 * value + 100).reverse();
    const again = present(grubbsTest(changed, "two-sided", 0.95));
    expect(again.statistic).toBeCloseTo(found.statistic, 9);
    expect(again.index).toBe(values.length - 1 - found.index);
  });

  test("gives the largest distance there can be p = 0 and no infinite number", () => {
    const found = present(grubbsTest([6, 6, 6, 6, 7], "two-sided", 0.95));
    expect(found.statistic).toBeCloseTo(4 / Math.sqrt(5), 12);
    expect(found.pValue).toBeLessThan(1e-6);
    expect(Object.values(found).every((value) => value !== Number.POSITIVE_INFINITY)).toBe(true);
  });

  test("has nothing to say of equal values, and refuses too few or unusable ones", () => {
    expect(grubbsTest([0.1, 0.1, 0.1], "two-sided", 0.95)).toBeNull();
    expect(() => grubbsTest([1, 2], "two-sided", 0.95)).toThrow(NumericalError);
    expect(() => grubbsTest([1, 2, Number.NaN], "two-sided", 0.95)).toThrow("values[2]");
  });
});

describe("generalized ESD", () => {
  test("agrees with Rosner's example: three outliers, though the first two steps do not exceed", () => {
    const { data, certified } = rosner;
    const found = generalizedEsd(data.y, data.most, 0.95);
    for (const [i, step] of found.steps.entries()) {
      // Several printed values are truncated: one unit of the last digit.
      expect(Math.abs(step.statistic - Number(certified.R[i]))).toBeLessThan(1e-3);
      expect(Math.abs(step.criticalValue - Number(certified.lambda[i]))).toBeLessThan(1e-3);
    }
    expect(found.steps.slice(0, 2).every((step) => step.statistic < step.criticalValue)).toBe(true);
    expect(found.outliers.map((index) => data.y[index])).toEqual([6.01, 5.42, 5.34]);
    expect(found.outliers).toHaveLength(certified.outliers);
  });

  test("has Rosner's critical values", () => {
    const set = reference("tables/generalized-esd-lambda-05.json");
    for (const n of column(set, "n")) {
      const { steps } = generalizedEsd(someValues(n), 10, 0.95);
      for (const [i, step] of steps.entries()) {
        const printed = set.certified[`n${n}_i${i + 1}`];
        expect(step.criticalValue).toBeCloseTo(recomputed(set, `n${n}_i${i + 1}`), 9);
        if (printed !== undefined)
          expect(Math.abs(step.criticalValue - Number(printed))).toBeLessThan(0.0051);
      }
    }
  });

  test("is R's recomputation, step by step", async () => {
    const values = [6.02, 5.91, 6.1, 5.97, 6.43, 6.05, 6.44, 5.99];
    const statistics = await evalR(
      `R <- c(); for (i in 1:3) { d <- abs(x - mean(x)) / sd(x); R <- c(R, max(d)); x <- x[-which.max(d)] }; R`,
      { x: values },
    );
    const found = generalizedEsd(values, 3, 0.95);
    for (const [i, step] of found.steps.entries())
      expect(step.statistic).toBeCloseTo(statistics[i] ?? 0, 12);
  });

  test("stops where the values left are equal, and refuses what it cannot use", () => {
    expect(generalizedEsd([6, 6, 6, 6, 7], 3, 0.95).steps).toHaveLength(1);
    expect(() => generalizedEsd([1, 2, 3], 2, 0.95)).toThrow(NumericalError);
    expect(() => generalizedEsd([1, 2, 3, 4], 0, 0.95)).toThrow("most is 0");
  });
});
