import { mean, sum } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { bartlettTest } from "../../src/statistics/bartlett.ts";
import { present, printedTolerance, reference } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

describe("bartlettTest", () => {
  // NIST/SEMATECH e-Handbook 1.3.5.7: gear diameters, 10 batches of 10.
  it("reaches the handbook's statistic for the gear data", () => {
    const set = reference("comparison/levene-bartlett-gear.json");
    const values = present(set.data.diameter ?? set.data.y);
    const batches = present(set.data.batch ?? set.data.group);
    const groups = [...new Set(batches)].map((batch) => {
      const own = values.filter((_, i) => batches[i] === batch);
      return { sumOfSquares: sum(own.map((v) => (v - mean(own)) ** 2)), df: own.length - 1 };
    });
    const test = present(bartlettTest(groups));
    const printed = present(set.certified.bartlett_T);
    expect(Math.abs(test.statistic - Number(printed))).toBeLessThanOrEqual(
      printedTolerance(printed) + 1e-12,
    );
    expect(test.df).toBe(9);
  });

  it("finds nothing in groups that scatter exactly alike", () => {
    const test = present(bartlettTest([1, 2, 3].map((df) => ({ sumOfSquares: 2 * df, df }))));
    expect(test.statistic).toBeCloseTo(0, 12);
    expect(test.pValue).toBeCloseTo(1, 12);
  });

  it("passes over groups without scatter and says nothing about fewer than two", () => {
    expect(bartlettTest([{ sumOfSquares: 1, df: 2 }])).toBeNull();
    expect(
      bartlettTest([
        { sumOfSquares: 1, df: 2 },
        { sumOfSquares: 0, df: 3 },
      ]),
    ).toBeNull();
  });

  it("refuses a negative sum of squares", () => {
    expect(() => bartlettTest([{ sumOfSquares: -1, df: 2 }])).toThrow("sum of squares is -1");
  });
});

it.each([2, 3, 4])("is R's bartlett.test for %i groups of unequal size", async (count) => {
  const samples = [
    [5.1, 4.2, 6.6, 5.9],
    [7.1, 7.2, 7.15],
    [3, 9, 4, 8, 1],
    [2.2, 2.9],
  ].slice(0, count);
  const [statistic = 0, df = 0, p = 0] = await evalR(
    "r <- bartlett.test(y, g); c(r$statistic, r$parameter, r$p.value)",
    { y: samples.flat(), g: samples.flatMap((own, i) => own.map(() => i)) },
  );
  const groups = samples.map((own) => ({
    sumOfSquares: sum(own.map((value) => (value - mean(own)) ** 2)),
    df: own.length - 1,
  }));
  const found = present(bartlettTest([...groups, { sumOfSquares: 3, df: 0 }]));
  expect(found.statistic).toBeCloseTo(statistic, 10);
  expect(found.df).toBe(df);
  expect(found.pValue).toBeCloseTo(p, 11);
});
