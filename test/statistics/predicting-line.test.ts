import { describe, expect, it } from "vitest";
import {
  distanceFrom,
  type JudgedPoint,
  lineOf,
  residualFrom,
  standardErrorFrom,
} from "../../src/statistics/predicting-line.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const x = [12, 20, 35, 50];
const y = [3.5, 6.3, 10.2, 15.4];
const known = [0.01, 0, 0.02, 0.005];
const points: readonly JudgedPoint[] = x.map((one, i) => ({
  x: one,
  y: y[i] ?? Number.NaN,
  knownVariance: known[i] ?? 0,
}));
const next: JudgedPoint = { x: 28, y: 9.4, knownVariance: 0.03 };

describe("a line that predicts another point", () => {
  it("has the slope, scatter and p value that R's weighted lm gives", async () => {
    const plain = points.map((point) => ({ ...point, knownVariance: 0 }));
    const [slope = 0, variance = 0, error = 0, statistic = 0, p = 0] = await evalR(
      `m <- lm(y ~ 0 + x, weights = 1 / x); v <- deviance(m) / 3
       e <- sqrt(v * 28 + 28^2 * vcov(m)[1, 1]); t <- (9.4 - 28 * coef(m)) / e
       c(coef(m), v, e, t, 2 * pt(-abs(t), 3))`,
      { x, y },
    );
    const line = lineOf(plain, null);
    expect(line.slope / slope).toBeCloseTo(1, 12);
    expect(present(line.variance) / variance).toBeCloseTo(1, 11);
    expect(line).toMatchObject({ df: 3, knownVariance: 0, information: 117 });
    const found = present(residualFrom(line, { ...next, knownVariance: 0 }));
    expect(found.standardError / error).toBeCloseTo(1, 11);
    expect(found.statistic / statistic).toBeCloseTo(1, 10);
    expect(found.pValue / p).toBeCloseTo(1, 10);
    expect(found.residual).toBeCloseTo(9.4 - 28 * slope, 12);
    expect(found.df).toBe(3);
  });

  it("counts known errors of its points and of the one predicted", () => {
    const line = lineOf(points, null);
    const ofLine = (0.01 + 0.02 + 0.005) / 117 ** 2;
    expect(line.knownVariance).toBeCloseTo(ofLine, 14);
    const own = present(line.variance);
    const error = Math.sqrt(own * 28 * (1 + 28 / 117) + 0.03 + 28 ** 2 * ofLine);
    expect(present(distanceFrom(line, next)).standardError).toBeCloseTo(error, 12);
    expect(standardErrorFrom(own, 117, ofLine, next)).toBeCloseTo(error, 12);
  });

  it("pools its scatter with one from elsewhere by degrees of freedom", () => {
    const outside = { variance: 0.002, df: 5 };
    const alone = lineOf(points, null);
    const pooled = lineOf(points, outside);
    expect(pooled.df).toBe(8);
    expect(pooled.variance).toBeCloseTo((3 * present(alone.variance) + 5 * 0.002) / 8, 14);
  });

  it("knows no scatter of one point, and so no distance from it", () => {
    const line = lineOf(points.slice(0, 1), null);
    expect(line).toMatchObject({ variance: null, df: 0 });
    expect(distanceFrom(line, next)).toBeNull();
    expect(residualFrom(line, next)).toBeNull();
    expect(lineOf(points.slice(0, 1), { variance: 0.5, df: 2 })).toMatchObject({
      variance: 0.5,
      df: 2,
    });
    expect(lineOf(points.slice(0, 2), null).df).toBe(1);
  });

  it("tells no distance by a scatter of nothing", () => {
    const exact = [10, 20, 30].map((one) => ({ x: one, y: 0.3 * one, knownVariance: 0 }));
    expect(distanceFrom(lineOf(exact, null), { ...next, knownVariance: 0 })).toBeNull();
    expect(distanceFrom(lineOf(exact, null), next)).not.toBeNull();
  });
});
