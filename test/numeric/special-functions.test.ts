import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import {
  logMinusDigamma,
  logOnePlusMinus,
  logRatioMinus,
  stirlingRemainder,
  trigamma,
} from "../../src/numeric/special-functions.ts";
import { expectDigits, numberAt, specialFunctionReference } from "../support/distributions.ts";

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
