import jstat from "jstat";
import { describe, expect, it } from "vitest";
import { chiSquaredLowerTail } from "../../src/numeric/distributions/chi-squared.ts";
import { fUpperTail } from "../../src/numeric/distributions/f.ts";
import { leastSquares } from "../../src/numeric/least-squares.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { oneWayAnova } from "../../src/statistics/anova.ts";
import { weightedLine } from "../../src/statistics/straight-line.ts";
import { digits, present } from "../support/reference.ts";

// A second way to the same answers, by a package written by others; it is accurate enough where it is asked here.
// Why it is not the first way: on shifted x its least squares loses all but 2 digits, its t and F tails fall to 6 and
// 3 digits (reports/accuracy.md has ours).
describe("a second route by jstat", () => {
  const random = randomStream(11);
  const x = Array.from({ length: 12 }, (_, i) => 5 + i);
  const y = x.map((value) => 0.3 * value + 0.1 * random.normal());

  it("agrees on a straight line and on several variables at once", () => {
    const [intercept, slope] = jstat.jStat.lstsq(
      x.map((value) => [1, value]),
      y,
    );
    const line = weightedLine(x, y);
    expect(digits(line.slope, present(slope))).toBeGreaterThan(9);
    expect(digits(line.intercept, present(intercept))).toBeGreaterThan(7);

    const rows = x.map((value, i) => [1, value, Math.sin(i)]);
    const theirs = jstat.jStat.lstsq(rows, y);
    leastSquares(rows, y).coefficients.forEach((coefficient, i) => {
      expect(digits(coefficient, present(theirs[i]))).toBeGreaterThan(6);
    });
  });

  it("agrees on a one-way analysis of variance", () => {
    const groups = [0, 1, 2].map((group) =>
      Array.from({ length: 6 }, () => group * 0.4 + random.normal()),
    );
    const { statistic } = oneWayAnova(groups);
    expect(digits(present(statistic), jstat.jStat.anovafscore(...groups))).toBeGreaterThan(11);
    expect(fUpperTail(present(statistic), 2, 15)).toBeCloseTo(jstat.jStat.anovaftest(...groups), 6);
  });

  it("agrees on chi-squared at degrees of freedom that catches have", () => {
    for (const df of [1, 3, 12, 60])
      for (const value of [0.5 * df, df, 1.6 * df])
        expect(
          digits(chiSquaredLowerTail(value, df), jstat.jStat.chisquare.cdf(value, df)),
        ).toBeGreaterThan(9);
  });
});
