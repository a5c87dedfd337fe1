import { describe, expect, it } from "vitest";
import {
  combinedDf,
  pooledVariance,
  sampleOf,
  varianceOfMean,
} from "../../src/statistics/sample.ts";
import { evalR } from "../support/webr.ts";

const first = [5.1, 6.3, 4.9, 7.2];
const second = [8.8, 9.9];

describe("samples", () => {
  it("have R's mean and var, and a variance of the mean that shrinks with their number", async () => {
    const [mean = 0, variance = 0] = await evalR("c(mean(a), var(a))", { a: first });
    const sample = sampleOf(first);
    expect(sample.n).toBe(4);
    expect(sample.mean).toBeCloseTo(mean, 13);
    expect(sample.variance).toBeCloseTo(variance, 13);
    expect(varianceOfMean(sample)).toBeCloseTo(variance / 4, 13);
  });

  it("do not scatter where values differ by rounding only", () => {
    expect(sampleOf([0.1 + 0.2, 0.3, 0.3]).variance).toBe(0);
    expect(sampleOf([0.3, 0.3 + 1e-9, 0.3]).variance).toBeGreaterThan(0);
  });

  it("are pooled as R's residual mean square, one value adding nothing to it", async () => {
    const [variance = 0] = await evalR("(3 * var(a) + var(b)) / 4", { a: first, b: second });
    const samples = [...[first, second].map(sampleOf), { n: 1, mean: 3, variance: 0 }];
    const pooled = pooledVariance(samples);
    expect(pooled.variance).toBeCloseTo(variance, 13);
    expect(pooled.df).toBe(4);
    expect(pooledVariance([sampleOf(second)]).df).toBe(1);
  });

  it("have Welch's degrees of freedom together, whatever the unit", async () => {
    const [wanted = 0] = await evalR("t.test(a, b)$parameter", { a: first, b: second });
    const parts = [first, second].map((values) => ({
      variance: varianceOfMean(sampleOf(values)),
      df: values.length - 1,
    }));
    expect(combinedDf(parts)).toBeCloseTo(wanted, 10);
    const tiny = parts.map((part) => ({ ...part, variance: part.variance * 1e-200 }));
    expect(combinedDf(tiny)).toBeCloseTo(wanted, 10);
    expect(
      combinedDf([
        { variance: 0, df: 2 },
        { variance: 3, df: 5 },
      ]),
    ).toBeCloseTo(5, 12);
  });
});
