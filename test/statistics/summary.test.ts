import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import {
  mean,
  median,
  sampleStandardDeviation,
  squaresWithin,
  weightedMean,
} from "../../src/statistics/summary.ts";
import { expectDigits } from "../support/distributions.ts";
import { bestReachable, certified, certifiedSet } from "../support/strd.ts";
import { evalR } from "../support/webr.ts";

describe("mean and standard deviation of the NIST reference data sets", () => {
  // Digits of the mean certified; numacc data reach 15 only as far as doubles hold them.
  it.each(["pidigits", "lottery", "mavro", "numacc1", "numacc2", "numacc3"])(
    "are right for %s to what doubles can hold",
    (name) => {
      const set = certifiedSet(`univariate-${name}`);
      expectDigits(mean(set.data.y), certified(set, "mean"), 14.9, name);
      const reachable = bestReachable(`univariate-${name}`, "sd");
      expectDigits(sampleStandardDeviation(set.data.y), reachable, 14, name);
      // The certified value itself is for the decimal data; Mavro and NumAcc3 lose digits when stored as doubles.
      const digitsHeld = { mavro: 13, numacc2: 14, numacc3: 9.4 }[name] ?? 14.5;
      expectDigits(sampleStandardDeviation(set.data.y), certified(set, "sd"), digitsHeld, name);
    },
  );
});

describe("summaries", () => {
  it("give R's mean, standard deviation and median", async () => {
    const values = [3.1, -4, 0.25, 17, 17, 2.2, 9.75];
    const [average = 0, sd = 0, middle = 0] = await evalR("c(mean(x), sd(x), median(x))", {
      x: values,
    });
    expectDigits(mean(values), average, 15, "mean");
    expectDigits(sampleStandardDeviation(values), sd, 15, "sd");
    expect(median(values)).toBe(middle);
  });

  it("keep 0 scatter 0, however many values there are and however odd they are", () => {
    expect(sampleStandardDeviation([7, 7])).toBe(0);
    expect(sampleStandardDeviation(Array.from({ length: 30 }, () => 0.1))).toBe(0);
  });

  it("move with a constant added and do not scatter more for it", () => {
    const values = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 30 });
    fc.assert(
      fc.property(values, (whole) => {
        const moved = whole.map((value) => value + 1e9);
        expect(mean(moved)).toBeCloseTo(mean(whole) + 1e9, 5);
        expect(sampleStandardDeviation(moved)).toBeCloseTo(sampleStandardDeviation(whole), 6);
        expect(median(moved)).toBe(median(whole) + 1e9);
      }),
    );
  });

  it("leave the values they are given alone", () => {
    const values = Object.freeze([5, 1, 4]);
    expect(median(values)).toBe(4);
    expect(values).toEqual([5, 1, 4]);
  });

  it("refuse an empty list, the scatter of one value and values that are not finite", () => {
    expect(() => mean([])).toThrow(NumericalError);
    expect(() => mean([])).toThrow("mean: 0 values; at least 1 is needed");
    expect(() => median([])).toThrow("median: 0 values");
    expect(() => sampleStandardDeviation([3])).toThrow(
      "sampleStandardDeviation: 1 values; at least 2 are needed",
    );
    expect(() => mean([1, Number.NaN])).toThrow("value 2 is NaN");
    expect(() => median([Number.POSITIVE_INFINITY])).toThrow("value 1 is Infinity");
    expect(() => mean([1e308, 1e308])).toThrow("outside what a number can hold");
  });
});

describe("the weighted mean", () => {
  it("is the mean of values each as often as its weight", () => {
    expect(weightedMean([1, 4, 7], [3, 1, 2])).toBe((3 * 1 + 4 + 2 * 7) / 6);
    expect(weightedMean([0.1, 0.7, 0.4], [2, 2, 2])).toBeCloseTo(mean([0.1, 0.7, 0.4]), 15);
  });

  it("loses nothing to a large part that all values share", () => {
    expect(weightedMean([1e15 + 1, 1e15 + 3], [1, 3])).toBe(1e15 + 2.5);
  });

  it("refuses no values, a missing weight and sums that are not finite", () => {
    expect(() => weightedMean([], [])).toThrow(NumericalError);
    expect(() => weightedMean([1, 2], [1])).toThrow("no value at place 1 of 1");
    expect(() => weightedMean([1, Number.NaN], [1, 1])).toThrow(NumericalError);
  });
});

it("finds squares about the mean with one degree of freedom less than values", () => {
  expect(squaresWithin([2, 4, 4, 4, 5, 5, 7, 9])).toEqual({ center: 5, squares: 32, df: 7 });
  expect(squaresWithin([3])).toEqual({ center: 3, squares: 0, df: 0 });
});
