import { describe, expect, it } from "vitest";
import { trialLines } from "../../../src/report/sections/trial.ts";
import { compared } from "../../support/product-answers.ts";
import { present } from "../../support/reference.ts";
import { inventedTrial, trialCatches } from "../../support/trials.ts";
import { english, wordsBy } from "../../support/words.ts";

/** Five blocks of wheat, pea, barley and rye, a fill of two catches each: without some, or without the block of some. */
const without = (dropped: (product: string, block: string) => boolean) =>
  trialCatches().filter(({ product, extra }) => !dropped(product, present(extra.block)));
const unnamed = (product: string, block: string) =>
  trialCatches().map((row) =>
    row.product === product && row.extra.block === block ? { ...row, extra: { block: "" } } : row,
  );
const ryeOnce = without((product, block) => product === "rye" && block !== "1");
const peaAlone = without((product, block) => block === "5" && product !== "pea");
const asked = { blocks: "block", equivalenceMargin: 0.03 };

describe("what pairs of products rest on", () => {
  it("is every fill where all are in blocks together", () => {
    expect(compared(trialCatches(), asked).compared).toEqual({
      products: 4,
      fills: 20,
      catches: 40,
      leftOut: { products: [], withoutBlock: 0, alone: 0 },
    });
  });

  it("is nothing of a product with one fill, of which no block is asked either", () => {
    const result = compared(ryeOnce, asked);
    expect(result.input).toMatchObject({
      products: 4,
      fills: 16,
      blocks: { count: 5, complete: 5 },
    });
    expect(result.compared).toEqual({
      products: 3,
      fills: 15,
      catches: 30,
      leftOut: { products: [{ product: "rye", fills: 1 }], withoutBlock: 0, alone: 0 },
    });
  });

  it("is no fill without a block, and none alone in its own", () => {
    expect(compared(unnamed("pea", "2"), asked).compared).toMatchObject({
      products: 4,
      fills: 19,
      leftOut: { products: [], withoutBlock: 1, alone: 0 },
    });
    const lone = compared(peaAlone, asked);
    expect(lone.compared).toMatchObject({ fills: 16, leftOut: { withoutBlock: 0, alone: 1 } });
    expect(lone.input.blocks).toEqual({ count: 4, complete: 4 });
  });

  it("is every fill of compared products without blocks, and none where no pair is compared", () => {
    expect(compared(ryeOnce).compared).toMatchObject({ products: 3, fills: 15 });
    expect(compared(without((product) => product !== "pea")).compared).toBeNull();
  });
});

describe("the headline of a trial", () => {
  const leadOf = (catches: ReturnType<typeof trialCatches>, words = english()) =>
    present(trialLines(inventedTrial({}, {}, catches), words)).lead.replaceAll("\u00a0", " ");

  it("counts what is compared and names what is left out", () => {
    expect(leadOf(ryeOnce)).toBe(
      "3 products compared within 5 blocks (block): 15 fills, 30 catches. Not compared: rye (1 fill).",
    );
    expect(leadOf(unnamed("pea", "2"))).toBe(
      "4 products compared within 5 blocks (block; 4 with every product compared): 19 fills, 38 catches. Not compared: 1 fill without a block.",
    );
    expect(leadOf(peaAlone)).toBe(
      "4 products compared within 4 blocks (block): 16 fills, 32 catches. Not compared: 1 fill alone in its block.",
    );
    expect(leadOf(peaAlone, wordsBy.de)).toBe(
      "4 Produkte im Vergleich innerhalb von 4 Blöcken (block): 16 Füllungen, 32 Proben. Nicht verglichen: 1 Füllung allein in ihrem Block.",
    );
  });

  it("says what is caught where nothing can be compared yet", () => {
    const lead = leadOf(without((_, block) => block !== "1"));
    expect(lead).toMatch(
      /^Caught so far: 4 products, 4 fills, 8 catches\. No product can be compared/,
    );
  });

  it("asks of the products that have a part in it when it asks of all at once", () => {
    const overall = (catches: ReturnType<typeof trialCatches>) =>
      english().productComparison.overall(compared(catches, asked));
    expect(overall(trialCatches())).toContain("This asks of all products at once;");
    expect(overall(ryeOnce)).toContain("This asks of all products with two fills or more at once;");
  });
});
