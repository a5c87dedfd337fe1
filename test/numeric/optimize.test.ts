import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { minimize } from "../../src/numeric/optimize.ts";

describe("minimisation in one dimension", () => {
  it("finds the bottom of a smooth valley", () => {
    const { argument, value } = minimize((x) => x - Math.log(x), 0.01, 10);
    expect(argument).toBeCloseTo(1, 7);
    expect(value).toBeCloseTo(1, 14);
  });

  it("finds the bottom of a valley with a kink", () => {
    expect(minimize((x) => Math.abs(x - 0.7), -3, 5).argument).toBeCloseTo(0.7, 7);
  });

  it("returns an end exactly when the function is lowest there", () => {
    expect(minimize((x) => x, 0, 1)).toEqual({ argument: 0, value: 0 });
    expect(minimize((x) => -x * x, 0, 3)).toEqual({ argument: 3, value: -9 });
  });

  it("returns the lower end of a flat function", () => {
    expect(minimize(() => 2, -1, 4)).toEqual({ argument: -1, value: 2 });
  });

  it("finds any parabola's vertex", () => {
    fc.assert(
      fc.property(fc.double({ min: -99, max: 99, noNaN: true }), (vertex) => {
        const { argument } = minimize((x) => (x - vertex) ** 2, -100, 100);
        expect(Math.abs(argument - vertex)).toBeLessThan(1e-5);
      }),
    );
  });

  it("needs few calls on a smooth function", () => {
    let calls = 0;
    minimize(
      (x) => {
        calls++;
        return Math.cosh(x - 1);
      },
      -10,
      10,
    );
    expect(calls).toBeLessThan(40);
  });

  it("refuses an empty interval, ends that are not finite and a function that is no number", () => {
    expect(() => minimize((x) => x, 1, 1)).toThrow(NumericalError);
    expect(() => minimize((x) => x, 1, 1)).toThrow("lower is 1; it must be below upper, 1");
    expect(() => minimize((x) => x, Number.NEGATIVE_INFINITY, 1)).toThrow("lower is -Infinity");
    expect(() => minimize(() => Number.NaN, 0, 1)).toThrow("the function is NaN");
    expect(() => minimize((x) => x * x, -1, 2, { maxIterations: 1 })).toThrow("no convergence");
  });
});
