import { describe, expect, it } from "vitest";
import {
  meanRange,
  meanStandardDeviation,
  standardDeviationOfRange,
} from "../../src/statistics/control-chart-constants.ts";
import { digits, present, printedTolerance, recomputed, reference } from "../support/reference.ts";

// ASTM MNL 7 and NIST/SEMATECH e-Handbook 6.3.2.1, factors for n = 2 to 10 (from memory, agree with R).
const table = reference("tables/control-chart-constants.json");
const sizes = present(table.data.n);

const derived = {
  d2: meanRange,
  d3: standardDeviationOfRange,
  c4: meanStandardDeviation,
  A2: (n: number) => 3 / (meanRange(n) * Math.sqrt(n)),
  A3: (n: number) => 3 / (meanStandardDeviation(n) * Math.sqrt(n)),
};

describe("control chart constants", () => {
  for (const [name, constant] of Object.entries(derived))
    it(`gives ${name} as printed, and to nine digits as R computes it`, () => {
      for (const n of sizes) {
        const printed = present(table.certified[`${name}_n${n}`]);
        expect(Math.abs(constant(n) - Number(printed))).toBeLessThanOrEqual(
          printedTolerance(printed),
        );
        expect(digits(constant(n), recomputed(table, `${name}_n${n}`))).toBeGreaterThan(9);
      }
    });

  it("gives d2 of two values as 2/√π and d3 as √(2 − 4/π)", () => {
    expect(digits(meanRange(2), 2 / Math.sqrt(Math.PI))).toBeGreaterThan(14);
    expect(digits(standardDeviationOfRange(2), Math.sqrt(2 - 4 / Math.PI))).toBeGreaterThan(13);
  });

  it("refuses fewer than two values", () => {
    for (const constant of [meanRange, standardDeviationOfRange, meanStandardDeviation])
      expect(() => constant(1)).toThrow("whole number of at least 2");
  });
});
