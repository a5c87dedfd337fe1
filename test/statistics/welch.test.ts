import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { oneWayAnova } from "../../src/statistics/anova.ts";
import { sampleOf } from "../../src/statistics/sample.ts";
import { differenceOfMeans, welchOneWay } from "../../src/statistics/welch.ts";
import handbook from "../reference/comparison/games-howell-recomputed.json" with { type: "json" };
import sleep from "../reference/comparison/welch-sleep.json" with { type: "json" };
import { welchTest } from "../support/comparisons.ts";

const { x1, x2 } = sleep.data;
const groups = [handbook.data.g1, handbook.data.g2, handbook.data.g3, handbook.data.g4];

describe("Welch's t test on Student's sleep data (R's help page of t.test; from memory, agrees with R)", () => {
  const test = welchTest(sampleOf(x1), sampleOf(x2));
  const expected = sleep.recomputed_in_R;

  it.each([
    ["statistic", test.statistic, expected.welch_t],
    ["degrees of freedom", test.df, expected.welch_df],
    ["p-value", test.pValue, expected.welch_p],
    ["lower limit", test.lower, expected.welch_lower],
    ["upper limit", test.upper, expected.welch_upper],
  ])("has R's %s", (_, found, wanted) => {
    expect(found).toBeCloseTo(wanted, 12);
  });

  it("rounds to the digits that R prints", () => {
    expect(test.statistic.toFixed(4)).toBe(sleep.certified.welch_t);
    expect(test.df.toFixed(3)).toBe(sleep.certified.welch_df);
    expect(test.pValue.toFixed(5)).toBe(sleep.certified.welch_p);
  });

  it("becomes the paired t test when given the differences", () => {
    const pairs = sampleOf(x1.map((value, i) => value - (x2[i] ?? 0)));
    const paired = differenceOfMeans(pairs.mean, Math.sqrt(pairs.variance / pairs.n), 9, 0.95);
    expect(paired.statistic).toBeCloseTo(expected.paired_t, 12);
    expect(paired.pValue).toBeCloseTo(expected.paired_p, 13);
    expect(paired.lower).toBeCloseTo(expected.paired_lower, 12);
    expect(paired.upper).toBeCloseTo(expected.paired_upper, 12);
  });
});

describe("Welch's one-way test", () => {
  it("agrees with R's oneway.test on the handbook's four groups", () => {
    const test = welchOneWay(groups.map(sampleOf));
    expect(test.statistic).toBeCloseTo(handbook.recomputed_in_R.welch_F, 11);
    expect(test.df2).toBeCloseTo(handbook.recomputed_in_R.welch_df2, 11);
    expect(test.pValue).toBeCloseTo(handbook.recomputed_in_R.welch_p, 13);
  });

  it("is the square of Welch's t for two groups", () => {
    const [a, b] = [sampleOf(x1), sampleOf(x2)];
    expect(welchOneWay([a, b]).statistic).toBeCloseTo(welchTest(a, b).statistic ** 2, 12);
    expect(welchOneWay([a, b]).pValue).toBeCloseTo(welchTest(a, b).pValue, 13);
  });

  it("comes near the ordinary analysis of variance when large groups have one spread", () => {
    const wide = Array.from({ length: 400 }, (_, i) => Math.sin(i * 12.9898) * 43758.5453);
    const noise = wide.map((value) => value - Math.floor(value));
    const three = [0, 0.05, 0.1].map((shift, g) =>
      noise.slice(g * 130, g * 130 + 130).map((value) => value + shift),
    );
    const welch = welchOneWay(three.map(sampleOf)).statistic;
    const classical = oneWayAnova(three).statistic ?? Number.NaN;
    expect(Math.abs(welch / classical - 1)).toBeLessThan(0.05);
  });
});

describe("groups that do not scatter", () => {
  const still = sampleOf([2, 2, 2]);

  it("leave no degrees of freedom to know an error by when neither scatters", () => {
    expect(() => welchTest(still, sampleOf([3, 3]))).toThrow(NumericalError);
  });

  it("leave the error to the group that does", () => {
    const test = welchTest(still, sampleOf([1, 3]));
    expect(test.standardError).toBe(1);
    expect(test.df).toBe(1);
  });

  it("are refused by the one-way test", () => {
    expect(() => welchOneWay([still, sampleOf([1, 3])])).toThrow("does not scatter");
  });
});
