import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dfOfInterval } from "../../src/model/interval-df.ts";
import { tEstimate, unknownEstimate } from "../../src/model/t-estimate.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function withHalf(half: number, standardError: number, df: number, level = 0.95) {
  const about = "this fill's delivery" as const;
  return {
    value: 0.3,
    unit: "kg/turn" as const,
    standardError,
    df,
    interval: { lower: 0.3 - half, upper: 0.3 + half, level, about },
  };
}

describe("degrees of freedom of an interval", () => {
  it("are those of Student's t where the interval is one", () => {
    fc.assert(
      fc.property(positive(0.3, 300), positive(0.5, 0.99), (df, level) => {
        const estimate = tEstimate(0.3, "kg/turn", 0.004, df, level, "next fill");
        expect(present(dfOfInterval(estimate)) / df).toBeCloseTo(1, 6);
      }),
    );
  });

  it("are more where the scale's reading has the normal quantile, as R's t finds them", async () => {
    // Scatter of 3 df and reading of half its size.
    const half = Math.hypot(3.182446305 * 0.004, 1.959963985 * 0.002);
    const standardError = Math.hypot(0.004, 0.002);
    const df = present(dfOfInterval(withHalf(half, standardError, 3)));
    expect(df).toBeGreaterThan(3);
    const [t] = await evalR("qt(0.975, df)", { df });
    expect(digits(present(t) * standardError, half)).toBeGreaterThan(9);
  });

  it("are without end where the interval is the normal one or narrower", () => {
    expect(dfOfInterval(withHalf(1.9599639845 * 0.004, 0.004, 3))).toBe(Number.POSITIVE_INFINITY);
    expect(dfOfInterval(withHalf(0.001, 0.004, 3))).toBe(Number.POSITIVE_INFINITY);
  });

  it("are few, never none, where the interval reaches far over the standard error", () => {
    expect(present(dfOfInterval(withHalf(0.1, 0.001, 8)))).toBeLessThan(1);
    expect(present(dfOfInterval(withHalf(1e300, 1e-3, 8)))).toBeGreaterThan(0);
  });

  it("are not known without an interval", () => {
    expect(dfOfInterval(unknownEstimate(0.3, "kg/turn"))).toBeNull();
  });
});

it("are of the wider side, and of the side that is known", () => {
  const plain = withHalf(0.01, 0.004, 5);
  const { lower, upper } = plain.interval;
  const at = (changed: { lower?: number | null; upper?: number | null }) =>
    present(dfOfInterval({ ...plain, interval: { ...plain.interval, ...changed } }));
  const both = at({});
  expect(at({ lower: null })).toBeCloseTo(both, 9);
  expect(at({ upper: null })).toBeCloseTo(both, 9);
  expect(at({ lower: lower + 0.003 })).toBeCloseTo(both, 9);
  expect(at({ upper: upper - 0.003 })).toBeCloseTo(both, 9);
  expect(at({ upper: upper + 0.003 })).toBeLessThan(both);
  expect(dfOfInterval({ ...plain, df: null })).toBeNull();
  expect(dfOfInterval({ ...plain, standardError: null })).toBeNull();
});
