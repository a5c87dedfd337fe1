import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../../src/errors/errors.ts";
import {
  betaLowerTail,
  betaQuantile,
  betaUpperTail,
} from "../../../src/numeric/distributions/beta.ts";
import {
  combinations,
  distributionReference,
  expectDigits,
  numberAt,
  probabilities,
} from "../../support/distributions.ts";
import { evalR } from "../../support/webr.ts";

describe("beta against 25-digit values", () => {
  const reference = distributionReference("beta");

  it("has both tails to 13 digits", () => {
    for (const row of reference.tails) {
      const [x, a, b] = [numberAt(row, "x"), numberAt(row, "a"), numberAt(row, "b")];
      expectDigits(betaLowerTail(x, a, b), numberAt(row, "lower"), 13, row);
      expectDigits(betaUpperTail(x, a, b), numberAt(row, "upper"), 13, row);
    }
  });

  it("has quantiles to 12 digits", () => {
    for (const row of reference.quantiles) {
      const quantile = betaQuantile(numberAt(row, "p"), numberAt(row, "a"), numberAt(row, "b"));
      expectDigits(quantile, numberAt(row, "quantile"), 12, row);
    }
  });
});

describe("beta against R", () => {
  it("agrees on quantiles and tails to 11 digits", async () => {
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
      expectDigits(betaQuantile(p, a, b), x, 11, { p, a, b });
      expectDigits(betaLowerTail(x, a, b), lower, 11, { p, a, b });
      expectDigits(betaUpperTail(x, a, b), upper, 11, { p, a, b });
    });
  });
});

describe("beta", () => {
  it("is a power of x when the second shape is 1", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (x, a) => {
          expectDigits(betaLowerTail(x, a, 1), x ** a, 12, { x, a });
          expectDigits(betaUpperTail(x, 1, a), (1 - x) ** a, 12, { x, a });
        },
      ),
    );
  });

  it("has its limits outside (0, 1)", () => {
    expect(betaLowerTail(-0.1, 2, 3)).toBe(0);
    expect(betaUpperTail(-0.1, 2, 3)).toBe(1);
    expect(betaLowerTail(1, 2, 3)).toBe(1);
    expect(betaUpperTail(1.5, 2, 3)).toBe(0);
  });

  it("refuses what it cannot answer and names the argument", () => {
    expect(() => betaLowerTail(Number.NaN, 2, 3)).toThrow(NumericalError);
    expect(() => betaUpperTail(0.5, 0, 3)).toThrow("a is 0");
    expect(() => betaLowerTail(0.5, 2, Number.POSITIVE_INFINITY)).toThrow("b is Infinity");
    expect(() => betaQuantile(1, 2, 3)).toThrow("p is 1");
    expect(() => betaQuantile(0.5, -1, 3)).toThrow("a is -1");
  });
});
