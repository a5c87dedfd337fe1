import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { measureDistributions } from "../../bench/accuracy/distributions.ts";
import type { Measured } from "../../bench/accuracy/measure.ts";
import { accuracyReport } from "../../bench/accuracy/report.ts";
import { certifiedRows } from "../../bench/accuracy/strd.ts";

const stored: Measured[] = JSON.parse(
  readFileSync(new URL("../../reports/accuracy.json", import.meta.url), "utf8"),
);
const measured = measureDistributions();
const certified = certifiedRows();

describe("the accuracy report", () => {
  it("has no function with fewer than 12 digits anywhere", () => {
    for (const row of measured) {
      expect(row.minDigits, JSON.stringify(row)).toBeGreaterThanOrEqual(12);
    }
  });

  it("is stored as the code gives it today", () => {
    expect(stored.map((row) => row.function)).toEqual(measured.map((row) => row.function));
    measured.forEach((row, i) => {
      // Another machine's logarithms may differ in the last digit, which moves these by tenths.
      expect(Math.abs(row.minDigits - (stored[i]?.minDigits ?? 0)), row.function).toBeLessThan(1);
      expect(row.provider).toBe(stored[i]?.provider);
    });
  });

  it("reaches of the certified digits what data stored as doubles can give, but for rounding", () => {
    for (const row of certified) {
      const reachable = Math.min(15, row.reachableDigits);
      expect(row.reachedDigits, JSON.stringify(row)).toBeGreaterThan(reachable - 1.5);
    }
  });

  it("names every function and data set in its tables", () => {
    const text = accuracyReport(measured, certified);
    for (const { function: name } of measured) expect(text).toContain(`\`${name}\``);
    for (const { set } of certified) expect(text).toContain(`| ${set} |`);
  });
});
