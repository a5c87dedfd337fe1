import fc from "fast-check";
import { sum } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { expectedAbsolute, expectedSquare } from "../../src/statistics/expected-loss.ts";
import {
  lawsWithoutScatter,
  meanOver,
  withoutScatter,
} from "../../src/statistics/without-scatter.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const fills = { mean: 0, standardDeviation: 0.011, n: 6, df: 5 };
const scatter = { standardDeviation: 0.0087, df: 12 };
const absolute = (sample: typeof fills, inside: typeof scatter) =>
  present(meanOver(lawsWithoutScatter(sample, inside), expectedAbsolute));
const byT = ({ mean, standardDeviation, n, df }: typeof fills) => ({
  location: mean,
  scale: standardDeviation * Math.sqrt(1 + 1 / n),
  df,
});

describe("a spread with the scatter taken out", () => {
  it("is the difference of the variances, and zero where there is none", () => {
    expect(withoutScatter(5, 3, 4)).toEqual({ own: 16, ofMean: 25 / 4 });
    // The mean errs by the scatter, whatever the fills happen to agree in.
    expect(withoutScatter(3, 5, 4)).toEqual({ own: 0, ofMean: 25 / 4 });
  });

  it.each([
    [0, 0.011, 6, 5, 0.0087, 12],
    [0, 0.006, 9, 8, 0.0087, 18],
    [0.02, 0.011, 3, 2, 0.0087, 6],
    [-0.01, 0.03, 4, 3, 0.0087, 8],
  ])(
    "mean error at %s, spread %s of %i fills on %i df, scatter %s on %i: integrate() twice in R",
    async (mean, s, n, df, c, dfc) => {
      const [expected] = await evalR(
        `given <- function(x, y) {
         v <- df * s^2 / x; w <- dfc * c^2 / y
         sd <- sqrt(pmax(0, v - w) + pmax(v, w) / n)
         2 * sd * dnorm(mean / sd) + mean * (2 * pnorm(mean / sd) - 1)
       }
       over <- function(y) sapply(y, function(one)
         integrate(function(p) given(qchisq(p, df), one), 0, 1, rel.tol = 1e-7, subdivisions = 500)$value)
       integrate(function(q) over(qchisq(q, dfc)), 0, 1, rel.tol = 1e-6)$value`,
        { mean, s, n, df, c, dfc },
      );
      const found = absolute(
        { mean, standardDeviation: s, n, df },
        { standardDeviation: c, df: dfc },
      );
      expect(Math.abs(found / present(expected) - 1)).toBeLessThan(1e-3);
    },
  );

  it("becomes Student's t as the scatter vanishes", () => {
    for (const n of [3, 4, 6, 12]) {
      const sample = { ...fills, n, df: n - 1 };
      const t = present(expectedAbsolute(byT(sample)));
      expect(
        Math.abs(absolute(sample, { ...scatter, standardDeviation: 1e-7 }) / t - 1),
      ).toBeLessThan(3e-4);
    }
  });

  it("is never without width: no less than what the scatter makes the mean err by", () => {
    const size = fc.double({ min: 1e-4, max: 0.1, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.integer({ min: 3, max: 12 }), (s, c, n) => {
        const sample = { mean: 0, standardDeviation: s, n, df: n - 1 };
        const found = absolute(sample, { standardDeviation: c, df: 2 * n });
        const ofMean = Math.sqrt(2 / Math.PI / n) * Math.max(s, c);
        expect(found).toBeGreaterThan(0.99 * ofMean);
      }),
      { numRuns: 40 },
    );
  });

  it("weighs its laws to 1, and has no mean where one of them has none", () => {
    const laws = lawsWithoutScatter(fills, scatter);
    expect(sum(laws.map(({ weight }) => weight))).toBeCloseTo(1, 12);
    const flat = { law: { ...byT(fills), df: 2 }, weight: 0.5 };
    expect(meanOver([flat], expectedSquare)).toBeNull();
  });

  it("refuses a scatter of nothing, and one that rests on nothing", () => {
    for (const wrong of [
      { ...scatter, standardDeviation: 0 },
      { ...scatter, df: 0 },
    ])
      expect(() => lawsWithoutScatter(fills, wrong)).toThrow(NumericalError);
  });
});
