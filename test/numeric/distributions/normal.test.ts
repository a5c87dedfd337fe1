import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../../src/errors/errors.ts";
import {
  normalDensity,
  normalLowerTail,
  normalQuantile,
  normalUpperTail,
} from "../../../src/numeric/distributions/normal.ts";
import {
  distributionReference,
  expectDigits,
  numberAt,
  probabilities,
} from "../../support/distributions.ts";
import { evalR } from "../../support/webr.ts";

describe("the normal distribution against 25-digit values", () => {
  const reference = distributionReference("normal");

  it("has both tails to 14 digits", () => {
    for (const row of reference.tails) {
      const x = numberAt(row, "x");
      expectDigits(normalLowerTail(x), numberAt(row, "lower"), 14, row);
      expectDigits(normalUpperTail(x), numberAt(row, "upper"), 14, row);
    }
  });

  it("has quantiles to 15 digits", () => {
    for (const row of reference.quantiles) {
      expectDigits(normalQuantile(numberAt(row, "p")), numberAt(row, "quantile"), 15, row);
    }
  });
});

describe("the normal distribution against R", () => {
  it("agrees on quantiles, tails and density to 13 digits", async () => {
    const found = await evalR("x <- qnorm(p); c(x, pnorm(x), pnorm(-x), dnorm(x))", {
      p: probabilities,
    });
    probabilities.forEach((p, i) => {
      const [x = 0, lower = 0, upper = 0, density = 0] = [0, 1, 2, 3].map(
        (block) => found[block * probabilities.length + i] ?? 0,
      );
      expectDigits(normalQuantile(p), x, 13, p);
      expectDigits(normalLowerTail(x), lower, 13, p);
      expectDigits(normalUpperTail(x), upper, 13, p);
      expectDigits(normalDensity(x), density, 13, p);
    });
  });

  it("agrees far out, where the tail is 1e-300", async () => {
    const [truth = 0] = await evalR("pnorm(-37)");
    expectDigits(normalUpperTail(37), truth, 12, 37);
  });
});

describe("the normal distribution", () => {
  it("has tails that add up to 1", () => {
    fc.assert(
      fc.property(fc.double({ min: -40, max: 40, noNaN: true }), (x) => {
        expect(normalLowerTail(x) + normalUpperTail(x)).toBeCloseTo(1, 15);
      }),
    );
  });

  it("has its limits at infinity", () => {
    expect(normalLowerTail(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(normalUpperTail(Number.NEGATIVE_INFINITY)).toBe(1);
    expect(normalDensity(Number.POSITIVE_INFINITY)).toBe(0);
  });

  it("refuses what it cannot answer and names the argument", () => {
    expect(() => normalLowerTail(Number.NaN)).toThrow(NumericalError);
    expect(() => normalUpperTail(Number.NaN)).toThrow("normalUpperTail: x is NaN");
    expect(() => normalDensity(Number.NaN)).toThrow("x is NaN");
    expect(() => normalQuantile(0)).toThrow("p is 0; it must be strictly between 0 and 1");
    expect(() => normalQuantile(1)).toThrow("p is 1");
    expect(() => normalQuantile(Number.NaN)).toThrow("p is NaN");
  });
});
