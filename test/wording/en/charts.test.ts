import { describe, expect, it } from "vitest";
import { charts as german } from "../../../src/wording/de/charts.ts";
import { charts as english } from "../../../src/wording/en/charts.ts";

/** A key shortens what is longer than vega believes a phone has room for, which takes letters for wide. */
const room = 32;

describe.each([
  ["English", english],
  ["German", german],
] as const)("the keys of charts in %s", (_, charts) => {
  const { logScale, logScaleFarOut, ...keys } = charts;

  it.each(Object.entries(keys))("have room on a phone: %s", (_, words) => {
    const said = typeof words === "string" ? words : words("± 2.5 %");
    expect(said.length).toBeLessThanOrEqual(room);
    expect(said).not.toMatch(/undefined|\.$/);
  });

  it("say of an axis that it is not linear, after its title", () => {
    expect(logScale("Scatter")).toMatch(/^Scatter, log/);
    expect(logScaleFarOut("Scatter")).toMatch(/^Scatter, .*\blog/);
  });
});
