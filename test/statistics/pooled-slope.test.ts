import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { leastSquares } from "../../src/numeric/least-squares.ts";
import { pooledSlope, type SlopeGroup } from "../../src/statistics/pooled-slope.ts";
import { weightedLine } from "../../src/statistics/straight-line.ts";
import { present } from "../support/reference.ts";

const groups: readonly SlopeGroup[] = [
  { x: [1, 2, 3, 4], y: [10.2, 9.9, 9.7, 9.1], weights: [20, 20, 40, 20] },
  { x: [1, 2, 3], y: [11.4, 11.5, 10.9], weights: [15, 30, 15] },
  { x: [1, 2], y: [9.1, 8.7], weights: [20, 40] },
];

describe("pooledSlope", () => {
  it("is the weighted line for one group", () => {
    const [one] = groups;
    const line = weightedLine(present(one).x, present(one).y, present(one).weights);
    const pooled = present(pooledSlope([present(one)]));
    expect(pooled.slope).toBeCloseTo(line.slope, 12);
    expect(pooled.standardError).toBeCloseTo(present(line.slopeStandardError), 12);
    expect(pooled.df).toBe(2);
  });

  it("agrees with the general linear model that has a column for each group", () => {
    const rows = groups.flatMap(({ x }, g) =>
      x.map((value) => [...groups.map((_, other) => (other === g ? 1 : 0)), value]),
    );
    const fit = leastSquares(
      rows,
      groups.flatMap(({ y }) => y),
      groups.flatMap(({ weights }) => weights),
    );
    const pooled = present(pooledSlope(groups));
    expect(pooled.slope).toBeCloseTo(present(fit.coefficients.at(-1)), 12);
    expect(pooled.standardError).toBeCloseTo(present(present(fit.standardErrors).at(-1)), 12);
    expect(pooled.df).toBe(fit.df);
    expect(pooled.groups).toBe(3);
  });

  it("passes over groups that cannot tell a slope, and says nothing without degrees of freedom", () => {
    const still = { x: [2, 2], y: [1, 5], weights: [1, 1] };
    const pair = { x: [1, 2], y: [1, 2], weights: [1, 1] };
    expect(pooledSlope([...groups, still])).toEqual(pooledSlope(groups));
    expect(pooledSlope([still])).toBeNull();
    expect(pooledSlope([pair])).toBeNull();
    expect(pooledSlope([])).toBeNull();
  });

  it("has nothing to test against when every group lies on the same slope", () => {
    expect(
      pooledSlope([
        { x: [1, 2, 3], y: [1, 2, 3], weights: [1, 1, 1] },
        { x: [1, 2, 3], y: [7, 8, 9], weights: [1, 1, 1] },
      ]),
    ).toBeNull();
  });

  it("refuses lists of different length", () => {
    expect(() => pooledSlope([{ x: [1, 2], y: [1], weights: [1, 1] }])).toThrow(NumericalError);
  });
});

it("can be told from two groups of two points, which leave one degree of freedom", () => {
  const pairs = [
    { x: [1, 2], y: [1, 2], weights: [1, 1] },
    { x: [1, 3], y: [4, 9], weights: [1, 1] },
  ];
  // By hand: slopes 1 and 2.5 on squares of x of 0.5 and 2.
  const found = present(pooledSlope(pairs));
  expect(found).toMatchObject({ df: 1, groups: 2 });
  expect(found.slope).toBeCloseTo(2.2, 12);
  const residual = 0.5 * 1.2 ** 2 + 2 * 0.3 ** 2;
  expect(found.standardError).toBeCloseTo(Math.sqrt(residual / 2.5), 12);
  expect(found.statistic).toBeCloseTo(2.2 / Math.sqrt(residual / 2.5), 12);
});
