import { describe, expect, it } from "vitest";
import { catchesNeededSection } from "../../../src/report/sections/catches-needed.ts";
import { expectSound, idsOf } from "../../support/blocks.ts";
import { aLog, needed, priced, someTime, someTrial } from "../../support/planning-answers.ts";
import { english } from "../../support/words.ts";

const words = english();

describe("the section on catches needed", () => {
  it.each([
    [0, 1],
    [1, 2],
    [6, 2],
  ])("is sound with %i whole fills and %i catches today", (fills, catches) => {
    const log = aLog(fills, catches);
    expectSound(catchesNeededSection(needed(log), words, "bin-1", priced(log)));
  });

  it("is sound before any catch", () => {
    expectSound(catchesNeededSection(needed(null), words, "plan"));
  });

  it("shows plans where they were asked for", () => {
    const log = aLog(6, 2);
    const plans = needed(log, { time: someTime, trial: someTrial });
    const blocks = catchesNeededSection(plans, words, "b");
    expectSound(blocks);
    expect(idsOf(blocks)).toEqual(expect.arrayContaining(["b-time", "b-trial"]));
    expect(idsOf(catchesNeededSection(needed(log), words, "b"))).not.toContain("b-time");
  });
});
