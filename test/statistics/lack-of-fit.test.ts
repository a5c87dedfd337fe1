import { describe, expect, it } from "vitest";
import { lackOfFit } from "../../src/statistics/lack-of-fit.ts";
import { fitThroughOrigin } from "../../src/statistics/through-origin.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const x = [10, 10, 10, 25, 25, 40, 40, 40, 60];
const y = [3.1, 2.9, 3.2, 7.4, 7.9, 12.2, 11.7, 12.4, 17.1];
const pointsOf = (xs: readonly number[], ys: readonly number[]) =>
  xs.map((one, i) => ({ x: one, y: ys[i] ?? Number.NaN }));

describe("lack of fit of a line through the origin", () => {
  it("is R's anova of the line and a mean for every x, both weighted by 1/x", async () => {
    const wanted = await evalR(
      `line <- lm(y ~ 0 + x, weights = 1 / x); means <- lm(y ~ 0 + factor(x), weights = 1 / x)
       a <- anova(line, means); c(a$F[2], a$Df[2], a$Res.Df[2], a[["Sum of Sq"]][2], a$RSS[2], a[["Pr(>F)"]][2])`,
      { x, y },
    );
    const found = present(lackOfFit(fitThroughOrigin(pointsOf(x, y))));
    const { statistic, dfLackOfFit, dfPureError, lackOfFitSumOfSquares } = found;
    const { pureErrorSumOfSquares, pValue, levels } = found;
    const figures = [statistic, dfLackOfFit, dfPureError, lackOfFitSumOfSquares];
    [...figures, pureErrorSumOfSquares, pValue].forEach((value, i) => {
      expect(value / present(wanted[i])).toBeCloseTo(1, 10);
    });
    expect(levels).toBe(4);
  });

  it("can be asked from two levels on, of which one is repeated once, and no sooner", () => {
    const of = (xs: readonly number[], ys: readonly number[]) =>
      lackOfFit(fitThroughOrigin(pointsOf(xs, ys)));
    expect(of([1, 2, 2], [1, 2.1, 2.4])).toMatchObject({ dfLackOfFit: 1, dfPureError: 1 });
    expect(of([2, 2, 2], [2, 2.1, 2.4])).toBeNull();
    expect(of([1, 2, 3], [1, 2.1, 2.4])).toBeNull();
  });

  it("is not asked where repeated weighings agree to rounding", () => {
    const third = 7.1 / 0.7;
    const same = [third, 71 / 7, 2.1 * third, 2.2 * third];
    expect(lackOfFit(fitThroughOrigin(pointsOf([1, 1, 2, 3], same)))).toBeNull();
  });

  it("is nothing, and no less, where the line passes through every mean", () => {
    const { statistic, pValue } = present(
      lackOfFit(fitThroughOrigin(pointsOf([1, 1, 2, 2], [0.9, 1.1, 1.9, 2.1]))),
    );
    expect(statistic).toBeGreaterThanOrEqual(0);
    expect(statistic).toBeLessThan(1e-12);
    expect(pValue).toBeCloseTo(1, 6);
  });
});
