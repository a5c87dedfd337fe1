import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import {
  ratioEquivalence,
  testByStandardError,
  twoOneSidedTests,
  welchEquivalence,
} from "../../src/statistics/equivalence.ts";
import { sampleOf } from "../../src/statistics/sample.ts";
import { differenceOfMeans, welchTest } from "../../src/statistics/welch.ts";
import auc from "../reference/comparison/tost-ratio-paired-auc.json" with { type: "json" };
import sleep from "../reference/comparison/welch-sleep.json" with { type: "json" };

describe("ratio of geometric means of paired lognormal data (SAS/STAT User's Guide, TTEST, example 119.5)", () => {
  const logs = sampleOf(auc.data.test.map((value, i) => Math.log(value / (auc.data.ref[i] ?? 1))));
  const standardError = Math.sqrt(logs.variance / logs.n);
  const found = twoOneSidedTests(
    logs.mean,
    { lower: Math.log(0.8), upper: Math.log(1.25) },
    testByStandardError(logs.mean, standardError, logs.n - 1),
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
    const { lower, upper } = welchTest(a, b, 0.9);
    const wider = { lower: lower - 1e-9, upper: upper + 1e-9 };
    expect(welchEquivalence(a, b, wider).equivalent).toBe(true);
    expect(welchEquivalence(a, b, { ...wider, lower: lower + 1e-9 }).equivalent).toBe(false);
    expect(welchEquivalence(a, b, { ...wider, upper: upper - 1e-9 }).equivalent).toBe(false);
  });

  it("tests a ratio against a limit by the difference from that share of the second mean", () => {
    const [x, y] = [sampleOf([5.1, 5.3, 4.9]), sampleOf([5, 5.2, 5.1, 4.8])];
    const found = ratioEquivalence(x, y, { lower: 0.8, upper: 1.25 });
    const scaled = sampleOf([5, 5.2, 5.1, 4.8].map((value) => 0.8 * value));
    expect(found.lowerStatistic).toBeCloseTo(welchTest(x, scaled).statistic, 10);
    expect(found.equivalent).toBe(true);
  });

  it("gives one verdict whichever group comes first, when the margin is symmetric as a ratio", () => {
    const [x, y] = [sampleOf([5.1, 5.6, 4.7]), sampleOf([5.2, 5.6, 5.1, 4.8])];
    const limits = { lower: 1 / 1.08, upper: 1.08 };
    const [there, back] = [ratioEquivalence(x, y, limits), ratioEquivalence(y, x, limits)];
    expect(back.pValue).toBeCloseTo(there.pValue, 12);
  });
});

it("refuses limits in the wrong order and a standard error of zero", () => {
  expect(() => testByStandardError(1, 0, 3)).toThrow(NumericalError);
  const test = testByStandardError(1, 1, 3);
  expect(() => twoOneSidedTests(1, { lower: 1, upper: 1 }, test)).toThrow("must be below");
  expect(() => twoOneSidedTests(1, { lower: 0, upper: 1 }, test, 0.5)).toThrow("above 0.5");
});
