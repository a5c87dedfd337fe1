import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import {
  finiteResult,
  positiveResult,
  requireFinite,
  requireNotNegative,
  requireNumber,
  requirePositive,
  requirePositiveOrInfinite,
  requireProbability,
  requireWhole,
} from "../../src/numeric/domain.ts";

const infinite = Number.POSITIVE_INFINITY;

/** The values of a mixed bag that a check lets pass; anything else must be refused with a `NumericalError`. */
function passed(check: (value: number) => void): number[] {
  const bag = [
    Number.NaN,
    -infinite,
    -2,
    -0.5,
    0,
    1e-320,
    1e-300,
    0.5,
    1,
    2,
    2.5,
    2 ** 60,
    infinite,
  ];
  return bag.filter((value) => {
    try {
      check(value);
      return true;
    } catch (error) {
      expect(error).toBeInstanceOf(NumericalError);
      expect(String(error)).toContain(`routine: argument is ${value}; it must be`);
      return false;
    }
  });
}

describe("checks of arguments", () => {
  it("let pass exactly what they say", () => {
    expect(passed((x) => requireNumber("routine", "argument", x))).toHaveLength(12);
    expect(passed((x) => requireFinite("routine", "argument", x))).toHaveLength(10);
    expect(passed((x) => requirePositive("routine", "argument", x))).toHaveLength(6);
    expect(passed((x) => requireNotNegative("routine", "argument", x))).toHaveLength(8);
    expect(passed((x) => requirePositiveOrInfinite("routine", "argument", x))).toHaveLength(7);
    expect(passed((x) => requireProbability("routine", "argument", x))).toEqual([
      1e-320, 1e-300, 0.5,
    ]);
    expect(passed((x) => requireWhole("routine", "argument", x, 1))).toEqual([1, 2]);
  });

  it("refuse what is not a number at all", () => {
    const text = "3" as unknown as number;
    expect(() => requireNumber("routine", "argument", text)).toThrow(NumericalError);
    expect(() => requirePositive("routine", "argument", text)).toThrow(NumericalError);
    expect(() => requireProbability("routine", "argument", text)).toThrow(NumericalError);
  });
});

describe("checks of results", () => {
  it("pass a good result on", () => {
    expect(finiteResult("routine", -2)).toBe(-2);
    expect(positiveResult("routine", 2)).toBe(2);
  });

  it("refuse what no number can hold", () => {
    expect(() => finiteResult("routine", infinite)).toThrow("outside what a number can hold");
    expect(() => finiteResult("routine", Number.NaN)).toThrow(NumericalError);
    expect(() => positiveResult("routine", 0)).toThrow("too small for a number to hold");
    expect(() => positiveResult("routine", infinite)).toThrow("outside what a number can hold");
  });
});
