import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { bracketRoot, findRoot } from "../../src/numeric/roots.ts";

/** Counts the calls of a function. */
function counted(f: (x: number) => number) {
  const counter = { calls: 0, f: (x: number) => f(x) };
  counter.f = (x) => {
    counter.calls++;
    return f(x);
  };
  return counter;
}

describe("root finding", () => {
  it("finds roots to the last bit or two", () => {
    expect(findRoot((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(findRoot(Math.cos, 0, 3)).toBeCloseTo(Math.PI / 2, 15);
    expect(findRoot((x) => Math.exp(x) - 1e-200, -1000, 0)).toBeCloseTo(-200 * Math.LN10, 11);
  });

  it("takes the ends in either order and an end that is the root", () => {
    expect(findRoot((x) => x - 1, 3, -3)).toBe(1);
    expect(findRoot((x) => x - 1, 1, 3)).toBe(1);
    expect(findRoot((x) => x - 1, -3, 1)).toBe(1);
    expect(findRoot((x) => 1 - x, 1, 3)).toBe(1);
    expect(findRoot((x) => 1 - x, -3, 1)).toBe(1);
  });

  it("stops at a root at 0, where no relative precision is reached", () => {
    expect(Math.abs(findRoot((x) => x + x ** 3, -2e3, 3e3))).toBeLessThan(1e-25);
  });

  it("needs far fewer calls than bisection, whose 52 it also stays below on hard functions", () => {
    const smooth = counted((x) => x ** 3 - 2 * x - 5);
    findRoot(smooth.f, 2, 3);
    expect(smooth.calls).toBeLessThan(12);
    const flat = counted((x) => (x - 0.3) ** 9);
    findRoot(flat.f, 0, 1, { tolerance: 1e-6 });
    expect(flat.calls).toBeLessThan(52);
  });

  it("stops at the tolerance asked for", () => {
    const rough = counted((x) => Math.exp(x) - 5);
    expect(Math.abs(findRoot(rough.f, 0, 10, { tolerance: 1e-3 }) - Math.log(5))).toBeLessThan(
      1e-3,
    );
    const fine = counted((x) => Math.exp(x) - 5);
    findRoot(fine.f, 0, 10);
    expect(rough.calls).toBeLessThan(fine.calls);
  });

  it("finds any root of a monotone cubic", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        (root, stretch) => {
          const found = findRoot((x) => stretch * (x - root) + (x - root) ** 3, -2e3, 3e3);
          expect(Math.abs(found - root)).toBeLessThan(1e-12 * Math.max(1, Math.abs(root)));
        },
      ),
    );
  });

  it("refuses ends of one sign, ends that are not finite and a function that is no number", () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow(NumericalError);
    expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow("same sign at both ends, 2 at -1");
    expect(() => findRoot((x) => x, Number.NaN, 1)).toThrow("lower is NaN");
    expect(() => findRoot((x) => x, -1, Number.POSITIVE_INFINITY)).toThrow("upper is Infinity");
    expect(() => findRoot(() => Number.NaN, 0, 1)).toThrow("the function is NaN at 0");
    expect(() => findRoot((x) => x - 0.3, 0, 1, { maxIterations: 0 })).toThrow("no convergence");
  });
});

describe("bracketing", () => {
  it("widens until the root is inside, on either side and many decades away", () => {
    for (const root of [-1e9, -3, 0.5, 40, 1e12]) {
      const { lower, upper } = bracketRoot((x) => x - root, 0, 1);
      expect(lower).toBeLessThanOrEqual(root);
      expect(upper).toBeGreaterThanOrEqual(root);
    }
  });

  it("serves falling functions too", () => {
    const { lower, upper } = bracketRoot((x) => Math.exp(-x) - 1e-30, 0, 1);
    expect(lower).toBeLessThan(30 * Math.LN10);
    expect(upper).toBeGreaterThan(30 * Math.LN10);
  });

  it("gives up on a function that keeps its sign", () => {
    expect(() => bracketRoot((x) => 1 + x * x, 0, 1)).toThrow(NumericalError);
  });
});
