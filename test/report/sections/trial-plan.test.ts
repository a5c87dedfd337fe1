import { describe, expect, it } from "vitest";
import { trialPlanSection } from "../../../src/report/sections/trial-plan.ts";
import { expectSound } from "../../support/blocks.ts";
import { planned } from "../../support/product-answers.ts";
import { english } from "../../support/words.ts";

const words = english();

describe("the section on a planned trial", () => {
  it.each([
    {},
    { equivalenceMargin: 0.03, meterSpeeds: [40, 70] },
    { analysis: "blocks" },
  ] as const)("is sound with %o", (given) => {
    expectSound(trialPlanSection(planned({ fills: 3, ...given }), words, "plan"));
  });

  it("shows the whole sheet, with the meter speed only where it is varied", () => {
    const text = JSON.stringify(trialPlanSection(planned({ fills: 2 }), words, "plan"));
    expect(text).not.toContain("Turns/min");
    const varied = planned({ fills: 2, meterSpeeds: [40, 70] });
    const blocks = trialPlanSection(varied, words, "plan");
    expect(JSON.stringify(blocks)).toContain("Turns/min");
    const details = blocks.find((block) => block.kind === "details");
    const sheet = details?.kind === "details" ? details.blocks[0] : undefined;
    expect(sheet?.kind === "table" ? sheet.rows.length : 0).toBe(varied.rows.length);
  });
});
