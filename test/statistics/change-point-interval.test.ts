import { describe, expect, it } from "vitest";
import { randomStream } from "../../src/numeric/random.ts";
import { changePoint, changePointCritical } from "../../src/statistics/change-point.ts";
import { changePointInterval } from "../../src/statistics/change-point-interval.ts";
import { present } from "../support/reference.ts";

/** A season of normal fills with a shift after the given number of them. */
function season(
  fills: number,
  before: number,
  shift: number,
  random: ReturnType<typeof randomStream>,
) {
  return Array.from({ length: fills }, (_, i) => random.normal() + (i >= before ? shift : 0));
}

describe("changePointInterval", () => {
  it("leaves out zero exactly when the test rejects", () => {
    const random = randomStream(3);
    for (let i = 0; i < 400; i++) {
      const values = season(8, 4, i % 2 === 0 ? 0 : 2.5, random);
      const found = present(changePoint(values));
      const { lower, upper } = changePointInterval(values, found, 0.95).difference;
      expect(lower > 0 || upper < 0).toBe(Math.abs(found.statistic) > changePointCritical(0.95, 8));
      expect((lower + upper) / 2).toBeCloseTo(found.difference, 10);
    }
  });

  it("keeps the split found among the possible ones, and all of them when nothing stands out", () => {
    const random = randomStream(4);
    for (let i = 0; i < 100; i++) {
      const values = season(9, 5, 2, random);
      const found = present(changePoint(values));
      const { before } = changePointInterval(values, found, 0.95);
      expect(before.fewest).toBeLessThanOrEqual(found.before);
      expect(before.most).toBeGreaterThanOrEqual(found.before);
    }
    const even = [1, 2, 1, 2, 1, 2, 1, 2];
    expect(changePointInterval(even, present(changePoint(even)), 0.95).before).toEqual({
      fewest: 2,
      most: 6,
    });
  });

  // 4,000 seasons: three standard errors of a coverage of 0.95 are 0.0103.
  it("covers a shift of 2.5 spreads and its place at least as often as it says", () => {
    const seasons = 4000;
    for (const [fills, at] of [
      [8, 4],
      [12, 6],
      [12, 3],
    ] as const) {
      const random = randomStream(5, 100 * fills + at);
      const held = { size: 0, place: 0 };
      for (let i = 0; i < seasons; i++) {
        const values = season(fills, at, 2.5, random);
        const { difference, before } = changePointInterval(
          values,
          present(changePoint(values)),
          0.95,
        );
        if (difference.lower <= 2.5 && 2.5 <= difference.upper) held.size++;
        if (before.fewest <= at && at <= before.most) held.place++;
      }
      expect(held.size / seasons).toBeGreaterThan(0.95 - 0.0103);
      expect(held.place / seasons).toBeGreaterThan(0.95 - 0.0103);
    }
  });
});

it("has ends of the difference and of the place that follow from the critical value alone", () => {
  const values = [5.1, 5.6, 4.9, 5.3, 6.4, 6.1, 6.9, 6.2, 6.6];
  const found = present(changePoint(values));
  const critical = changePointCritical(0.9, values.length);
  const { difference, before, level } = changePointInterval(values, found, 0.9);
  expect(level).toBe(0.9);
  expect(difference.lower).toBeCloseTo(found.difference - critical * found.standardError, 12);
  expect(difference.upper).toBeCloseTo(found.difference + critical * found.standardError, 12);
  const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
  const squares = (list: readonly number[]) =>
    list.reduce((sum, one) => sum + (one - mean(list)) ** 2, 0);
  const left = (place: number) => squares(values.slice(0, place)) + squares(values.slice(place));
  const possible = [2, 3, 4, 5, 6, 7].filter(
    (place) => (left(place) - left(found.before)) / (left(found.before) / 7) <= critical ** 2,
  );
  expect(before).toEqual({ fewest: Math.min(...possible), most: Math.max(...possible) });
  expect(possible.length).toBeLessThan(6);
  expect(() => changePointInterval(values, found, 1)).toThrow("level is 1");
});
