import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import {
  type ProductComparisonChoices,
  productComparisonOptions,
} from "../../../src/questions/product-comparison/options.ts";
import { productComparison } from "../../../src/questions/product-comparison.ts";
import { aFill } from "../../support/catches.ts";
import { evalR } from "../../support/webr.ts";

const model = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.001 };

/** Products with these deliveries, a fill of two catches each, in one bin or each in its own. */
function asked(
  products: Readonly<Record<string, readonly number[]>>,
  given: Partial<ProductComparisonChoices> = {},
  binOf: (product: string) => string = () => "1",
) {
  let fill = 0;
  const catches = Object.entries(products).flatMap(([product, deliveries]) =>
    deliveries.flatMap((each) => {
      fill += 1;
      return aFill(
        [
          [20, 20 * each * 1.002],
          [20, 20 * each * 0.998],
        ],
        { product, fill, bin: binOf(product) },
      );
    }),
  );
  return productComparison(fitModel(catches, model), productComparisonOptions(model, given));
}

const steady = [0.3, 0.303, 0.298, 0.301];
const codesOf = (products: Readonly<Record<string, readonly number[]>>, of: string) =>
  asked(products)
    .cautions.filter(({ where }) => where.product === of)
    .map(({ code, facts }) => [code, facts]);

describe("the number of fills of a product", () => {
  it.each<[number, readonly unknown[]]>([
    [1, [["product-not-repeated", {}]]],
    [2, [["product-few-fills", { fills: 2 }]]],
    [3, [["product-few-fills", { fills: 3 }]]],
    [4, []],
  ])("%d is told, or comfortable", (count, expected) => {
    expect(
      codesOf({ a: steady, b: steady.slice(0, count).map((each) => 1.1 * each) }, "b"),
    ).toEqual(expected);
  });

  it("leaves a product with one fill out of the pairs, and nothing to compare where one product is left", () => {
    const three = asked({ a: steady, b: steady, c: [0.3] });
    expect(three.contrasts.map(({ first, second }) => [first, second])).toEqual([["a", "b"]]);
    expect(three.input).toMatchObject({ products: 3, fills: 9, catches: 18, blocks: null });
    const one = asked({ a: steady, c: [0.3] });
    expect(one.contrasts).toEqual([]);
    expect(one.cautions.map(({ code }) => code)).toContain("nothing-to-compare");
    expect(three.cautions.map(({ code }) => code)).not.toContain("nothing-to-compare");
  });
});

describe("what else a comparison says", () => {
  const codes = (...given: Parameters<typeof asked>) =>
    asked(...given).cautions.map(({ code }) => code);
  const both = { a: steady, b: steady.map((each) => each * 1.02) };

  it("is that products were caught in other bins, or share some of them", () => {
    expect(codes(both)).not.toContain("products-in-different-bins");
    expect(codes(both, {}, (product) => product)).toContain("products-in-different-bins");
  });

  it("is that fills of one product agree exactly", () => {
    expect(codes({ a: steady, b: [0.3, 0.3, 0.3, 0.3] })).toContain("product-without-spread");
    expect(codes(both)).not.toContain("product-without-spread");
  });

  it("is that a common spread is doubtful, where one is claimed", () => {
    const wild = { a: [0.3, 0.3001, 0.2999, 0.30005], b: [0.3, 0.36, 0.25, 0.31] };
    expect(codes(wild, { spread: "common" })).toContain("common-spread-doubtful");
    expect(codes(wild)).not.toContain("common-spread-doubtful");
    expect(codes(both, { spread: "common" })).not.toContain("common-spread-doubtful");
  });

  it.each([
    ["as measured", 2.5, false],
    ["as measured", 2.51, true],
    ["log", 3.33, false],
    ["log", 3.35, true],
  ] as const)(
    "is that a common spread is doubtful where bartlett.test in R has it below 0.05: %s, %d times the spread",
    async (scale, times, doubtful) => {
      const e = [0.004, -0.003, 0.001, -0.002, 0.003, -0.004, 0.002, -0.001];
      const unlike = { a: steady, b: e.map((each) => 0.4 + times * each) };
      const list = scale === "log" ? "a / mean(a), b / mean(b)" : "a, b";
      const [pValue = Number.NaN] = await evalR(
        `a <- c(${unlike.a}); b <- c(${unlike.b}); bartlett.test(list(${list}))$p.value`,
      );
      expect(pValue < 0.05).toBe(doubtful);
      const told = asked(unlike, { spread: "common", scale }).cautions.filter(
        ({ code }) => code === "common-spread-doubtful",
      );
      expect(told.map(({ facts }) => facts)).toEqual(
        doubtful ? [{ pValue: expect.closeTo(pValue, 12) }] : [],
      );
    },
  );

  it("is how many pairs stay undecided, unless a margin of equivalence is asked for", () => {
    const alike = { a: steady, b: [0.302, 0.299, 0.301, 0.3] };
    const found = asked(alike).cautions.find(({ code }) => code === "no-equivalence-margin");
    expect(found?.facts).toEqual({ pairs: 1 });
    expect(codes(alike, { equivalenceMargin: 0.03 })).not.toContain("no-equivalence-margin");
    const apart = { a: steady, b: steady.map((each) => 2 * each) };
    expect(codes(apart)).not.toContain("no-equivalence-margin");
  });
});

describe("what cannot be compared", () => {
  it.each<[string, Partial<ProductComparisonChoices>]>([
    ["reference", { reference: "c" }],
    ["reference", { products: ["a"], reference: "b" }],
    ["blocks", { blocks: "weather" }],
  ])("is refused by its option: %s", (option, given) => {
    expect(() => asked({ a: steady, b: steady }, given)).toThrow(`Option "${option}"`);
  });
});
