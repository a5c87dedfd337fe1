import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { betaOdds, betaOddsQuantile, incompleteBeta } from "../../src/numeric/incomplete-beta.ts";
import {
  combinations,
  distributionReference,
  expectDigits,
  numberAt,
  probabilities,
} from "../support/distributions.ts";
import { evalR } from "../support/webr.ts";

const lowerTail = (x: number, a: number, b: number) => incompleteBeta(x, 1 - x, a, b, "lower");
const upperTail = (x: number, a: number, b: number) => incompleteBeta(x, 1 - x, a, b, "upper");
const quantile = (p: number, a: number, b: number) => {
  const odds = betaOddsQuantile(p, a, b);
  return odds / (1 + odds);
};

describe("the incomplete beta function", () => {
  it("is 0 or 1 at the ends", () => {
    expect(incompleteBeta(0, 1, 2, 3, "lower")).toBe(0);
    expect(incompleteBeta(0, 1, 2, 3, "upper")).toBe(1);
    expect(incompleteBeta(1, 0, 2, 3, "lower")).toBe(1);
    expect(incompleteBeta(1, 0, 2, 3, "upper")).toBe(0);
  });

  it("is a polynomial for whole shapes: I_x(2, 3) = 6x² − 8x³ + 3x⁴", () => {
    for (const x of [0.01, 0.3, 0.4, 0.7, 0.99]) {
      const polynomial = 6 * x ** 2 - 8 * x ** 3 + 3 * x ** 4;
      expectDigits(incompleteBeta(x, 1 - x, 2, 3, "lower"), polynomial, 14, x);
    }
  });

  it("keeps its digits at x so near to 1 that only y tells them apart", () => {
    // I_x(a, 1/2) near x = 1 is 1 − 2√y/B(a, 1/2); for a = 1 exactly 1 − √y.
    const y = 1e-24;
    expectDigits(incompleteBeta(1, y, 1, 0.5, "upper"), Math.sqrt(y), 14, y);
  });

  it("satisfies its recurrence I_x(a, b) = I_x(a + 1, b) + x^a·y^b/(a·B(a, b)) for whole a", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.double({ min: 0.3, max: 50, noNaN: true }),
        (x, b) => {
          const [y, here] = [1 - x, incompleteBeta(x, 1 - x, 1, b, "lower")];
          // 1/B(1, b) is b.
          const next = incompleteBeta(x, y, 2, b, "lower") + x * y ** b * b;
          expectDigits(next, here, 12, { x, b });
        },
      ),
    );
  });

  it("has both tails of a beta variable to 13 digits and quantiles to 12, against 25-digit values", () => {
    const reference = distributionReference("beta");
    for (const row of reference.tails) {
      const [x, a, b] = [numberAt(row, "x"), numberAt(row, "a"), numberAt(row, "b")];
      expectDigits(lowerTail(x, a, b), numberAt(row, "lower"), 13, row);
      expectDigits(upperTail(x, a, b), numberAt(row, "upper"), 13, row);
    }
    for (const row of reference.quantiles) {
      const found = quantile(numberAt(row, "p"), numberAt(row, "a"), numberAt(row, "b"));
      expectDigits(found, numberAt(row, "quantile"), 12, row);
    }
  });

  it("agrees with R on quantiles and tails to 11 digits", async () => {
    const rows = combinations(probabilities, [1, 2.25, 15], [1, 3.5, 40]);
    const column = (place: number) => rows.map((row) => row[place] ?? 0);
    const found = await evalR(
      "x <- qbeta(p, a, b); c(x, pbeta(x, a, b), pbeta(x, a, b, lower.tail = FALSE))",
      { p: column(0), a: column(1), b: column(2) },
    );
    rows.forEach(([p = 0, a = 0, b = 0], i) => {
      const [x = 0, lower = 0, upper = 0] = [0, 1, 2].map(
        (block) => found[block * rows.length + i] ?? 0,
      );
      expectDigits(quantile(p, a, b), x, 11, { p, a, b });
      expectDigits(lowerTail(x, a, b), lower, 11, { p, a, b });
      expectDigits(upperTail(x, a, b), upper, 11, { p, a, b });
    });
  });

  it("is a power of x when the second shape is 1", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (x, a) => {
          expectDigits(lowerTail(x, a, 1), x ** a, 12, { x, a });
          expectDigits(upperTail(x, 1, a), (1 - x) ** a, 12, { x, a });
        },
      ),
    );
  });

  it("gives odds back from either tail, whatever the start", () => {
    for (const start of [-1000, -2, 0, 5, 1000]) {
      const odds = betaOdds("upper", 1e-5, 1, 3, start);
      // P(X > x) = (1 − x)³ for shapes 1 and 3.
      expectDigits(odds, 1 / 1e-5 ** (1 / 3) - 1, 13, start);
      expectDigits(betaOdds("lower", 1 - 1e-5, 1, 3, start), odds, 9, start);
    }
  });
});
