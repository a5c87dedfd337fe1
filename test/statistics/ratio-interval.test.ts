import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { fiellerSet, type RatioParts } from "../../src/statistics/ratio-interval.ts";

const parts = (change: Partial<RatioParts> = {}): RatioParts => ({
  numerator: 2,
  denominator: 1,
  numeratorVariance: 0.01,
  denominatorVariance: 0.01,
  ...change,
});

describe("the three shapes of a set of ratios", () => {
  it("is an interval when the denominator is clear of zero", () => {
    expect(fiellerSet(parts(), 2)).toMatchObject({ shape: "interval" });
  });

  it("is all but an interval when only the numerator is clear of zero", () => {
    const set = fiellerSet(parts({ denominatorVariance: 1 }), 2);
    if (set.shape !== "two half-lines") throw new Error(`It is a ${set.shape}.`);
    expect(set.below).toBeLessThan(0);
    expect(set.above).toBeGreaterThan(0);
    // The estimate is among the ratios that stay possible.
    expect(2).toBeGreaterThanOrEqual(set.above);
  });

  it("is every ratio when neither is clear of zero", () => {
    const vague = parts({ numeratorVariance: 9, denominatorVariance: 9 });
    expect(fiellerSet(vague, 2)).toEqual({ shape: "whole line" });
  });
});

describe("properties", () => {
  const positive = fc.double({ min: 0.01, max: 10, noNaN: true });

  it("holds exactly the ratios that a direct test does not reject", () => {
    fc.assert(
      fc.property(positive, positive, positive, positive, (a, b, va, vb) => {
        const all = {
          numerator: a,
          denominator: b,
          numeratorVariance: va,
          denominatorVariance: vb,
        };
        const set = fiellerSet(all, 2);
        for (const theta of [-20, -3, -0.5, 0, 0.2, a / b, 1, 4, 50]) {
          const excess = (a - theta * b) ** 2 - 4 * (va + theta ** 2 * vb);
          if (Math.abs(excess) < 1e-9) continue;
          const inside =
            set.shape === "whole line" ||
            (set.shape === "interval"
              ? theta >= set.lower && theta <= set.upper
              : theta <= set.below || theta >= set.above);
          expect(inside).toBe(excess < 0);
        }
      }),
    );
  });

  it("turns upside down when numerator and denominator change places", () => {
    const there = fiellerSet(parts(), 2);
    const back = fiellerSet(parts({ numerator: 1, denominator: 2 }), 2);
    if (there.shape !== "interval" || back.shape !== "interval") throw new Error("No intervals.");
    expect(back.lower).toBeCloseTo(1 / there.upper, 12);
    expect(back.upper).toBeCloseTo(1 / there.lower, 12);
  });

  it("narrows when the two estimates err together", () => {
    const width = (covariance: number) => {
      const set = fiellerSet(parts({ covariance }), 2);
      return set.shape === "interval" ? set.upper - set.lower : Number.NaN;
    };
    expect(width(0.004)).toBeLessThan(width(0));
  });
});

it("refuses a denominator that is exactly zero", () => {
  expect(() => fiellerSet(parts({ denominator: 0, denominatorVariance: 0 }), 2)).toThrow(
    NumericalError,
  );
});

describe("at the edges of the shapes", () => {
  const parts = { numerator: 3, denominator: 2, numeratorVariance: 1, denominatorVariance: 1 };

  it("is every ratio where the denominator is just at its critical value", () => {
    expect(fiellerSet(parts, 2)).toEqual({ shape: "whole line" });
    expect(fiellerSet(parts, 1.999).shape).toBe("interval");
    expect(fiellerSet(parts, 2.001).shape).toBe("two half-lines");
  });

  it("has ends in order whatever the signs, as the quadratic has its roots", () => {
    for (const numerator of [-3, 0, 3])
      for (const denominator of [-5, 5]) {
        const set = fiellerSet({ ...parts, numerator, denominator }, 2);
        if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
        const root = Math.sqrt((numerator * denominator) ** 2 - 21 * (numerator ** 2 - 4));
        expect(set.lower).toBeCloseTo((numerator * denominator - root) / 21, 12);
        expect(set.upper).toBeCloseTo((numerator * denominator + root) / 21, 12);
      }
  });

  it("is one ratio where both are exact, and independent unless a covariance is named", () => {
    const exact = { ...parts, numeratorVariance: 0, denominatorVariance: 0 };
    expect(fiellerSet(exact, 2)).toEqual({ shape: "interval", lower: 1.5, upper: 1.5 });
    const zero = fiellerSet({ ...exact, numerator: 0 }, 2);
    expect(zero).toEqual({ shape: "interval", lower: 0, upper: 0 });
    expect(fiellerSet({ ...parts, covariance: 0 }, 1)).toEqual(fiellerSet(parts, 1));
    expect(fiellerSet({ ...parts, covariance: 0.5 }, 1)).not.toEqual(fiellerSet(parts, 1));
  });
});
