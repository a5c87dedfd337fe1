import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { type Limits, twoOneSidedTests } from "../../src/statistics/equivalence.ts";
import { sampleOf } from "../../src/statistics/sample.ts";
import { differenceOfMeans } from "../../src/statistics/welch.ts";
import auc from "../reference/comparison/tost-ratio-paired-auc.json" with { type: "json" };
import sleep from "../reference/comparison/welch-sleep.json" with { type: "json" };
import { welchTest } from "../support/comparisons.ts";

/** Test of a limit for an estimate with one standard error. */
const byStandardError =
  (estimate: number, standardError: number, df: number) => (limit: number) => ({
    statistic: (estimate - limit) / standardError,
    df,
  });

describe("ratio of geometric means of paired lognormal data (SAS/STAT User's Guide, TTEST, example 119.5)", () => {
  const logs = sampleOf(auc.data.test.map((value, i) => Math.log(value / (auc.data.ref[i] ?? 1))));
  const standardError = Math.sqrt(logs.variance / logs.n);
  const found = twoOneSidedTests(
    logs.mean,
    { lower: Math.log(0.8), upper: Math.log(1.25) },
    byStandardError(logs.mean, standardError, logs.n - 1),
  );
  const wanted = auc.recomputed_in_R;

  it("prints the published ratio and its 90 % interval", () => {
    const interval = differenceOfMeans(logs.mean, standardError, logs.n - 1, 0.9);
    expect(Math.exp(found.estimate).toFixed(4)).toBe(auc.certified.gmr);
    expect(Math.exp(interval.lower).toFixed(4)).toBe(auc.certified.lower90);
    expect(Math.exp(interval.upper).toFixed(4)).toBe(auc.certified.upper90);
  });

  it("agrees with both one-sided tests recomputed in R", () => {
    expect(found.lowerStatistic).toBeCloseTo(wanted.t_lower, 11);
    expect(found.upperStatistic).toBeCloseTo(wanted.t_upper, 11);
    expect(found.lowerPValue).toBeCloseTo(wanted.p_lower, 13);
    expect(found.upperPValue).toBeCloseTo(wanted.p_upper, 14);
    expect(found.pValue).toBeCloseTo(wanted.p_tost, 13);
    expect(found.equivalent).toBe(true);
  });
});

describe("equivalence of two means", () => {
  const [a, b] = [sampleOf(sleep.data.x1), sampleOf(sleep.data.x2)];

  it("is shown exactly when the 90 % interval lies within the limits", () => {
    const { difference, standardError, df, lower, upper } = welchTest(a, b, 0.9);
    const test = byStandardError(difference, standardError, df);
    const shown = (limits: Limits) => twoOneSidedTests(difference, limits, test).equivalent;
    const wider = { lower: lower - 1e-9, upper: upper + 1e-9 };
    expect(shown(wider)).toBe(true);
    expect(shown({ ...wider, lower: lower + 1e-9 })).toBe(false);
    expect(shown({ ...wider, upper: upper - 1e-9 })).toBe(false);
  });
});

it("refuses limits in the wrong order, a level that is none and an estimate that is no number", () => {
  const test = byStandardError(1, 1, 3);
  expect(() => twoOneSidedTests(Number.NaN, { lower: 0, upper: 1 }, test)).toThrow(NumericalError);
  expect(() => twoOneSidedTests(1, { lower: 1, upper: 1 }, test)).toThrow("must be below");
  expect(() => twoOneSidedTests(1, { lower: 0, upper: 1 }, test, 0.5)).toThrow("above 0.5");
});
