import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { leastSquares } from "../../src/numeric/least-squares.ts";
import { expectDigits } from "../support/distributions.ts";
import { present } from "../support/reference.ts";
import { certified, certifiedSet } from "../support/strd.ts";
import { evalR } from "../support/webr.ts";

const rows = [
  [1, 0.5, 3],
  [1, 1.5, 1],
  [1, 2, 4.5],
  [1, 4, 2],
  [1, 5.5, 0.5],
  [1, 7, 6],
];
const y = [2.2, 3.1, 9.4, 8.8, 9.1, 21.7];
const weights = [1, 2, 0.5, 3, 0.25, 1.5];

describe("least squares on the NIST reference data sets", () => {
  it.each(["noint1", "noint2"])("is right to 14 digits through the origin for %s", (name) => {
    const set = certifiedSet(`linear-${name}`);
    const fit = leastSquares(
      set.data.x.map((x) => [x]),
      set.data.y,
    );
    expectDigits(fit.coefficients[0] ?? 0, certified(set, "estimate", "B1"), 14, name);
    const error = present(fit.standardErrors)[0] ?? 0;
    expectDigits(error, certified(set, "sd_of_estimate", "B1"), 14, name);
    expectDigits(fit.residualSumOfSquares, certified(set, "residual_ss"), 14, name);
    expect(fit.df).toBe(certified(set, "residual_df"));
  });

  it("is right to 12 digits for Norris", () => {
    const set = certifiedSet("linear-norris");
    const fit = leastSquares(
      set.data.x.map((x) => [1, x]),
      set.data.y,
    );
    for (const [j, name] of ["B0", "B1"].entries()) {
      expectDigits(fit.coefficients[j] ?? 0, certified(set, "estimate", name), 12, name);
      const error = present(fit.standardErrors)[j] ?? 0;
      expectDigits(error, certified(set, "sd_of_estimate", name), 12, name);
    }
    expectDigits(fit.residualSumOfSquares, certified(set, "residual_ss"), 12, "residual_ss");
  });
});

describe("least squares", () => {
  it("is R's weighted fit, with covariance, leverages and residuals", async () => {
    const fit = leastSquares(rows, y, weights);
    const truth = await evalR(
      `m <- lm(y ~ 0 + a + b + c, weights = w)
       c(coef(m), sqrt(diag(vcov(m))), vcov(m), summary(m)$cov.unscaled, deviance(m), hatvalues(m), residuals(m))`,
      {
        y,
        w: weights,
        a: rows.map(([v = 0]) => v),
        b: rows.map(([, v = 0]) => v),
        c: rows.map(([, , v = 0]) => v),
      },
    );
    const found = [
      fit.coefficients,
      present(fit.standardErrors),
      present(fit.covariance).flat(),
      fit.unscaledCovariance.flat(),
      fit.residualSumOfSquares,
      fit.leverages,
      fit.residuals,
    ].flat();
    expect(found).toHaveLength(truth.length);
    found.forEach((value, i) => {
      expectDigits(value, truth[i] ?? Number.NaN, 10, i);
    });
    expect(fit.leverages.reduce((a, b) => a + b, 0)).toBeCloseTo(3, 13);
  });

  it("keeps digits that the normal equations would lose", () => {
    // The last two columns differ in the 7th digit, so the normal equations would keep about two digits.
    const close = [1, 2, 3, 4, 5].map((t) => [1, t, t + 1e-7 * t * t]);
    const exact = close.map(([a = 0, b = 0, c = 0]) => 2 * a - b + 3 * c);
    const { coefficients } = leastSquares(close, exact);
    expect(coefficients[1]).toBeCloseTo(-1, 6);
    expect(coefficients[2]).toBeCloseTo(3, 6);
  });

  it("knows no scatter without degrees of freedom", () => {
    const fit = leastSquares(
      [
        [1, 1],
        [1, 2],
      ],
      [3, 5],
    );
    expect(fit.coefficients.map((c) => c.toFixed(12))).toEqual([
      "1.000000000000",
      "2.000000000000",
    ]);
    expect(fit).toMatchObject({ df: 0, standardErrors: null, covariance: null });
  });

  it("names the column that is a combination of the others", () => {
    expect(() =>
      leastSquares(
        [
          [1, 2, 3],
          [1, 4, 5],
          [1, 6, 7],
          [1, 9, 10],
        ],
        [1, 2, 3, 4],
      ),
    ).toThrow("column 3 is a combination of the columns before it");
    expect(() =>
      leastSquares(
        [
          [1, 0],
          [1, 0],
        ],
        [1, 2],
      ),
    ).toThrow("column 2 is");
    expect(() => leastSquares([[0], [0]], [1, 2])).toThrow("column 1 is");
  });

  it("takes columns of very different size", () => {
    const fit = leastSquares(
      [
        [1, 1e-9],
        [1, 2e-9],
        [1, 4e-9],
      ],
      [3, 5, 9],
    );
    expect(fit.coefficients[1]).toBeCloseTo(2e9, -1);
  });

  it("leaves the rows it is given alone", () => {
    const frozen = rows.map((row) => Object.freeze([...row]));
    leastSquares(Object.freeze(frozen), Object.freeze([...y]), Object.freeze([...weights]));
    expect(frozen).toEqual(rows);
  });

  it("refuses shapes that do not fit together and values out of range", () => {
    expect(() => leastSquares([], [])).toThrow(NumericalError);
    expect(() => leastSquares([], [])).toThrow("no columns to fit");
    expect(() => leastSquares([[1, 2]], [1])).toThrow("1 rows cannot tell 2 coefficients");
    expect(() => leastSquares([[1], [2]], [1])).toThrow("y has 1 values; it needs 2");
    expect(() => leastSquares([[1], [2, 3]], [1, 2])).toThrow("row 2 has 2 values; it needs 1");
    expect(() => leastSquares([[1], [2]], [1, 2], [1])).toThrow("weights has 1 values");
    expect(() => leastSquares([[1], [Number.NaN]], [1, 2])).toThrow("row 2, column 1 is NaN");
    expect(() => leastSquares([[1], [2]], [1, Number.POSITIVE_INFINITY])).toThrow(
      "y 2 is Infinity",
    );
    expect(() => leastSquares([[1], [2]], [1, 2], [1, -1])).toThrow("weight 2 is -1");
  });
});
