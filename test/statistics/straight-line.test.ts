import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { leastSquares } from "../../src/numeric/least-squares.ts";
import { lineAt, weightedLine } from "../../src/statistics/straight-line.ts";
import { expectDigits } from "../support/distributions.ts";
import { present } from "../support/reference.ts";
import { certified, certifiedSet } from "../support/strd.ts";
import { evalR } from "../support/webr.ts";

const x = [1, 2, 4, 5.5, 8, 11];
const y = [2.3, 3.9, 8.4, 11.2, 15.1, 22.8];
const weights = [1, 0.5, 2, 1.25, 0.2, 3];

describe("the straight line through NIST's Norris data", () => {
  const set = certifiedSet("linear-norris");
  const fit = weightedLine(set.data.x, set.data.y);

  it("has certified coefficients and standard errors to 12 digits", () => {
    expectDigits(fit.intercept, certified(set, "estimate", "B0"), 12, "B0");
    expectDigits(fit.slope, certified(set, "estimate", "B1"), 14, "B1");
    const errors = [fit.interceptStandardError, fit.slopeStandardError].map(present);
    expectDigits(errors[0] ?? 0, certified(set, "sd_of_estimate", "B0"), 12, "sd B0");
    expectDigits(errors[1] ?? 0, certified(set, "sd_of_estimate", "B1"), 12, "sd B1");
  });

  it("has the certified scatter to 12 digits", () => {
    expectDigits(fit.residualSumOfSquares, certified(set, "residual_ss"), 12, "residual_ss");
    expectDigits(present(fit.residualStandardDeviation), certified(set, "residual_sd"), 12, "sd");
    expect(fit.df).toBe(certified(set, "residual_df"));
  });
});

describe("the weighted straight line", () => {
  it("is R's weighted fit, with its covariance, leverages, residuals and height", async () => {
    const fit = weightedLine(x, y, weights);
    const truth = await evalR(
      `m <- lm(y ~ x, weights = w)
       c(coef(m), vcov(m)[c(1, 4, 2)], sigma(m), hatvalues(m), residuals(m),
         predict(m, data.frame(x = 6.5)))`,
      { x, y, w: weights },
    );
    const found = [
      fit.intercept,
      fit.slope,
      present(fit.interceptStandardError) ** 2,
      present(fit.slopeStandardError) ** 2,
      present(fit.covariance),
      present(fit.residualStandardDeviation),
      ...fit.leverages,
      ...fit.residuals,
      lineAt(fit, 6.5),
    ];
    expect(found).toHaveLength(truth.length);
    found.forEach((value, i) => {
      expectDigits(value, truth[i] ?? Number.NaN, 11, i);
    });
  });

  it("agrees with least squares by orthogonal reduction", () => {
    const value = fc.double({ min: -100, max: 100, noNaN: true });
    const weight = fc.double({ min: 0.1, max: 10, noNaN: true });
    const points = fc.array(fc.tuple(value, value, weight), { minLength: 4, maxLength: 20 });
    fc.assert(
      fc.property(points, (rows) => {
        const xs = rows.map(([a], i) => a + 50 * i);
        const ys = rows.map(([, b]) => b);
        const ws = rows.map(([, , c]) => c);
        const line = weightedLine(xs, ys, ws);
        const general = leastSquares(
          xs.map((at) => [1, at]),
          ys,
          ws,
        );
        expect(line.slope).toBeCloseTo(general.coefficients[1] ?? Number.NaN, 9);
        expect(line.residualSumOfSquares).toBeCloseTo(general.residualSumOfSquares, 5);
        line.leverages.forEach((leverage, i) => {
          expect(leverage).toBeCloseTo(general.leverages[i] ?? Number.NaN, 9);
        });
      }),
    );
  });

  it("does not mind a large common part of x and y", () => {
    const near = weightedLine(x, y, weights);
    const far = weightedLine(
      x.map((at) => at + 2 ** 30),
      y.map((at) => at + 2 ** 30),
      weights,
    );
    expectDigits(far.slope, near.slope, 7, "slope");
    expectDigits(far.residualSumOfSquares, near.residualSumOfSquares, 6, "residuals");
  });

  it("does not change when all weights are multiplied, except in scale", () => {
    const once = weightedLine(x, y, weights);
    const twice = weightedLine(
      x,
      y,
      weights.map((weight) => 4 * weight),
    );
    expectDigits(twice.slope, once.slope, 14, "slope");
    expectDigits(present(twice.slopeStandardError), present(once.slopeStandardError), 14, "error");
    expectDigits(
      present(twice.residualStandardDeviation),
      2 * present(once.residualStandardDeviation),
      14,
      "scatter at weight 1",
    );
  });

  it("gives all points weight 1 unless told otherwise", () => {
    expect(weightedLine(x, y)).toEqual(
      weightedLine(
        x,
        y,
        x.map(() => 1),
      ),
    );
  });

  it("knows no scatter from two points", () => {
    const fit = weightedLine([1, 3], [2, 8]);
    expect(fit).toMatchObject({ slope: 3, intercept: -1, df: 0, slopeStandardError: null });
    expect(fit.residualStandardDeviation).toBeNull();
  });

  it("refuses too few points, unequal lists, values out of range and x all equal", () => {
    expect(() => weightedLine([1], [1])).toThrow(NumericalError);
    expect(() => weightedLine([1], [1])).toThrow("at least 2 points; there are 1");
    expect(() => weightedLine([1, 2], [1, 2, 3])).toThrow("2 x, 3 y and 2 weights");
    expect(() => weightedLine([1, Number.NaN], [1, 2])).toThrow("x 2 is NaN");
    expect(() => weightedLine([1, 2], [1, Number.POSITIVE_INFINITY])).toThrow("y 2 is Infinity");
    expect(() => weightedLine([1, 2], [1, 2], [1, 0])).toThrow("weight 2 is 0");
    expect(() => weightedLine([0.1, 0.1, 0.1], [1, 2, 3])).toThrow("all x are equal");
    expect(() => lineAt(weightedLine(x, y), Number.NaN)).toThrow("x is NaN");
  });
});
