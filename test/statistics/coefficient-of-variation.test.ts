import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { chiSquaredQuantile } from "../../src/numeric/distributions/chi-squared.ts";
import {
  noncentralTLowerTail,
  noncentralTUpperTail,
} from "../../src/numeric/distributions/noncentral-t.ts";
import { randomStream } from "../../src/numeric/random.ts";
import {
  coefficientOfVariation,
  vangelInterval,
} from "../../src/statistics/coefficient-of-variation.ts";
import reference from "../reference/variation/vangel-forum.json" with { type: "json" };
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

describe("coefficientOfVariation", () => {
  it("prints the interval that a published run of Vangel's method prints", () => {
    const { value, lower, upper } = coefficientOfVariation(reference.data.x, 0.95);
    expect(value.toFixed(8)).toBe(reference.certified.cv);
    expect(present(lower).toFixed(8)).toBe(reference.certified.vangel_lower);
    expect(present(upper).toFixed(8)).toBe(reference.certified.vangel_upper);
  });

  it("covers the truth as often as it says, for outlets that differ by 8 %", () => {
    const stream = randomStream(11);
    const runs = 4000;
    let held = 0;
    for (let run = 0; run < runs; run++) {
      const values = Array.from({ length: 8 }, () => 1 + 0.08 * stream.normal());
      const { lower, upper } = coefficientOfVariation(values, 0.95);
      if (present(lower) <= 0.08 && 0.08 <= present(upper)) held++;
    }
    // Three standard errors of a coverage of .95 in 4000 runs.
    expect(Math.abs(held / runs - 0.95)).toBeLessThan(0.0104);
  });

  it("gives no interval when values agree exactly: no difference seen is not none", () => {
    const same = { value: 0, lower: null, upper: null, n: 3, df: 2, level: 0.9 };
    expect(coefficientOfVariation([2, 2, 2], 0.9)).toEqual(same);
    expect(coefficientOfVariation([0.1 + 0.2, 0.3, 0.3], 0.9)).toEqual(same);
    expect(coefficientOfVariation([2, 2, 2 + 1e-9], 0.9)).toMatchObject({ n: 3, df: 2 });
    expect(coefficientOfVariation([2, 2, 2 + 1e-9], 0.9).lower).toBeGreaterThan(0);
  });

  it("refuses one value, and a mean that is not above zero", () => {
    expect(() => coefficientOfVariation([2], 0.95)).toThrow(NumericalError);
    expect(() => coefficientOfVariation([-1, 1], 0.95)).toThrow("above zero");
  });
});

describe("vangelInterval", () => {
  // Exact for normal values: √n/K is noncentral t with noncentrality √n/κ.
  it("differs from the exact interval by less than 0.5 % up to a coefficient of 15 %", () => {
    for (const n of [4, 8, 24])
      for (const ratio of [0.02, 0.05, 0.15]) {
        const { lower, upper } = vangelInterval(ratio, n, 0.95);
        const statistic = Math.sqrt(n) / ratio;
        const missed = (kappa: number, tail: typeof noncentralTLowerTail) =>
          tail(statistic, n - 1, Math.sqrt(n) / kappa);
        // At each exact limit the tail is .025, so .025 must lie between the tails just beside ours.
        const inside = 1.005;
        expect(missed(lower / inside, noncentralTLowerTail)).toBeLessThan(0.025);
        expect(missed(lower * inside, noncentralTLowerTail)).toBeGreaterThan(0.025);
        expect(missed(present(upper) / inside, noncentralTUpperTail)).toBeGreaterThan(0.025);
        expect(missed(present(upper) * inside, noncentralTUpperTail)).toBeLessThan(0.025);
      }
  });

  it("is near the exact interval that R's noncentral t gives for 20 % in 12 values", async () => {
    // Below a noncentrality of 37.6, R's limit.
    const [lower = 0, upper = 0] = await evalR(
      `t <- sqrt(12) / 0.2
       limit <- function(p) sqrt(12) / uniroot(function(d) pt(t, 11, d) - p, c(1, 36), tol = 1e-12)$root
       c(limit(0.025), limit(0.975))`,
    );
    const found = vangelInterval(0.2, 12, 0.95);
    expect(found.lower / Math.min(lower, upper)).toBeCloseTo(1, 2);
    expect(present(found.upper) / Math.max(lower, upper)).toBeCloseTo(1, 2);
  });

  it("becomes the χ² interval of a standard deviation when the values hardly differ", () => {
    const { lower, upper } = vangelInterval(1e-4, 6, 0.95);
    expect(lower).toBeCloseTo(1e-4 * Math.sqrt(5 / chiSquaredQuantile(0.975, 5)), 11);
    expect(upper).toBeCloseTo(1e-4 * Math.sqrt(5 / chiSquaredQuantile(0.025, 5)), 11);
  });

  it("has no upper limit for few values that differ as much as their mean", () => {
    expect(vangelInterval(1, 4, 0.95).upper).toBeNull();
  });

  it("holds the estimate and widens with the level", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
        fc.integer({ min: 3, max: 40 }),
        (ratio, n) => {
          const narrow = vangelInterval(ratio, n, 0.9);
          const wide = vangelInterval(ratio, n, 0.99);
          expect(narrow.lower).toBeLessThan(ratio);
          expect(narrow.upper ?? ratio + 1).toBeGreaterThan(ratio);
          expect(wide.lower).toBeLessThan(narrow.lower);
          if (wide.upper !== null) expect(wide.upper).toBeGreaterThan(present(narrow.upper));
        },
      ),
    );
  });
});
