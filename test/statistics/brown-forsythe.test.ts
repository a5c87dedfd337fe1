import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { brownForsythe, suitsBrownForsythe } from "../../src/statistics/brown-forsythe.ts";
import gear from "../reference/comparison/levene-bartlett-gear.json" with { type: "json" };

const { y, batch } = gear.data;
const groups = [...new Set(batch)].map((label) => y.filter((_, i) => batch[i] === label));

describe("Brown and Forsythe's test on the NIST gear diameters (e-Handbook 1.3.5.10)", () => {
  const found = brownForsythe(groups);

  it("prints the handbook's W", () => {
    expect(found.statistic?.toFixed(4)).toBe(gear.certified.levene_W);
  });

  it("agrees with R", () => {
    expect(found.statistic).toBeCloseTo(gear.recomputed_in_R.levene_W, 10);
    expect(found.pValue).toBeCloseTo(gear.recomputed_in_R.levene_p, 11);
    expect([found.betweenDf, found.withinDf]).toEqual([9, 90]);
  });
});

it("knows which sizes suit the medians", () => {
  expect(suitsBrownForsythe([6, 8])).toBe(true);
  expect(suitsBrownForsythe([6, 7])).toBe(false);
  expect(suitsBrownForsythe([4, 6])).toBe(false);
});

it("has no W where values vary by rounding only", () => {
  const almost = 0.1 + 0.2;
  const found = brownForsythe([
    [0.3, almost, 0.3, almost],
    [0.3, 0.3, almost, almost],
  ]);
  expect(found).toMatchObject({ statistic: null, pValue: null });
});

it("refuses groups of two, whose distances from their middle are equal", () => {
  expect(() =>
    brownForsythe([
      [1, 2],
      [3, 5, 6],
    ]),
  ).toThrow(NumericalError);
});
