import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { studentTTwoSided } from "../../src/numeric/distributions/student-t.ts";
import { nestedTest } from "../../src/statistics/nested-test.ts";
import { predict } from "../../src/statistics/prediction.ts";
import { regression } from "../../src/statistics/regression.ts";
import { lineAt, weightedLine } from "../../src/statistics/straight-line.ts";
import draperSmith from "../reference/regression/draper-smith-lack-of-fit.json" with {
  type: "json",
};
import arsenic from "../reference/regression/inverse-prediction-arsenic.json" with { type: "json" };
import norris from "../reference/strd/linear-norris.json" with { type: "json" };
import { digits, present } from "../support/reference.ts";

const rowsOf = (x: readonly number[]) => x.map((value) => [value]);

describe("NIST StRD Norris, certified to 15 digits", () => {
  const fit = regression(["x"], rowsOf(norris.data.x), norris.data.y);
  const { estimate, sd_of_estimate } = norris.certified;

  it.each([
    ["slope", fit.slopes[0]?.value, estimate.B1, 13],
    ["slope error", fit.slopes[0]?.standardError, sd_of_estimate.B1, 12],
    ["intercept", fit.intercept.value, estimate.B0, 11],
    ["intercept error", fit.intercept.standardError, sd_of_estimate.B0, 12],
    ["residual deviation", fit.residualStandardDeviation, norris.certified.residual_sd, 12],
    ["R²", fit.rSquared, norris.certified.r_squared, 14],
  ])("has the certified %s", (_, found, certified, least) => {
    expect(digits(found ?? Number.NaN, Number(certified))).toBeGreaterThanOrEqual(least);
  });
});

describe("Draper and Smith's lack-of-fit data (from memory, agrees with R)", () => {
  const fit = regression(["x"], rowsOf(draperSmith.data.x), draperSmith.data.y);

  it("prints the book's line", () => {
    expect(fit.intercept.value.toFixed(3)).toBe(draperSmith.certified.intercept);
    expect(fit.slopes[0]?.value.toFixed(3)).toBe(draperSmith.certified.slope);
    expect(fit.residualSumOfSquares).toBeCloseTo(draperSmith.recomputed_in_R.residual_ss, 10);
  });

  it("tests lack of fit as the gain of one mean a level over the line", () => {
    const { pure_error_df, lack_of_fit_F, lack_of_fit_p } = draperSmith.recomputed_in_R;
    const pure = {
      residualSumOfSquares: draperSmith.recomputed_in_R.pure_error_ss,
      df: pure_error_df,
    };
    const test = nestedTest(fit, pure, draperSmith.data.y);
    expect(test?.statistic).toBeCloseTo(lack_of_fit_F, 10);
    expect(test?.pValue).toBeCloseTo(lack_of_fit_p, 10);
  });
});

describe("prediction", () => {
  const { x, y } = arsenic.data;
  const fit = regression(["x"], rowsOf(x), y);

  it("agrees with the straight line computed another way (arsenic data of Graybill and Iyer)", () => {
    const line = weightedLine(x, y);
    const place = predict(fit, [4.4]);
    expect(place.value).toBeCloseTo(lineAt(line, 4.4), 13);
    const { residualStandardDeviation, sumOfWeights, sumOfSquaresX, meanX } = line;
    const error =
      (residualStandardDeviation ?? Number.NaN) *
      Math.sqrt(1 + 1 / sumOfWeights + (4.4 - meanX) ** 2 / sumOfSquaresX);
    // t(0.975, 30) = 2.042272, NIST/SEMATECH e-Handbook table 1.3.6.7.2 prints 2.042.
    const half = ((place.newUpper ?? 0) - (place.newLower ?? 0)) / 2;
    expect(half / error).toBeCloseTo(2.042272456, 8);
    expect(fit.residualStandardDeviation).toBeCloseTo(arsenic.recomputed_in_R.residual_sd, 12);
  });

  it("knows a place beyond the data, also where each variable is within its range", () => {
    const rows = [
      [0, 0],
      [1, 1.1],
      [2, 1.9],
      [3, 3.1],
      [4, 3.9],
    ];
    const plane = regression(["a", "b"], rows, [1, 2, 2.9, 4.2, 5]);
    expect(predict(plane, [2, 2]).extrapolates).toBe(false);
    expect(predict(plane, [3.8, 0.3]).extrapolates).toBe(true);
    for (const row of rows) expect(predict(plane, row).extrapolates).toBe(false);
  });

  it("has the observation's own leverage at its place, and leverages add up to the coefficients", () => {
    const at = fit.points[5];
    expect(predict(fit, [x[5] ?? 0]).leverage).toBeCloseTo(at?.leverage ?? 0, 14);
    expect(fit.points.reduce((sum, { leverage }) => sum + leverage, 0)).toBeCloseTo(2, 12);
  });
});

/** Whether two columns carry nearly the same information: the angle between them, about their means, is small. */
function nearlyCollinear(rows: readonly (readonly number[])[]): boolean {
  const centred = [0, 1].map((j) => {
    const column = rows.map((row) => row[j] ?? 0);
    const center = column.reduce((a, b) => a + b) / column.length;
    return column.map((value) => value - center);
  });
  const [a = [], b = []] = centred;
  const dot = (x: readonly number[], y: readonly number[]) =>
    x.reduce((sum, value, i) => sum + value * (y[i] ?? 0), 0);
  return dot(a, b) ** 2 > 0.999 * dot(a, a) * dot(b, b);
}

describe("properties of a fit on two variables", () => {
  const value = fc.double({ min: -10, max: 10, noNaN: true });
  const observation = fc.tuple(value, value, value);
  const data = fc.array(observation, { minLength: 6, maxLength: 12 });

  it("leaves residuals that no variable can explain further", () => {
    fc.assert(
      fc.property(data, (all) => {
        const rows = all.map(([a, b]) => [a, b]);
        const varies = [0, 1].every((j) => {
          const column = rows.map((row) => row[j] ?? 0);
          return Math.max(...column) - Math.min(...column) > 0.1;
        });
        fc.pre(varies && !nearlyCollinear(rows));
        const fit = regression(
          ["a", "b"],
          rows,
          all.map(([, , y]) => y),
        );
        for (const column of [0, 1]) {
          const inner = fit.points.reduce(
            (sum, { residual }, i) => sum + residual * (rows[i]?.[column] ?? 0),
            0,
          );
          expect(Math.abs(inner)).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it("does not change its slopes when a large constant is added to a variable", () => {
    const rows = [
      [1, 4],
      [2, 1],
      [3, 5],
      [4, 2],
      [5, 9],
    ];
    const y = [2.1, 2.9, 4.2, 4.8, 7.1];
    const moved = rows.map(([a = 0, b = 0]) => [a + 2 ** 20, b]);
    const [plain, shifted] = [regression(["a", "b"], rows, y), regression(["a", "b"], moved, y)];
    shifted.slopes.forEach((slope, j) => {
      expect(slope.value).toBeCloseTo(plain.slopes[j]?.value ?? 0, 9);
      expect(slope.standardError).toBeCloseTo(plain.slopes[j]?.standardError ?? 0, 9);
    });
  });
});

describe("what cannot be known", () => {
  it("is null without degrees of freedom", () => {
    const fit = regression(["x"], [[1], [2]], [3, 5]);
    expect(fit.slopes[0]).toMatchObject({ value: 2, standardError: null, lower: null });
    expect(predict(fit, [3])).toMatchObject({ newLower: null, standardError: null });
  });

  it("explains nothing of y that vary by rounding only", () => {
    expect(regression(["x"], [[1], [2], [3]], [0.1 + 0.2, 0.3, 0.3]).rSquared).toBeNull();
  });

  it("is null when every point lies on the plane", () => {
    const fit = regression(["x"], [[1], [2], [3]], [3, 5, 7]);
    expect(fit.residualStandardDeviation).toBeNull();
    const [smaller, larger] = [
      { residualSumOfSquares: 1, df: 2 },
      { residualSumOfSquares: 1e-30, df: 1 },
    ];
    expect(nestedTest(smaller, larger, [3, 5, 7])).toBeNull();
  });

  it("is refused when variables cannot be told apart", () => {
    expect(() =>
      regression(
        ["a", "b"],
        [
          [1, 2],
          [2, 4],
          [3, 6],
          [4, 8],
        ],
        [1, 2, 3, 5],
      ),
    ).toThrow(NumericalError);
    expect(() => regression(["a"], [[1], [1], [1]], [1, 2, 3])).toThrow(NumericalError);
    expect(() => predict(regression(["x"], [[1], [2], [4]], [3, 5, 7]), [1, 2])).toThrow(
      "2 values for 1 variables",
    );
  });
});

describe("ends and tests of coefficients", () => {
  const rows = [
    [1, 4],
    [2, 1],
    [3, 5],
    [4, 2],
    [5, 9],
    [7, 3],
  ];
  const y = [2.1, 2.9, 4.2, 4.8, 7.1, 6.6];
  // t(0.95, 3) = 2.353363 and t(0.975, 3) = 3.182446 (NIST/SEMATECH e-Handbook 1.3.6.7.2: 2.353, 3.182).
  it.each([
    [0.9, 2.353363435],
    [0.95, 3.182446305],
  ])("lie t standard errors below and above at level %s", (level, t) => {
    const fit = regression(["a", "b"], rows, y, level);
    expect(fit.level).toBe(level);
    for (const one of [fit.centre, fit.intercept, ...fit.slopes]) {
      const error = present(one.standardError);
      expect(present(one.upper)).toBeCloseTo(one.value + t * error, 8);
      expect(present(one.lower)).toBeCloseTo(one.value - t * error, 8);
      expect(present(one.statistic)).toBeCloseTo(one.value / error, 12);
      expect(present(one.pValue)).toBeCloseTo(studentTTwoSided(one.value / error, 3), 12);
    }
    expect(fit.slopes.map(({ name }) => name)).toEqual(["a", "b"]);
    expect(regression(["a", "b"], rows, y)).toEqual(regression(["a", "b"], rows, y, 0.95));
  });

  it("are about the mean of y at the means of the variables, and the plane through it at zero", () => {
    const fit = regression(["a", "b"], rows, y);
    const mean = y.reduce((total, one) => total + one, 0) / 6;
    expect(fit.centre.value).toBeCloseTo(mean, 12);
    expect(fit.centre.standardError).toBeCloseTo(
      present(fit.residualStandardDeviation) / Math.sqrt(6),
      12,
    );
    expect(fit.origin).toEqual([expect.closeTo(22 / 6, 12), 4]);
    const [a, b] = fit.slopes.map(({ value }) => value);
    expect(fit.intercept.value).toBeCloseTo(mean - (present(a) * 22) / 6 - present(b) * 4, 11);
    expect(predict(fit, [0, 0]).value).toBeCloseTo(fit.intercept.value, 11);
    expect(predict(fit, [0, 0]).standardError).toBeCloseTo(
      present(fit.intercept.standardError),
      11,
    );
    fit.points.forEach(({ fitted, residual }, i) => {
      expect(fitted).toBeCloseTo(predict(fit, present(rows[i])).value, 11);
      expect(residual).toBeCloseTo(present(y[i]) - fitted, 11);
    });
    expect(fit.df).toBe(3);
  });

  it("of a prediction are asymmetrical by nothing but rounding, wider for one new observation", () => {
    const fit = regression(["a", "b"], rows, y, 0.9);
    const place = predict(fit, [2.5, 6]);
    const sd = present(fit.residualStandardDeviation);
    const of = (variance: number) => 2.353363435 * sd * Math.sqrt(variance);
    expect(place.meanLower).toBeCloseTo(place.value - of(place.leverage), 8);
    expect(place.meanUpper).toBeCloseTo(place.value + of(place.leverage), 8);
    expect(place.newLower).toBeCloseTo(place.value - of(1 + place.leverage), 8);
    expect(place.newUpper).toBeCloseTo(place.value + of(1 + place.leverage), 8);
    expect(place.standardError).toBeCloseTo(sd * Math.sqrt(place.leverage), 12);
    expect(place.largestLeverage).toBe(Math.max(...fit.points.map(({ leverage }) => leverage)));
  });

  it("are unknown, each of them, where one more point would be needed", () => {
    const fit = regression(["x"], [[1], [2]], [3, 5]);
    for (const one of [fit.centre, fit.intercept, ...fit.slopes]) {
      const { standardError, statistic, pValue, lower, upper } = one;
      expect([standardError, statistic, pValue, lower, upper]).toEqual([
        null,
        null,
        null,
        null,
        null,
      ]);
    }
    const { meanLower, meanUpper, newLower, newUpper, standardError } = predict(fit, [3]);
    expect([meanLower, meanUpper, newLower, newUpper, standardError]).toEqual([
      ...[null, null, null, null, null],
    ]);
    expect(regression(["x"], [[1], [2], [3]], [3, 5, 8]).residualStandardDeviation).not.toBeNull();
  });
});
