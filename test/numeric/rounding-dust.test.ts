import { expect, it } from "vitest";
import { isDust, noScatter } from "../../src/numeric/rounding-dust.ts";

it("takes for dust what rounding leaves of a difference, whatever the size and the signs", () => {
  expect(isDust(0.1 + 0.2 - 0.3, 0.3)).toBe(true);
  expect(isDust(-1e-5, 1e8)).toBe(true);
  expect(isDust(1e-5, -1e8)).toBe(true);
  expect(isDust(1e-11, 1)).toBe(false);
  expect(isDust(-1e-11, 1)).toBe(false);
});

it("takes nothing but 0 for dust where the size is 0", () => {
  expect(isDust(0, 0)).toBe(true);
  expect(isDust(1e-300, 0)).toBe(false);
});

it("finds no scatter in the squares that rounding leaves of equal values", () => {
  const values = [7.1 / 0.7, 14.2 / 1.4, 21.3 / 2.1];
  const squares = (middle: number) => values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
  expect(noScatter(squares(values[0] ?? 0), values)).toBe(true);
  expect(noScatter(squares(10.1), values)).toBe(false);
  expect(noScatter(0, [])).toBe(true);
});
