import { expect, it } from "vitest";
import { isDust, lastPlaces, noScatter, relativeDust } from "../../src/numeric/rounding-dust.ts";

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

it("draws the line at a share of 1e-12, itself included", () => {
  expect(relativeDust).toBe(1e-12);
  expect(isDust(1e-12, 1)).toBe(true);
  expect(isDust(1.2e-12, 1)).toBe(false);
  expect(isDust(-2e-12, 2)).toBe(true);
});

it("takes for no scatter a sum of squares of the dust's share, itself included, and 0 of nothing", () => {
  // 3-4-5: sizes of 25 together.
  expect(noScatter(24.9e-24, [3, 4])).toBe(true);
  expect(noScatter(25 * 2 ** -20, [3, 4], 2 ** -10)).toBe(true);
  expect(noScatter(26e-24, [3, 4])).toBe(false);
  expect(noScatter(24, [3, 4], 1)).toBe(true);
  expect(noScatter(26, [3, 4], 1)).toBe(false);
  expect(noScatter(1e-300, [])).toBe(false);
});

it("counts eight of the last places of a number", () => {
  expect(lastPlaces).toBe(2 ** -49);
});
