import { describe, expect, it } from "vitest";
import { at } from "../../src/errors/at.ts";
import { randomStream } from "../../src/numeric/random.ts";
import {
  distanceWithout,
  farthestPoint,
  linesTakenOutOf,
} from "../../src/statistics/farthest-point.ts";
import { lineOf, residualFrom } from "../../src/statistics/predicting-line.ts";
import { evalR } from "../support/webr.ts";

/** Catches of unequal length, some of them read off a scale. */
function pointsFrom(seed: number, count: number) {
  const random = randomStream(seed);
  return Array.from({ length: count }, () => {
    const x = random.integer(10, 40);
    return { x, y: 0.3 * x + 0.02 * Math.sqrt(x) * random.normal(), knownVariance: 1e-5 };
  });
}

const outsides = [null, { variance: 4e-4, df: 6.5 }];

describe("the farthest of some points", () => {
  it.each([3, 5, 40, 199, 200, 1000])("is the one that each line of the others finds: %i", (n) => {
    const points = pointsFrom(n, n);
    for (const outside of outsides) {
      const sizes = points.map((point, i) =>
        Math.abs(residualFrom(lineOf(points.toSpliced(i, 1), outside), point)?.statistic ?? 0),
      );
      const place = sizes.indexOf(Math.max(...sizes));
      const found = farthestPoint(points, outside);
      expect(found?.place).toBe(place);
      expect(found?.size).toBeCloseTo(at(sizes, place), 9);
      expect(Math.abs(distanceWithout(place, points, outside)?.statistic ?? 0)).toBeCloseTo(
        at(sizes, place),
        9,
      );
    }
  });

  it("is that of externally studentized residuals in R, for many points as for few", async () => {
    for (const n of [12, 400]) {
      const points = pointsFrom(n, n).map((point) => ({ ...point, knownVariance: 0 }));
      const inR = await evalR("abs(rstudent(lm(y ~ 0 + x, weights = 1 / x)))", {
        x: points.map(({ x }) => x),
        y: points.map(({ y }) => y),
      });
      const largest = Math.max(...inR);
      const found = farthestPoint(points, null);
      expect(found?.size).toBeCloseTo(largest, 9);
      expect(found?.place).toBe(inR.indexOf(largest));
    }
  });

  it("is none where the others do not scatter", () => {
    const points = Array.from({ length: 300 }, () => ({ x: 20, y: 6, knownVariance: 0 }));
    expect(farthestPoint(points, null)).toBeNull();
    expect(farthestPoint(points.slice(0, 5), null)).toBeNull();
  });
});

it("takes one of many out of the sums of all as if it had never been in them, also one that lies far off", () => {
  const points = pointsFrom(7, 500).with(11, { x: 20, y: 60, knownVariance: 1e-5 });
  for (const outside of outsides) {
    const without = linesTakenOutOf(points, outside);
    for (const place of [0, 11, 250, 499]) {
      const line = lineOf(points.toSpliced(place, 1), outside);
      expect(without(place).slope).toBeCloseTo(line.slope, 12);
      expect((without(place).variance ?? 0) / (line.variance ?? 1)).toBeCloseTo(1, 9);
      expect(without(place).df).toBe(line.df);
      expect(without(place).information).toBe(line.information);
    }
  }
});

it("is none of two points by themselves, and one of two with the scatter of others", () => {
  const two = pointsFrom(3, 2);
  expect(farthestPoint(two, null)).toBeNull();
  expect(farthestPoint(two, { variance: 4e-4, df: 0 })).toBeNull();
  expect(distanceWithout(0, two, null)).toBeNull();
  const found = farthestPoint(two, { variance: 4e-4, df: 1 });
  const [first, second] = [0, 1].map((place) =>
    Math.abs(distanceWithout(place, two, { variance: 4e-4, df: 1 })?.statistic ?? 0),
  );
  // The distance of a pair is one distance, whichever of the two is looked at.
  expect(found?.size).toBeCloseTo(first ?? 0, 10);
  expect(second).toBeCloseTo(first ?? 0, 10);
});

it("may lie nearer than one standard error, where others scatter far more", () => {
  const lastIsHigh = (count: number) =>
    Array.from({ length: count }, (_, i) => ({
      x: 20,
      y: i === count - 1 ? 6.1 : 6,
      knownVariance: 0,
    }));
  // 0.1 kg off the others, which agree. With df = n − 2 + 4 its error is √(4·s₀²/df·20·(1 + 20/Σx)): of three points
  // √(0.004·20·1.5) = √0.12, of three hundred √(1.2/302·20·(1 + 1/299)).
  expect(farthestPoint(lastIsHigh(3), { variance: 0.005, df: 4 })).toEqual({
    place: 2,
    size: expect.closeTo(0.1 / Math.sqrt(0.12), 12),
  });
  expect(farthestPoint(lastIsHigh(300), { variance: 0.3, df: 4 })).toEqual({
    place: 299,
    size: expect.closeTo(0.1 / Math.sqrt((1.2 / 302) * 20 * (1 + 1 / 299)), 9),
  });
});

it("is the first of several that lie equally far off", () => {
  const points = [6, 6.2, 5.8, 6.2, 5.8].map((y) => ({ x: 20, y, knownVariance: 0 }));
  expect(farthestPoint(points, null)?.place).toBe(1);
});
