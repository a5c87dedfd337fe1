import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { theilSen } from "../../src/statistics/theil-sen.ts";
import { column, reference } from "../support/reference.ts";

describe("theilSen", () => {
  // Helsel and Hirsch 2002, Statistical Methods in Water Resources, chapter 10 (from memory, agrees with R).
  it("reaches the published line, which one wild point does not turn", () => {
    const set = reference("trend/theil-sen-usgs.json");
    const line = theilSen(column(set, "x"), column(set, "y"));
    expect(line.slope).toBe(Number(set.certified.slope));
    expect(line.intercept).toBe(Number(set.certified.intercept));
  });

  it("passes over pairs with equal x", () => {
    expect(theilSen([1, 1, 2], [0, 10, 7])).toEqual({ slope: 2, intercept: 5 });
  });

  it("refuses x that are all equal and lists of different length", () => {
    expect(() => theilSen([1, 1], [2, 3])).toThrow(NumericalError);
    expect(() => theilSen([1, 2], [2])).toThrow(NumericalError);
    expect(() => theilSen([1, 2], [2, Number.NaN])).toThrow(NumericalError);
  });
});
