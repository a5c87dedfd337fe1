import { describe, expect, it } from "vitest";
import { rangeTail } from "../../src/numeric/distributions/normal-range.ts";
import { studentizedRangeUpperTail } from "../../src/numeric/distributions/studentized-range.ts";
import { interpolatedLog } from "../../src/numeric/interpolation.ts";

describe("a function answered from polynomials through its logarithm", () => {
  it("keeps its digits, and is asked no more often than panels have points", () => {
    let asked = 0;
    const through = interpolatedLog((x) => {
      asked++;
      return Math.exp(-x * x) * (2 + Math.sin(x));
    }, 6);
    for (let x = 0.001; x < 6; x += 0.013)
      expect(through(x) / (Math.exp(-x * x) * (2 + Math.sin(x)))).toBeCloseTo(1, 13);
    expect(asked).toBe(6 * 20);
  });

  it("is the function itself at its end and beyond", () => {
    expect(interpolatedLog((x) => x, 2)(7)).toBe(7);
    const asked: number[] = [];
    interpolatedLog((x) => asked.push(x), 2)(2);
    expect(asked).toEqual([2]);
  });
});

describe("the range of many values", () => {
  it("has the tails that plain sums over its lower tail give", () => {
    const tail = rangeTail(20, "upper");
    expect(tail(3) + rangeTail(20, "lower")(3)).toBeCloseTo(1, 13);
    expect(studentizedRangeUpperTail(5.5, 40, 8)).toBeCloseTo(oneByOne(5.5, 40, 8), 12);
  });
});

/** P(range > w·S) summed over S in plain steps, with the tail of the range by the lower one. */
function oneByOne(q: number, means: number, df: number): number {
  const lower = rangeTail(means, "lower");
  const step = 0.002;
  let [total, mass] = [0, 0];
  for (let s = step; s < 6; s += step) {
    const density = s ** (df - 1) * Math.exp((-df * s * s) / 2);
    mass += density;
    total += density * (1 - lower(q * s));
  }
  return total / mass;
}
