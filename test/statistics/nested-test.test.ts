import { describe, expect, it } from "vitest";
import { nestedTest } from "../../src/statistics/nested-test.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

describe("whether terms are needed", () => {
  const smaller = { residualSumOfSquares: 12.5, df: 9 };
  const larger = { residualSumOfSquares: 7.5, df: 6 };

  it("is the F test of the gain, its p from R's pf", async () => {
    const [p = 0] = await evalR("pf((5 / 3) / (7.5 / 6), 3, 6, lower.tail = FALSE)");
    const found = present(nestedTest(smaller, larger, [1, 2, 3]));
    expect(found).toMatchObject({ df1: 3, df2: 6 });
    expect(found.statistic).toBeCloseTo(5 / 3 / (7.5 / 6), 13);
    expect(found.pValue).toBeCloseTo(p, 12);
  });

  it("gains nothing, and no less, where rounding leaves the larger model the worse one", () => {
    const worse = { residualSumOfSquares: 12.5 + 1e-12, df: 8 };
    expect(nestedTest(smaller, worse, [1, 2])).toMatchObject({ statistic: 0, pValue: 1 });
  });

  it("is not asked without degrees of freedom or scatter that are left", () => {
    expect(nestedTest(smaller, { residualSumOfSquares: 1, df: 1 }, [1])?.df2).toBe(1);
    expect(nestedTest(smaller, { residualSumOfSquares: 1, df: 0 }, [1])).toBeNull();
    expect(nestedTest(smaller, { residualSumOfSquares: 1e-30, df: 3 }, [1, 2])).toBeNull();
  });
});
