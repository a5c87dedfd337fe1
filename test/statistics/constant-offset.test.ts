import { describe, expect, it } from "vitest";
import { offsetVarianceFactor, testOffset } from "../../src/statistics/constant-offset.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const x = [8, 15, 30, 55, 90];
const y = [2.9, 4.7, 9.6, 16.3, 27.4];
const points = x.map((one, i) => ({ x: one, y: y[i] ?? Number.NaN }));

describe("the intercept of a line whose scatter grows with x", () => {
  it("is that of R's lm with weights 1/x", async () => {
    const wanted = await evalR(
      `m <- lm(y ~ x, weights = 1 / x); s <- summary(m)$coefficients
       c(s[1, 1], s[2, 1], s[1, 2], m$df.residual, s[1, 3], s[1, 4])`,
      { x, y },
    );
    const { offset, slope, standardError, df, statistic, pValue } = present(
      testOffset(points, null),
    );
    [offset, slope, standardError, df, statistic, pValue].forEach((value, i) => {
      expect(value / present(wanted[i])).toBeCloseTo(1, 10);
    });
  });

  it("pools its scatter with one from elsewhere, by degrees of freedom", async () => {
    const outside = { variance: 0.004, df: 7 };
    const [wanted = 0, p = 0] = await evalR(
      `m <- lm(y ~ x, weights = 1 / x); v <- (deviance(m) + 7 * 0.004) / (m$df.residual + 7)
       e <- sqrt(v * summary(m)$cov.unscaled[1, 1]); c(e, 2 * pt(-abs(coef(m)[1] / e), 10))`,
      { x, y },
    );
    const found = present(testOffset(points, outside));
    expect(found.df).toBe(10);
    expect(found.standardError / wanted).toBeCloseTo(1, 10);
    expect(found.pValue / p).toBeCloseTo(1, 10);
  });

  it("takes three points by themselves, and two with the scatter of others", () => {
    expect(testOffset(points.slice(0, 3), null)?.df).toBe(1);
    expect(testOffset(points.slice(0, 2), null)).toBeNull();
    expect(testOffset(points.slice(0, 2), { variance: 0.01, df: 0 })).toBeNull();
    expect(testOffset(points.slice(0, 2), { variance: 0.01, df: 1 })?.df).toBe(1);
  });

  it("has nothing to be judged by on an exact line", () => {
    const exact = x.map((one) => ({ x: one, y: 0.3 * one + 0.1 }));
    expect(testOffset(exact, null)).toBeNull();
    expect(testOffset(exact, { variance: 0, df: 4 })).toBeNull();
    expect(testOffset(exact, { variance: 1e-4, df: 4 })).not.toBeNull();
  });

  it("errs by the factor that R's unscaled covariance has", async () => {
    const [wanted = 0] = await evalR(
      "w <- 1 / x; solve(t(cbind(1, x)) %*% (w * cbind(1, x)))[1, 1]",
      { x },
    );
    expect(offsetVarianceFactor(x) / wanted).toBeCloseTo(1, 10);
  });
});
