import { describe, expect, it } from "vitest";
import { skippingSection } from "../../../src/report/sections/skipping.ts";
import { expectSound, idsOf } from "../../support/blocks.ts";
import { aLog, skipped } from "../../support/planning-answers.ts";
import { english } from "../../support/words.ts";

const words = english();

describe("the section on skipping", () => {
  it.each([
    [0, 1],
    [1, 2],
    [3, 2],
    [6, 2],
  ])("is sound with %i whole fills and %i catches today", (fills, catches) => {
    expectSound(skippingSection(skipped(aLog(fills, catches)), words, "bin-1"));
  });

  it("has neither chart nor chances where they are refused", () => {
    const ids = (fills: number) => idsOf(skippingSection(skipped(aLog(fills, 2)), words, "b"));
    expect(ids(6)).toEqual(expect.arrayContaining(["b-chart", "b-chances"]));
    expect(ids(1)).toEqual([]);
  });
});
