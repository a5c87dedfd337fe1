import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { at } from "../../../src/errors/at.ts";
import { decisionLines } from "../../../src/report/sections/decision.ts";
import { aFill, aLog } from "../../support/catches.ts";
import { wordsBy } from "../../support/words.ts";

const good = [6.31, 6.29, 6.33, 6.28, 6.3, 6.32, 6.31, 6.29, 6.3, 6.33];

function whyOf(masses: readonly number[], tag: "en" | "de") {
  const analysis = analyse(aLog(aFill(masses.map((mass) => [20, mass]))));
  return decisionLines(at(analysis.meters, 0), analysis, wordsBy[tag]).why;
}

describe("why a catch is to be looked at", () => {
  it("says of each of two which catch it is", () => {
    const [first, second] = whyOf([...good, 9.5, 3.1], "en");
    expect(first).toMatch(/^Catch 11: This catch stands \+/);
    expect(second).toMatch(/^Catch 12: This catch stands −/);
    expect(whyOf([...good, 9.5, 3.1], "de")).toEqual([
      expect.stringMatching(/^Probe 11: Diese Probe/),
      expect.stringMatching(/^Probe 12: Diese Probe/),
    ]);
  });

  it("leaves the number of the only one to the line above", () => {
    expect(whyOf([...good, 9.5], "en")).toEqual([expect.stringMatching(/^This catch stands \+/)]);
  });
});
