import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { oneWayAnova } from "../../src/statistics/anova.ts";
import { expectDigits } from "../support/distributions.ts";
import { bestReachable, certified, certifiedSet } from "../support/strd.ts";
import { evalR } from "../support/webr.ts";

describe("one-way analysis of variance of the NIST reference data sets", () => {
  it.each(["sirstv", "smls01", "smls02", "smls03", "smls04", "smls06", "smls07", "smls09"])(
    "is right for %s to what doubles can hold",
    (name) => {
      const set = certifiedSet(`anova-${name}`);
      const table = oneWayAnova(set.data.groups);
      expect(table.betweenDf).toBe(certified(set, "between_df"));
      expect(table.withinDf).toBe(certified(set, "within_df"));
      const residual = Math.sqrt(table.withinMeanSquare ?? Number.NaN);
      expectDigits(table.statistic ?? Number.NaN, bestReachable(`anova-${name}`, "F"), 14, name);
      expectDigits(residual, bestReachable(`anova-${name}`, "residual_sd"), 14, name);
      // Twelve equal leading digits leave four of the certified ones in data stored as doubles, six leave ten.
      const digitsHeld =
        { smls07: 4.4, smls09: 4.1, smls04: 10.4, smls06: 10.1, sirstv: 13 }[name] ?? 14.5;
      expectDigits(table.statistic ?? Number.NaN, certified(set, "F"), digitsHeld, name);
    },
  );

  it("has every entry of the table for SiRstv", () => {
    const set = certifiedSet("anova-sirstv");
    const table = oneWayAnova(set.data.groups);
    expectDigits(table.betweenSumOfSquares, certified(set, "between_ss"), 12.5, "between_ss");
    expectDigits(table.betweenMeanSquare, certified(set, "between_ms"), 12.5, "between_ms");
    expectDigits(table.withinSumOfSquares, certified(set, "within_ss"), 13, "within_ss");
    expectDigits(table.withinMeanSquare ?? 0, certified(set, "within_ms"), 13, "within_ms");
  });
});

describe("one-way analysis of variance", () => {
  it("gives R's table for groups of unequal size", async () => {
    const groups = [
      [4.1, 3.9, 4.6],
      [5.2, 5],
      [3.3, 3.9, 4.2, 3.1],
    ];
    const table = oneWayAnova(groups);
    const truth = await evalR(
      "a <- anova(lm(y ~ factor(g))); c(a[['Sum Sq']], a[['F value']][1], a[['Pr(>F)']][1])",
      { y: groups.flat(), g: groups.flatMap((group, i) => group.map(() => i)) },
    );
    const { betweenSumOfSquares, withinSumOfSquares, statistic, pValue } = table;
    [betweenSumOfSquares, withinSumOfSquares, statistic, pValue].forEach((value, i) => {
      expectDigits(value ?? Number.NaN, truth[i] ?? Number.NaN, 12, i);
    });
    expect(table.observations).toBe(9);
    expect(table.groupMeans).toEqual([4.2, 5.1, 3.625].map((m) => expect.closeTo(m, 14)));
  });

  it("does not mind a large common part of the values", () => {
    const value = fc.integer({ min: -50, max: 50 });
    const groups = fc.array(fc.array(value, { minLength: 2, maxLength: 5 }), {
      minLength: 2,
      maxLength: 5,
    });
    fc.assert(
      fc.property(groups, (whole) => {
        const near = oneWayAnova(whole);
        const far = oneWayAnova(whole.map((group) => group.map((v) => v + 1e12)));
        expect(far.withinSumOfSquares).toBeCloseTo(near.withinSumOfSquares, 8);
        expect(far.betweenSumOfSquares).toBeCloseTo(near.betweenSumOfSquares, 8);
      }),
    );
  });

  it("has no ratio where there is nothing to compare with", () => {
    const single = oneWayAnova([[1], [2], [4]]);
    expect(single).toMatchObject({ withinDf: 0, withinMeanSquare: null, statistic: null });
    const equal = oneWayAnova([
      [1, 1],
      [2, 2],
    ]);
    expect(equal).toMatchObject({ withinMeanSquare: 0, statistic: null, pValue: null });
    const equalToRounding = oneWayAnova([
      [0.2, 0.2, 0.2],
      [0.1 + 0.2, 0.3, 0.3],
    ]);
    expect(equalToRounding.withinMeanSquare).toBeGreaterThan(0);
    expect(equalToRounding).toMatchObject({ statistic: null, pValue: null });
    const meansEqualToo = oneWayAnova([
      [0.3, 0.3, 0.3],
      [0.1 + 0.2, 0.3, 0.3],
    ]);
    expect(meansEqualToo.withinMeanSquare).toBeGreaterThan(0);
    expect(meansEqualToo).toMatchObject({ statistic: null, pValue: null });
  });

  it("refuses fewer than two groups, an empty group and values that are not finite", () => {
    expect(() => oneWayAnova([[1, 2]])).toThrow(NumericalError);
    expect(() => oneWayAnova([[1, 2]])).toThrow("1 groups; at least 2 are needed");
    expect(() => oneWayAnova([[1, 2], []])).toThrow("group 2 is empty");
    expect(() => oneWayAnova([[1, 2], [Number.NaN]])).toThrow("group 2, value 1 is NaN");
  });
});
