import { describe, expect, it } from "vitest";
import { canPriceSkip, leastChanceOfSkip, statedChance } from "../../src/model/skip-chance.ts";

describe("the least chance of a skipped fill being off", () => {
  const after = (fills: number) => leastChanceOfSkip({ ownDf: fills - 1 });

  it("is 5 % from three to five fills, and any from six on", () => {
    expect([3, 4, 5].map(after)).toEqual([0.05, 0.05, 0.05]);
    expect([6, 7, 30].map(after)).toEqual([null, null, null]);
  });

  it("is 5 % where the spread is another meter's, however well that knows it", () => {
    expect(leastChanceOfSkip({ ownDf: 0 })).toBe(0.05);
  });

  it("takes the place of a smaller chance only", () => {
    expect(statedChance(0.013, 0.05)).toBe(0.05);
    expect(statedChance(0.31, 0.05)).toBe(0.31);
    expect(statedChance(0.013, null)).toBe(0.013);
  });
});

it("is priced from two degrees of freedom of the meter's own on", () => {
  expect([0, 1, 1.9, 2, 3].map((ownDf) => canPriceSkip({ ownDf }))).toEqual([
    ...[false, false, false, true, true],
  ]);
});
