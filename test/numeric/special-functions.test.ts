import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { inverseTrigamma } from "../../src/numeric/inverse-trigamma.ts";
import {
  logMinusDigamma,
  logOnePlusMinus,
  logRatioMinus,
  stirlingRemainder,
  tetragamma,
  trigamma,
} from "../../src/numeric/special-functions.ts";
import { expectDigits, numberAt, specialFunctionReference } from "../support/distributions.ts";
import { evalR } from "../support/webr.ts";

describe("gamma functions against 25-digit values", () => {
  for (const row of specialFunctionReference()) {
    const x = numberAt(row, "x");
    it(`are right to 15 digits at ${x}`, () => {
      expectDigits(logMinusDigamma(x), numberAt(row, "logMinusDigamma"), 15, row);
      expectDigits(trigamma(x), numberAt(row, "trigamma"), 15, row);
    });

    it(`leave of Stirling's formula what is right to 2e-15 at ${x}`, () => {
      const error = stirlingRemainder(x) - numberAt(row, "stirlingRemainder");
      expect(Math.abs(error)).toBeLessThan(2e-15);
    });
  }

  it("refuse arguments that are not above 0", () => {
    for (const f of [logMinusDigamma, trigamma, stirlingRemainder]) {
      expect(() => f(0)).toThrow(NumericalError);
      expect(() => f(-1.5)).toThrow("x is -1.5; it must be a finite number above 0");
      expect(() => f(Number.NaN)).toThrow("x is NaN");
      expect(() => f(Number.POSITIVE_INFINITY)).toThrow("x is Infinity");
    }
  });

  it("say so when the result is beyond a number", () => {
    expect(() => trigamma(1e-160)).toThrow("outside what a number can hold");
  });
});

describe("ln(1 + x) − x", () => {
  it("keeps its digits near 0, where it is −x²/2 + x³/3 − …", () => {
    for (const x of [1e-12, -1e-9, 1e-6, -1e-4]) {
      const series = -(x ** 2) * (1 / 2 - x / 3 + x ** 2 / 4 - x ** 3 / 5);
      expectDigits(logOnePlusMinus(x), series, 14, x);
    }
  });

  it("does not jump where the method changes", () => {
    for (const x of [-0.4, 0.6]) {
      const [inside, outside] = [logOnePlusMinus(x), Math.log1p(x) - x];
      expectDigits(inside, outside, 14, x);
    }
  });

  it("is the logarithm of the ratio where the ratio is nearly 0", () => {
    expectDigits(logRatioMinus(1e-40, -1), Math.log(1e-40) + 1, 15, "1e-40");
    expect(logRatioMinus(1.1, 0.1)).toBe(logOnePlusMinus(0.1));
  });
});

describe("gamma functions against R", () => {
  const x = [1e-3, 0.2, 0.5, 1, 2.5, 7, 9.99, 10, 10.01, 14.9, 15.1, 40, 1e5];

  it("have psigamma's digamma, trigamma and tetragamma on both sides of where the series begins", async () => {
    const truth = await evalR("c(log(x) - digamma(x), trigamma(x), psigamma(x, 2))", { x });
    x.forEach((one, i) => {
      // R's own difference loses digits where x is large.
      if (one < 100) expectDigits(logMinusDigamma(one), truth[i] ?? 0, 11, one);
      expectDigits(trigamma(one), truth[x.length + i] ?? 0, 13, one);
      expectDigits(tetragamma(one), truth[2 * x.length + i] ?? 0, 13, one);
    });
  });

  it("have what lgamma leaves of Stirling's formula", async () => {
    const truth = await evalR("lgamma(x) - (x - 0.5) * log(x) + x - 0.5 * log(2 * pi)", { x });
    x.forEach((one, i) => {
      expect(Math.abs(stirlingRemainder(one) - (truth[i] ?? 0))).toBeLessThan(
        1e-13 * Math.max(1, one),
      );
    });
  });

  it("turn trigamma round, from numbers next to nothing to vast ones", () => {
    for (const one of [1e-17, 3e-9, 0.02, 0.4, 1, 3, 11, 250, 1e6, 1e12])
      expectDigits(inverseTrigamma(trigamma(Math.max(one, 1e-9))), Math.max(one, 1e-9), 12, one);
    expectDigits(inverseTrigamma(1e20), 1e-10, 14, "vast");
    expectDigits(inverseTrigamma(1e-20), 1e20, 14, "tiny");
    expectDigits(inverseTrigamma(0.9e16), 1 / Math.sqrt(0.9e16), 7, "just below");
    expectDigits(inverseTrigamma(1.1e-16), 1 / 1.1e-16, 12, "just above");
  });
});

it("has ln(1 + x) − x beyond where the series is left, on either side", () => {
  for (const x of [-0.9, -0.59, -0.55, -0.41, 0.61, 0.85, 0.89, 3])
    expectDigits(logOnePlusMinus(x), Math.log1p(x) - x, 14, x);
  for (const excess of [-0.7, -0.5, -0.41, 0.41, 0.55, 2])
    expectDigits(logRatioMinus(1 + excess, excess), Math.log(1 + excess) - excess, 14, excess);
});
