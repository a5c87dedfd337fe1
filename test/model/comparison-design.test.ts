import { describe, expect, it } from "vitest";
import { type DesignChoices, designed, spreadFor } from "../../src/model/comparison-design.ts";
import { fitModel } from "../../src/model/model.ts";
import { productGroups } from "../../src/model/product-groups.ts";
import { fillsOf } from "../support/product-answers.ts";

const count = (products: number, complete: number, blocks = complete) => ({
  products,
  complete,
  blocks,
});

describe("the spread of a comparison, by design", () => {
  it.each([
    ["three products in 2 blocks", count(3, 2), "common"],
    ["three products in 8 blocks", count(3, 8), "common"],
    ["three products in 9 blocks", count(3, 9), "separate"],
    ["four products in one block", count(4, 1), "separate"],
    ["two products, whose paired t test is the same", count(2, 5), "separate"],
    ["three of five blocks complete", count(4, 3, 5), "common"],
    ["two of four blocks complete", count(4, 2, 4), "separate"],
    ["no blocks", null, "separate"],
  ] as const)("with %s", (_, blocks, spread) => {
    expect(spreadFor("by design", blocks)).toBe(spread);
  });

  it("is what is asked for, but within blocks a common one needs two degrees of freedom", () => {
    expect(spreadFor("separate", count(3, 4))).toBe("separate");
    expect(spreadFor("common", count(3, 12))).toBe("common");
    expect(spreadFor("common", count(2, 3))).toBe("common");
    expect(spreadFor("common", count(2, 2))).toBe("separate");
    expect(spreadFor("common", null)).toBe("common");
  });
});

describe("the design of a comparison", () => {
  const inBlocks = (product: string) =>
    fillsOf(product, [0.4, 0.41, 0.42]).map((row) => ({ ...row, extra: { block: `${row.fill}` } }));
  const model = fitModel(["wheat", "pea", "barley"].flatMap(inBlocks));
  const designFor = (given: Partial<DesignChoices>) => {
    const choices: DesignChoices = {
      spread: "by design",
      scale: "by design",
      blocks: null,
      ...given,
    };
    const { spread, scale } = designed(productGroups(model, choices.blocks), choices);
    return [spread, scale];
  };

  it("pools spreads and takes logarithms within complete blocks, unless it is told otherwise", () => {
    expect(designFor({})).toEqual(["separate", "as measured"]);
    expect(designFor({ blocks: "block" })).toEqual(["common", "log"]);
    expect(designFor({ blocks: "block", spread: "separate" })).toEqual(["separate", "log"]);
    expect(designFor({ blocks: "block", scale: "as measured" })).toEqual(["common", "as measured"]);
    expect(designFor({ scale: "log" })).toEqual(["separate", "log"]);
  });
});
