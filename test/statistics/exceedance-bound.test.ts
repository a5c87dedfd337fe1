import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { noncentralTUpperTail } from "../../src/numeric/distributions/noncentral-t.ts";
import { normalQuantile } from "../../src/numeric/distributions/normal.ts";
import { shareAboveBound, shareBeyondBound } from "../../src/statistics/exceedance-bound.ts";
import { digits, present, recomputed, reference } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const standard = (n: number, df = n - 1) => ({ mean: 0, standardDeviation: 1, n, df });

describe("upper confidence bound of a share above a limit", () => {
  it("is the tolerance limit read backwards: at the factor for 95 % content the bound is 5 %", () => {
    // Factors of Odeh & Owen (1980), printed to three decimals, and as R computes them to about 1e-9.
    const table = reference("tables/tolerance-one-sided-95-95.json");
    for (const [name, factor] of Object.entries(table.certified)) {
      const n = Number(name.slice(1));
      expect(shareAboveBound(standard(n), Number(factor), 0.95)).toBeCloseTo(0.05, 4);
      expect(shareAboveBound(standard(n), recomputed(table, name), 0.95)).toBeCloseTo(0.05, 9);
    }
    // NIST/SEMATECH e-Handbook 7.2.6.3, silicon wafers: 90 % content with 99 % confidence.
    const wafers = reference("tolerance/handbook-wafers.json");
    const factor = recomputed(wafers, "k1_exact_noncentral_t");
    expect(shareAboveBound(standard(43), factor, 0.99)).toBeCloseTo(0.1, 9);
  });

  it.each([
    [3, 2, 0.4],
    [3, 2, 2.5],
    [5, 4, -1.2],
    [9, 8, 1.1],
    [1, 6, 1.5],
  ])("n = %s, df = %s, K = %s: pt() and uniroot() in R", async (n, df, factor) => {
    const bound = present(
      (
        await evalR(
          `d <- uniroot(function(d) pt(K * sqrt(n), df, d) - 0.95, c(-20, 20), tol = 1e-13)$root
           pnorm(d / sqrt(n), lower.tail = FALSE)`,
          { n, df, K: factor },
        )
      )[0],
    );
    expect(digits(shareAboveBound(standard(n, df), factor, 0.95), bound)).toBeGreaterThan(7);
  });

  it("is the share whose noncentral t leaves so large a factor the chance that the confidence says, wherever it lies", () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        number(-4, 12),
        number(-1, 5),
        fc.integer({ min: 1, max: 400 }),
        number(0.001, 0.9999),
        (factor, logDf, n, confidence) => {
          const df = 10 ** logDf;
          const bound = shareAboveBound(standard(n, df), factor, confidence);
          if (bound < 1e-200 || bound > 1 - 1e-9) return;
          const noncentrality = -normalQuantile(bound) * Math.sqrt(n);
          const chance = noncentralTUpperTail(factor * Math.sqrt(n), df, noncentrality);
          expect(Math.abs(chance / (1 - confidence) - 1)).toBeLessThan(1e-5);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("is a share at the far ends too", () => {
    for (const mean of [-1e9, -300, -30, 30, 300, 1e9])
      for (const n of [1, 3, 300]) {
        const bound = shareAboveBound({ ...standard(n, 5), mean }, 0, 0.95);
        expect(bound).toBeGreaterThanOrEqual(0);
        expect(bound).toBeLessThanOrEqual(1);
        if (mean > 0) expect(bound).toBeGreaterThan(0.999999);
        else expect(bound).toBeLessThan(1e-6);
      }
  });

  it("grows with the mean and with the confidence, and shrinks as the limit grows", () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(number(-3, 3), number(0.1, 3), fc.integer({ min: 2, max: 20 }), (mean, sd, n) => {
        const sample = { mean, standardDeviation: sd, n, df: n - 1 };
        const bound = shareAboveBound(sample, 1, 0.9);
        const noise = 1e-9;
        expect(shareAboveBound({ ...sample, mean: mean + 0.5 }, 1, 0.9)).toBeGreaterThan(
          bound - noise,
        );
        expect(shareAboveBound(sample, 1, 0.95)).toBeGreaterThan(bound - noise);
        expect(shareAboveBound(sample, 1.5, 0.9)).toBeLessThan(bound + noise);
      }),
      { numRuns: 60 },
    );
  });

  it("of both sides is the sum of the sides, the same for a mirrored sample, and at most one", () => {
    const sample = { mean: 0.01, standardDeviation: 0.02, n: 5, df: 4 };
    const mirrored = { ...sample, mean: -0.01 };
    const sum = shareAboveBound(sample, 0.05, 0.95) + shareAboveBound(mirrored, 0.05, 0.95);
    expect(shareBeyondBound(sample, 0.05, 0.9)).toBeCloseTo(sum, 14);
    expect(shareBeyondBound(mirrored, 0.05, 0.9)).toBeCloseTo(sum, 14);
    expect(shareBeyondBound(sample, 0, 0.9)).toBe(1);
  });

  it("refuses what is no sample", () => {
    expect(() => shareAboveBound({ ...standard(3), standardDeviation: 0 }, 1, 0.9)).toThrow(
      NumericalError,
    );
    expect(() => shareAboveBound(standard(0, 3), 1, 0.9)).toThrow(NumericalError);
    expect(() => shareAboveBound(standard(3), 1, 1)).toThrow(NumericalError);
  });
});
