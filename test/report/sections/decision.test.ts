import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { at } from "../../../src/errors/at.ts";
import { decisionLines } from "../../../src/report/sections/decision.ts";
import { aFill, aLog } from "../../support/catches.ts";
import { wordsBy } from "../../support/words.ts";

const good = [6.31, 6.29, 6.33, 6.28, 6.3, 6.32, 6.31, 6.29, 6.3, 6.33];

function linesOf(masses: readonly number[], tag: "en" | "de") {
  const analysis = analyse(aLog(aFill(masses.map((mass) => [20, mass]))));
  return decisionLines(at(analysis.meters, 0), analysis, wordsBy[tag]);
}

const whyOf = (masses: readonly number[], tag: "en" | "de") => linesOf(masses, tag).why;

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

  it("names the catch that asks for more, which the line to act on does not", () => {
    // R: |t| 3.35 and a Bonferroni p of .024 among six.
    const [why] = whyOf([6.35, 6.45, 6.4, 6.42, 6.38, 6.65], "en");
    expect(why).toMatch(/^Catch 6: This catch stands \+3\.9.% off/);
  });

  it("tells what both leave, where two stand out", () => {
    // The mean of the four others is 25.62/80 kg/turn, 15.2 % below 45.32/120.
    for (const why of whyOf([6.3, 6.5, 6.4, 6.42, 9.8, 9.9], "en"))
      expect(why).toMatch(/without both the delivery is 0\.3203.kg\/turn \(−15\.2.%\)/);
  });

  it("asks to look where catches hide each other, and where one lies grossly off", () => {
    const action = (masses: readonly number[]) => linesOf(masses, "en").action;
    expect(action([6.3, 6.5, 6.4, 6.42, 6.45, 9.8, 3.2, 12.8])).toBe(
      "Look first: more catches stand out than can be told apart",
    );
    expect(action([6.3, 6.5, 6.4, 9.8, 9.9])).toBe("Look first: catch 4 stands 53.1\u00a0% off");
  });

  it("names the catch also where no more catches are allowed, and how it ends", () => {
    const long = [6.35, 6.45, 6.4, 6.42, 6.38, 6.34, 6.43, 6.43, 6.36, 6.4, 6.4, 6.55];
    expect(linesOf(long, "en").action).toBe("Look first: catch 12 stands 2.4\u00a0% off");
    expect(whyOf(long, "en").join()).toMatch(/This ends with a note in the column checked/);
  });

  it("leaves the number of the only one to the line above", () => {
    expect(whyOf([...good, 9.5], "en")).toEqual([expect.stringMatching(/^This catch stands \+/)]);
  });
});
