import { describe, expect, it } from "vitest";
import { explainingVariablesSection } from "../../../src/report/sections/explaining-variables.ts";
import { expectSound, idsOf } from "../../support/blocks.ts";
import { explained, fillsOf, fourProducts } from "../../support/product-answers.ts";
import { productTrialCatches } from "../../support/product-trial.ts";
import { english } from "../../support/words.ts";

const words = english();

describe("the section on explaining variables", () => {
  it.each([{}, { newDensityKgPerM3: 700 }, { variables: ["meter speed"] }] as const)(
    "is sound for the demo trial with %o",
    async (given) => {
      const result = explained(await productTrialCatches(), given);
      expectSound(explainingVariablesSection(result, words, "trial"));
    },
  );

  it("is sound where little is known", () => {
    const one = fillsOf("wheat", [0.4], { bulkDensityKgPerM3: 770 });
    expectSound(explainingVariablesSection(explained(one, { newDensityKgPerM3: 700 }), words, "t"));
    const bare = fourProducts.map((row) => ({ ...row, bulkDensityKgPerM3: null }));
    const blocks = explainingVariablesSection(explained(bare), words, "t");
    expectSound(blocks);
    expect(idsOf(blocks)).toEqual([]);
  });
});
