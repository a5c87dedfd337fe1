import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { productGroups } from "../../../src/model/product-groups.ts";
import { inOrder } from "../../../src/questions/product-comparison/order.ts";
import { pairsAsked, tooManyPairs } from "../../../src/questions/product-comparison/pairs.ts";
import { productStandings } from "../../../src/questions/product-comparison/standings.ts";
import { unusedBlocks } from "../../../src/questions/product-comparison/unused-blocks.ts";
import type { MeanContrast } from "../../../src/statistics/mean-comparison.ts";
import { aFill } from "../../support/catches.ts";

const contrast = (first: number, second: number, difference: number) =>
  ({ first, second, difference, lower: difference - 0.1, upper: difference + 0.1 }) as MeanContrast;

describe("products among all of them", () => {
  // Logarithms 0, 0.3 and 0.6: means of the differences −0.3, 0 and 0.3; half of half an interval of 0.2 to either side.
  const contrasts = [contrast(0, 1, -0.3), contrast(0, 2, -0.6), contrast(1, 2, -0.3)];
  const names = ["a", "b", "c"];

  it("have the mean of their differences, and half of what tells two apart", () => {
    const found = productStandings({ method: "tukey-blocks", contrasts }, names, "log");
    expect(found?.map(({ product }) => product)).toEqual(names);
    [-0.3, 0, 0.3].forEach((log, i) => {
      expect(found?.[i]?.ratio).toBeCloseTo(Math.exp(log), 12);
      expect(found?.[i]?.lower).toBeCloseTo(Math.exp(log - 0.05), 12);
      expect(found?.[i]?.upper).toBeCloseTo(Math.exp(log + 0.05), 12);
    });
  });

  it("have the same whichever of a pair is first", () => {
    const turned = contrasts.map((one) => contrast(one.second, one.first, -one.difference));
    const [one, other] = [contrasts, turned].map((some) =>
      productStandings({ method: "tukey-blocks", contrasts: some }, names, "log"),
    );
    one?.forEach(({ ratio }, i) => {
      expect(other?.[i]?.ratio).toBeCloseTo(ratio, 12);
    });
  });

  it("have none where not all pairs are compared with one error, on logarithms", () => {
    expect(productStandings({ method: "tukey-kramer", contrasts }, names, "log")).toBeNull();
    expect(
      productStandings({ method: "tukey-blocks", contrasts }, names, "as measured"),
    ).toBeNull();
    expect(
      productStandings({ method: "tukey-blocks", contrasts: contrasts.slice(1) }, names, "log"),
    ).toBeNull();
    expect(productStandings({ method: "tukey-blocks", contrasts: [] }, ["a"], "log")).toBeNull();
    for (const end of ["lower", "upper"] as const) {
      const open = contrasts.map((one) => ({ ...one, [end]: null }));
      expect(
        productStandings({ method: "tukey-blocks", contrasts: open }, names, "log"),
      ).toBeNull();
    }
  });
});

/** Fills of products, one catch each: product, bin, day and delivery. */
const groupsOf = (...fills: readonly (readonly [string, string, string | null, number])[]) =>
  productGroups(
    fitModel(
      fills.flatMap(([product, bin, day, each], i) =>
        aFill([[20, 20 * each]], {
          product,
          bin,
          fill: i + 1,
          takenAt: day,
          extra: day === null ? {} : { block: day },
        }),
      ),
    ),
    null,
  );

describe("the order of products", () => {
  const groups = groupsOf(["a", "1", null, 0.3], ["b", "1", null, 0.5], ["c", "1", null, 0.4]);
  const names = (products: readonly string[] | null, order: "as listed" | "by size") =>
    inOrder(groups, { products, order }).map(({ product }) => product);

  it("is that of the list or of the file, or the heaviest first", () => {
    expect(names(null, "as listed")).toEqual(["a", "b", "c"]);
    expect(names(null, "by size")).toEqual(["b", "c", "a"]);
    expect(names(["c", "a"], "as listed")).toEqual(["c", "a"]);
    expect(names(["a", "c"], "by size")).toEqual(["c", "a"]);
    expect(names(["x"], "as listed")).toEqual([]);
  });
});

describe("the pairs", () => {
  const shared = groupsOf(["a", "1", null, 1], ["b", "1", null, 1], ["c", "2", null, 1]);

  it("are all, those that share a bin, or those with the reference", () => {
    const asked = (reference: string | null, pairs: "all" | "sharing a bin") =>
      pairsAsked(shared, { reference, pairs }).map(({ first, second }) => [first, second]);
    expect(asked(null, "all")).toHaveLength(3);
    expect(asked(null, "sharing a bin")).toHaveLength(1);
    expect(asked("c", "all")).toHaveLength(2);
    expect(asked("c", "sharing a bin")).toEqual([]);
  });

  it("are too many beyond 2,500, unless there is a reference", () => {
    // 71 products have 2,485 pairs, 72 have 2,556.
    const of = (count: number, bins: (i: number) => string) =>
      groupsOf(...Array.from({ length: count }, (_, i) => [`p${i}`, bins(i), null, 1] as const));
    const [few, many] = [of(71, () => "1"), of(72, () => "1")];
    const all = { reference: null, pairs: "all" } as const;
    expect([few, many].map((groups) => tooManyPairs(groups, all))).toEqual([false, true]);
    expect(pairsAsked(few, all)).toHaveLength(2485);
    expect(pairsAsked(many, all)).toEqual([]);
    expect(tooManyPairs(many, { reference: "p1", pairs: "all" })).toBe(false);
    const sharing = { reference: null, pairs: "sharing a bin" } as const;
    expect(tooManyPairs(many, sharing)).toBe(true);
    // In two bins each pair shares one only within its half: 2 × 36 × 35 ÷ 2.
    const halves = of(72, (i) => `${i % 2}`);
    expect(tooManyPairs(halves, sharing)).toBe(false);
    expect(pairsAsked(halves, sharing)).toHaveLength(1260);
  });
});

describe("blocks that nobody asked for", () => {
  const fill = (product: string, day: string | null) => [product, "1", day, 1] as const;

  it("are told from three on, where every product has each of them once", () => {
    const days = ["d1", "d2", "d3"];
    const both = (...own: readonly (string | null)[]) =>
      groupsOf(...own.map((day) => fill("a", day)), ...days.map((day) => fill("b", day)));
    expect(unusedBlocks(both(...days))).toEqual({ by: "block", blocks: 3 });
    expect(unusedBlocks(both("d1", "d2"))).toBeNull();
    expect(unusedBlocks(both("d1", "d2", "d2"))).toBeNull();
    expect(unusedBlocks(both("d1", "d2", null))).toBeNull();
    expect(unusedBlocks(both("d1", "d2", "d4"))).toBeNull();
    const two = ["d1", "d2"];
    expect(
      unusedBlocks(groupsOf(...two.map((d) => fill("a", d)), ...two.map((d) => fill("b", d)))),
    ).toBeNull();
  });
});
