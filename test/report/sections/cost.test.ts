import { describe, expect, it } from "vitest";
import { costSection } from "../../../src/report/sections/cost.ts";
import { expectSound, idsOf } from "../../support/blocks.ts";
import { aLog, priced } from "../../support/planning-answers.ts";
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
});
