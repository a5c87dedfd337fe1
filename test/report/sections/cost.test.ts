import { describe, expect, it } from "vitest";
import type { Action } from "../../../src/analysis/decision.ts";
import { costSection } from "../../../src/report/sections/cost.ts";
import { expectSound, idsOf } from "../../support/blocks.ts";
import { aLog, byMoney, needed, priced } from "../../support/planning-answers.ts";
import { english } from "../../support/words.ts";

const words = english();

describe("the section on cost", () => {
  it.each([
    [0, 1],
    [1, 2],
    [6, 2],
  ])("is sound with %i whole fills and %i catches today", (fills, catches) => {
    expectSound(costSection(priced(aLog(fills, catches)), words, "bin-1"));
  });

  it("has neither chart nor figures without prices", () => {
    const blocks = costSection(priced(aLog(6, 2), { response: null }), words, "b");
    expectSound(blocks);
    expect(idsOf(blocks)).toEqual([]);
    expect(idsOf(costSection(priced(aLog(6, 2)), words, "b"))).toContain("b-figures");
  });

  it("tells the worth of the next catch in the words of the section on catches", () => {
    const log = aLog(6, 2);
    const result = needed(log, byMoney(40));
    const said = words.catchesNeeded.worth(result);
    expect(said).toContain("CAD");
    const told = (...asked: [typeof result | null, Action?]) =>
      JSON.stringify(costSection(priced(log), words, "b", ...asked)).includes(`${said}`);
    expect(told(result)).toBe(true);
    expect(told(result, "set")).toBe(true);
    expect(told(result, "look-first")).toBe(false);
    expect(told(null)).toBe(false);
  });
});
