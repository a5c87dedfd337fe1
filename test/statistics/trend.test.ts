import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { trendTest } from "../../src/statistics/trend.ts";
import { present } from "../support/reference.ts";

const season = [0.412, 0.409, 0.405, 0.411, 0.402, 0.399, 0.401, 0.396];

describe("trendTest", () => {
  it("gives the same test whatever constant is added, and scales with the values", () => {
    const plain = present(trendTest(season));
    const shifted = present(trendTest(season.map((value) => value + 1e6)));
    const scaled = present(trendTest(season.map((value) => 1000 * value)));
    expect(shifted.statistic).toBeCloseTo(plain.statistic, 4);
    expect(scaled.slope).toBeCloseTo(1000 * plain.slope, 12);
    expect(scaled.pValue).toBeCloseTo(plain.pValue, 12);
  });

  it("turns its sign, and nothing else, when time runs backwards", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 3 }), (values) => {
        const [forward, backward] = [trendTest(values), trendTest(values.toReversed())];
        expect(forward === null).toBe(backward === null);
        if (forward === null || backward === null) return;
        expect(backward.slope).toBeCloseTo(-forward.slope, 8);
        expect(backward.pValue).toBeCloseTo(forward.pValue, 8);
      }),
    );
  });

  it("has its line pass through the mean at the middle of the season", () => {
    const { start, end } = present(trendTest(season));
    const mean = season.reduce((sum, value) => sum + value) / season.length;
    expect((start + end) / 2).toBeCloseTo(mean, 12);
  });

  it("has nothing to test against when the values lie on a line or agree", () => {
    expect(trendTest([0.1, 0.2, 0.3, 0.4])).toBeNull();
    expect(trendTest([0.3, 0.3, 0.3, 0.3])).toBeNull();
  });

  it("refuses values that are not numbers", () => {
    expect(() => trendTest([1, Number.NaN, 2])).toThrow(NumericalError);
  });
});
