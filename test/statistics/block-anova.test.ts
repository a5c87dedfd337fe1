import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { blockAnova } from "../../src/statistics/block-anova.ts";
import sleep from "../reference/comparison/welch-sleep.json" with { type: "json" };

const { x1, x2 } = sleep.data;
const pairs = x1.map((value, i) => [value, x2[i] ?? 0]);

describe("analysis of complete blocks", () => {
  it("is the squared paired t test for two treatments (Student's sleep data, R)", () => {
    const { test } = blockAnova(pairs);
    expect(test?.statistic).toBeCloseTo(sleep.recomputed_in_R.paired_t ** 2, 10);
    expect(test?.pValue).toBeCloseTo(sleep.recomputed_in_R.paired_p, 13);
    expect([test?.df1, test?.df2]).toEqual([1, 9]);
  });

  it("does not see what a whole block shares", () => {
    const shifted = pairs.map((pair, i) => pair.map((value) => value + 100 * i));
    expect(blockAnova(shifted).test?.statistic).toBeCloseTo(
      blockAnova(pairs).test?.statistic ?? 0,
      8,
    );
  });

  it("splits the whole sum of squares without remainder", () => {
    const found = blockAnova(pairs);
    const values = pairs.flat();
    const center = values.reduce((a, b) => a + b) / values.length;
    const total = values.reduce((sum, value) => sum + (value - center) ** 2, 0);
    const parts = found.blockSumOfSquares + found.treatmentSumOfSquares + found.errorSumOfSquares;
    expect(parts).toBeCloseTo(total, 11);
  });

  it("makes no test where blocks leave no error at all", () => {
    const found = blockAnova([
      [1, 2],
      [3, 4],
      [5, 6],
    ]);
    expect(found.test).toBeNull();
    expect(found.treatmentMeans).toEqual([3, 4]);
  });

  it("refuses one block and blocks with a gap", () => {
    expect(() => blockAnova([[1, 2]])).toThrow(NumericalError);
    expect(() => blockAnova([[1, 2], [3]])).toThrow("block 2 has 1 values");
  });
});

it("tests by an error that is small, as long as it is more than rounding", () => {
  const rows = [
    [1, 2, 3],
    [2, 3, 4],
    [4, 5, 6],
  ];
  const disturbed = (by: number) =>
    rows.map((row, i) => row.map((value, j) => value + (i === j ? by : 0)));
  expect(blockAnova(disturbed(1e-7)).test).not.toBeNull();
  expect(blockAnova(disturbed(1e-13)).test).toBeNull();
});
