import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import * as distributions from "../src/distributions.ts";
import { root } from "./support/compiler.ts";
import { present } from "./support/reference.ts";
import { rangesInR } from "./support/studentized-range-in-r.ts";
import { evalR } from "./support/webr.ts";

interface Reached {
  readonly function: string;
  readonly minDigits: number;
}

const text = (path: string) => readFileSync(join(root, path), "utf8");

describe("the door to distributions", () => {
  it("states the digits that the accuracy report found, the least of each family", () => {
    const reached: readonly Reached[] = JSON.parse(text("reports/accuracy.json"));
    const families = {
      normal: /^normal/,
      "Student's t": /^studentT/,
      "chi-squared": /^chiSquared/,
      F: /^f[A-Z]/,
      "noncentral t": /^noncentralT/,
      "studentized range": /^studentizedRange/,
    };
    const door = text("src/distributions.ts").replace(/\n\/\/ /g, " ");
    for (const [family, names] of Object.entries(families)) {
      const digits = reached.filter((one) => names.test(one.function)).map((one) => one.minDigits);
      expect(door).toContain(`${family} ${Math.min(...digits).toFixed(1)}`);
    }
    const told = new Set(reached.map((one) => one.function));
    const untold = Object.keys(distributions).filter((name) => !told.has(name));
    expect(
      untold.filter((name) => !/^dunnett|Density$|TwoSided$|UpperQuantile$/.test(name)),
    ).toEqual([]);
  });

  it("gives what R gives", async () => {
    const quantile = distributions.studentizedRangeQuantile(0.95, 4, 20);
    const [tail, beyond, noncentral, t] = await evalR(
      `${rangesInR}
       c(tukey(3.5 / sqrt(2), 4, 20), tukey(q / sqrt(2), 4, 20), pt(2, 10, 1, lower = FALSE), qt(0.975, 7))`,
      { q: quantile },
    );
    expect(distributions.studentizedRangeUpperTail(3.5, 4, 20)).toBeCloseTo(present(tail), 11);
    expect(beyond).toBeCloseTo(0.05, 11);
    expect(distributions.noncentralTUpperTail(2, 10, 1)).toBeCloseTo(present(noncentral), 9);
    expect(distributions.studentTQuantile(0.975, 7)).toBeCloseTo(present(t), 12);
  });
});
