import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { varianceRatioTest } from "../../src/statistics/variance-ratio.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const first = [4.1, 4.4, 3.9, 4.6, 4.0];
const second = [4.2, 4.3, 4.25, 4.35, 4.15, 4.28, 4.31];

function varianceOf(values: readonly number[]) {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { variance: squares / (values.length - 1), df: values.length - 1 };
}

describe("varianceRatioTest", () => {
  it("gives the F test and interval that R's var.test gives", async () => {
    const test = varianceRatioTest(varianceOf(first), varianceOf(second), 0.9);
    const [f, p, lower, upper] = await evalR(
      "r <- var.test(a, b, conf.level = 0.9); c(r$statistic, r$p.value, sqrt(r$conf.int))",
      { a: first, b: second },
    );
    expect(digits(test.statistic, present(f))).toBeGreaterThan(12);
    expect(digits(test.pValue, present(p))).toBeGreaterThan(11);
    expect(digits(test.lower, present(lower))).toBeGreaterThan(11);
    expect(digits(test.upper, present(upper))).toBeGreaterThan(11);
  });

  it("gives the same p when the two change places", () => {
    const [a, b] = [varianceOf(first), varianceOf(second)];
    expect(varianceRatioTest(a, b, 0.95).pValue).toBeCloseTo(
      varianceRatioTest(b, a, 0.95).pValue,
      12,
    );
  });

  it("finds nothing in equal variances", () => {
    const { pValue, ratio } = varianceRatioTest(
      { variance: 2, df: 6 },
      { variance: 2, df: 6 },
      0.95,
    );
    expect(pValue).toBeCloseTo(1, 12);
    expect(ratio).toBe(1);
  });

  it("refuses a variance of zero", () => {
    expect(() => varianceRatioTest({ variance: 0, df: 2 }, { variance: 1, df: 2 }, 0.95)).toThrow(
      NumericalError,
    );
  });
});
