import { describe, expect, it } from "vitest";
import { productComparisonSection } from "../../../src/report/sections/product-comparison.ts";
import { expectSound, idsOf } from "../../support/blocks.ts";
import { compared, fillsOf, fourProducts } from "../../support/product-answers.ts";
import { productTrialCatches } from "../../support/product-trial.ts";
import { english } from "../../support/words.ts";

const words = english();

describe("the section on products", () => {
  it.each([
    {},
    { equivalenceMargin: 0.02 },
    { blocks: "day" },
    { blocks: "day", spread: "common" },
    { scale: "log", reference: "pea", equivalenceMargin: 0.02 },
  ] as const)("is sound for the demo trial with %o", async (given) => {
    const result = compared(await productTrialCatches(), given);
    expectSound(productComparisonSection(result, words, "trial"));
  });

  it("is sound with a product of one fill, and with nothing to compare", () => {
    expectSound(productComparisonSection(compared(fourProducts), words, "trial"));
    const blocks = productComparisonSection(compared(fillsOf("wheat", [0.4])), words, "trial");
    expectSound(blocks);
    expect(idsOf(blocks)).not.toContain("trial-contrasts-chart");
  });

  it("has both charts and all tables where products can be compared", () => {
    expect(idsOf(productComparisonSection(compared(fourProducts), words, "t"))).toEqual([
      "t-contrasts-chart",
      "t-estimates-chart",
      "t-comparison-detail",
      "t-contrast-table",
      "t-product-table",
      "t-scatter-table",
    ]);
  });
});
