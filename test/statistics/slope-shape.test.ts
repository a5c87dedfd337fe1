import { describe, expect, it } from "vitest";
import { pooledSlope, type SlopeGroup } from "../../src/statistics/pooled-slope.ts";
import { curvatureTest, parallelLackOfFit } from "../../src/statistics/slope-shape.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

/** Invented: three groups at unlike speeds, weights and levels, some x repeated. */
const groups: readonly SlopeGroup[] = [
  { x: [40, 40, 55, 70], y: [1.012, 1.004, 1.001, 0.979], weights: [20, 40, 20, 40] },
  { x: [40, 55, 55, 80, 80], y: [0.902, 0.91, 0.899, 0.871, 0.865], weights: [20, 20, 30, 30, 20] },
  { x: [55, 70, 90, 90], y: [1.105, 1.09, 1.061, 1.069], weights: [15, 30, 15, 30] },
];
const columns = {
  g: groups.flatMap(({ x }, i) => x.map(() => i + 1)),
  x: groups.flatMap(({ x }) => x),
  y: groups.flatMap(({ y }) => y),
  w: groups.flatMap(({ weights }) => weights),
};
const fit = present(pooledSlope(groups));

describe("curvatureTest", () => {
  it("agrees with R's lm with a square and a level for every group", async () => {
    const [value = 0, error = 0, statistic = 0, pValue = 0] = await evalR(
      "coef(summary(lm(y ~ factor(g) + x + I(x^2), weights = w)))['I(x^2)', ]",
      columns,
    );
    const test = present(curvatureTest(groups, fit));
    expect(digits(test.value, value)).toBeGreaterThan(8);
    expect(digits(test.standardError, error)).toBeGreaterThan(8);
    expect(digits(test.statistic, statistic)).toBeGreaterThan(8);
    expect(digits(test.pValue, pValue)).toBeGreaterThan(8);
    expect(test.df).toBe(columns.x.length - 3 - 2);
  });

  it("is null where two values of x leave no bend to see", () => {
    const two = groups.map(({ x, ...rest }) => ({
      ...rest,
      x: x.map((value) => (value > 55 ? 2 : 1)),
    }));
    expect(curvatureTest(two, present(pooledSlope(two)))).toBeNull();
  });
});

describe("parallelLackOfFit", () => {
  it("agrees with R's comparison of parallel lines with a mean for every group and x", async () => {
    const [statistic = 0, pValue = 0, lack = 0, pure = 0] = await evalR(
      `a <- anova(lm(y ~ factor(g) + x, weights = w), lm(y ~ factor(g):factor(x), weights = w))
       c(a$F[2], a[["Pr(>F)"]][2], a$Df[2], a$Res.Df[2])`,
      columns,
    );
    const test = present(parallelLackOfFit(groups, fit));
    expect(digits(test.statistic, statistic)).toBeGreaterThan(8);
    expect(digits(test.pValue, pValue)).toBeGreaterThan(8);
    expect([test.dfLackOfFit, test.dfPureError]).toEqual([lack, pure]);
  });

  it("is null without repeats", () => {
    const single = groups.map(({ x, ...rest }) => ({ ...rest, x: x.map((value, i) => value + i) }));
    expect(parallelLackOfFit(single, present(pooledSlope(single)))).toBeNull();
  });
});

describe("the unit of the weights", () => {
  const weighed = (some: readonly SlopeGroup[], unit: number) =>
    some.map(({ weights, ...rest }) => ({ ...rest, weights: weights.map((one) => one * unit) }));
  // A power of two changes no digit.
  const [tiny, huge] = [2 ** -60, 2 ** 70];

  it("changes nothing of what is found", () => {
    for (const unit of [tiny, huge]) {
      const other = weighed(groups, unit);
      const line = present(pooledSlope(other));
      expect(curvatureTest(other, line)).toEqual(curvatureTest(groups, fit));
      expect(parallelLackOfFit(other, line)).toEqual(parallelLackOfFit(groups, fit));
    }
  });
});

describe("degrees of freedom that are needed", () => {
  const weights = (x: readonly number[]) => x.map(() => 1);
  const of = (x: readonly number[], y: readonly number[]) => [{ x, y, weights: weights(x) }];
  const fitted = (some: readonly SlopeGroup[]) => present(pooledSlope(some));

  it("are one beside the bend", () => {
    const three = of([1, 2, 4], [1, 2.5, 3]);
    expect(curvatureTest(three, fitted(three))).toBeNull();
    const four = of([1, 2, 4, 5], [1, 2.5, 3, 4.5]);
    expect(present(curvatureTest(four, fitted(four))).df).toBe(1);
  });

  it("are one of lack of fit and one of pure error", () => {
    const bare = of([1, 2, 4, 4], [1, 2.5, 3, 3.2]);
    expect(parallelLackOfFit(bare, fitted(bare))).toMatchObject({ dfLackOfFit: 1, dfPureError: 1 });
    const two = of([1, 4, 4], [1, 3, 3.2]);
    expect(parallelLackOfFit(two, fitted(two))).toBeNull();
    const single = of([1, 2, 4, 5], [1, 2.5, 3, 4.5]);
    expect(parallelLackOfFit(single, fitted(single))).toBeNull();
  });

  it("leave nothing to test against on an exact parabola, or where repeats agree", () => {
    const bent = of([1, 2, 3, 4, 5], [1, 4, 9, 16, 25]);
    expect(curvatureTest(bent, fitted(bent))).toBeNull();
    const repeated = of([1, 1, 2, 2, 4, 4], [1, 1, 3, 3, 4, 4]);
    expect(parallelLackOfFit(repeated, fitted(repeated))).toBeNull();
  });
});
