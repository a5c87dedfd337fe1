import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import {
  type ComparisonDesign,
  compareByCatches,
  compareProducts,
  pairsOfProducts,
} from "../../src/model/compare-products.ts";
import { fitModel } from "../../src/model/model.ts";
import { blockNames, blockOf, blockTable, productGroups } from "../../src/model/product-groups.ts";
import { compareBlocks, compareGroups } from "../../src/statistics/group-comparison.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const rows = (
  product: string,
  fill: number,
  masses: readonly number[],
  field: string,
  bin = product,
): Catch[] =>
  aFill(
    masses.map((mass) => [20, mass] as const),
    { bin, product, fill, takenAt: `2026-04-0${fill}T07:00`, extra: { field } },
  );

const catches = [
  ...rows("wheat", 1, [6, 6.1], "north"),
  ...rows("wheat", 2, [6.2, 6.3], "south"),
  ...rows("oat", 1, [5, 5.2], "north"),
  ...rows("oat", 2, [5.3, 5.1], "south"),
  ...rows("oat", 3, [5.6, 5.4], "south", "spare"),
  ...rows("pea", 1, [8, 8.2], "north"),
];
const model = fitModel(catches);
const deliveries = { wheat: [0.3025, 0.3125], oat: [0.255, 0.26, 0.275], pea: [0.405] };
const design: ComparisonDesign = {
  level: 0.9,
  spread: "separate",
  scale: "log",
  blocks: null,
  reference: null,
  equivalenceMargin: null,
};
const delivery = (fill: { readonly delivery: number }) => fill.delivery;

describe("fills by product", () => {
  it("are of all bins that hold it, without a block where none is asked for", () => {
    const groups = productGroups(model, null);
    expect(groups.map(({ product, bins }) => [product, bins])).toEqual([
      ["wheat", ["wheat"]],
      ["oat", ["oat", "spare"]],
      ["pea", ["pea"]],
    ]);
    expect(groups.flatMap(({ fills }) => fills.map(({ block }) => block))).toEqual([
      ...[null, null, null, null, null, null],
    ]);
  });

  it("are in no block where its cell is empty, which is no name that fills could share", () => {
    const empty = fitModel([
      ...rows("wheat", 1, [6, 6.1], ""),
      ...rows("oat", 1, [5, 5.2], ""),
      ...rows("oat", 2, [5, 5.2], "north"),
    ]);
    const blocks = productGroups(empty, "field").flatMap(({ fills }) => fills);
    expect(blocks.map(({ block }) => block)).toEqual([null, null, "north"]);
  });

  it("are in blocks by bin, by day, or by what a column says of all catches alike", () => {
    const [meter] = model.meters;
    const fill = present(present(meter).fills[1]);
    expect(blockOf(fill, "bin")).toBe("wheat");
    expect(blockOf(fill, "date")).toBe("2026-04-02");
    expect(blockOf({ ...fill, takenAt: null }, "date")).toBeNull();
    expect(blockOf(fill, "field")).toBe("south");
    expect(blockOf(fill, "driver")).toBeNull();
    const [one, other] = fill.catches;
    const mixed = [present(one), { ...present(other), extra: { field: "west" } }];
    expect(blockOf({ ...fill, catches: mixed }, "field")).toBeNull();
    const half = [present(one), { ...present(other), extra: {} }];
    expect(blockOf({ ...fill, catches: half }, "field")).toBeNull();
    expect(blockNames(model)).toEqual(["bin", "date", "field"]);
  });

  it("make a table of means, empty where a product was not filled", () => {
    const { labels, rows: table } = blockTable(productGroups(model, "field"), delivery);
    expect(labels).toEqual(["north", "south"]);
    expect(table[0]).toEqual([
      expect.closeTo(0.3025, 12),
      expect.closeTo(0.255, 12),
      expect.closeTo(0.405, 12),
    ]);
    expect(table[1]).toEqual([
      expect.closeTo(0.3125, 12),
      expect.closeTo((0.26 + 0.275) / 2, 12),
      null,
    ]);
  });
});

describe("products compared", () => {
  const groups = productGroups(model, null).slice(0, 2);
  const logs = [deliveries.wheat, deliveries.oat].map((own) => own.map(Math.log));

  it("have the contrasts of their fills' deliveries, as measured or as logarithms", () => {
    const compared = compareProducts(groups, design, delivery);
    const wanted = compareGroups(logs, { ...design, margin: null, reference: null });
    expect(compared.blocks).toBeNull();
    expect(compared.contrasts[0]?.lower).toBeCloseTo(present(wanted.contrasts[0]?.lower), 10);
    expect(compared.contrasts[0]?.upper).toBeCloseTo(present(wanted.contrasts[0]?.upper), 10);
    const plain = compareProducts(groups, { ...design, scale: "as measured" }, delivery);
    expect(plain.contrasts[0]?.difference).toBeCloseTo(0.3075 - 0.79 / 3, 12);
  });

  it("within blocks have those of the blocks' table", () => {
    const inBlocks = productGroups(model, "field").slice(0, 2);
    const { blocks, contrasts } = compareProducts(
      inBlocks,
      { ...design, blocks: "field", scale: "as measured" },
      delivery,
    );
    const wanted = compareBlocks(present(blocks).rows, {
      ...design,
      scale: "as measured",
      margin: null,
      reference: null,
    });
    expect(present(blocks).labels).toEqual(["north", "south"]);
    expect(contrasts).toEqual(wanted.contrasts);
  });

  it("are against one by its name, or each against each", () => {
    const three = productGroups(model, null);
    expect(pairsOfProducts(three, null)).toHaveLength(3);
    expect(pairsOfProducts(three, "oat")).toEqual([
      { first: 0, second: 1 },
      { first: 2, second: 1 },
    ]);
    expect(pairsOfProducts(three, "rye")).toEqual([]);
    const against = compareProducts(groups, { ...design, reference: "oat" }, delivery);
    expect(against.contrasts.map(({ first, second }) => [first, second])).toEqual([[0, 1]]);
    const turned = compareProducts(groups, { ...design, reference: "wheat" }, delivery);
    expect(turned.contrasts.map(({ first, second }) => [first, second])).toEqual([[1, 0]]);
  });

  it("by catches take every catch for a value of its own", () => {
    const [found] = compareByCatches(groups, { ...design, scale: "as measured" });
    expect(present(found).n).toEqual([4, 6]);
    expect(present(found).difference).toBeCloseTo(0.3075 - 0.79 / 3, 12);
  });

  it("by catches rest on the fills that they rest on within blocks", async () => {
    const unbalanced = [
      ...rows("wheat", 1, [6, 6.1], "north"),
      ...rows("wheat", 2, [6.2, 6.3], "south"),
      ...rows("wheat", 3, [9, 9.1], ""),
      ...rows("oat", 1, [5, 5.2], "north"),
      ...rows("oat", 2, [5.3, 5.1], "south"),
      ...rows("oat", 3, [5.6, 5.4], "west"),
      ...rows("pea", 1, [8, 8.2], "north"),
      ...rows("pea", 2, [8.1, 8.3], "west"),
    ];
    const blocked = productGroups(fitModel(unbalanced), "field");
    const by = (spread: "separate" | "common", products = blocked) =>
      compareByCatches(products, { ...design, scale: "as measured", blocks: "field", spread });
    // By hand: wheat and oat share north and south, oat and pea north and west; wheat and pea share one block only.
    expect(by("separate").map(({ first, second, n }) => [first, second, n])).toEqual([
      [0, 1, [4, 4]],
      [1, 2, [4, 4]],
    ]);
    expect(by("separate")[0]?.difference).toBeCloseTo(0.3075 - 0.2575, 12);
    expect(by("separate")[1]?.difference).toBeCloseTo(0.265 - 0.4075, 12);
    // One spread: over the blocks that hold both.
    const [standardError] = await evalR("t.test(wheat, oat, var.equal = TRUE)$stderr", {
      wheat: [0.3, 0.305, 0.31, 0.315],
      oat: [0.25, 0.26, 0.265, 0.255],
    });
    const [pooled] = by("common", blocked.slice(0, 2));
    expect(present(pooled)).toMatchObject({ n: [4, 4], df: 6 });
    expect(present(pooled).standardError).toBeCloseTo(present(standardError), 11);
  });
});
