import fc from "fast-check";
import { mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { usualBorrowing } from "../../src/model/lenders.ts";
import { fitModel } from "../../src/model/model.ts";
import {
  type ProductComparisonChoices,
  productComparisonOptions,
} from "../../src/questions/product-comparison/options.ts";
import {
  type ProductComparison,
  productComparison,
} from "../../src/questions/product-comparison.ts";
import { compareGroups } from "../../src/statistics/group-comparison.ts";
import { aFill } from "../support/catches.ts";
import { plainDesign } from "../support/comparisons.ts";
import { productTrialCatches, trialOptions } from "../support/product-trial.ts";
import { present } from "../support/reference.ts";

function compare(
  catches: readonly Catch[],
  given: Partial<ProductComparisonChoices> = {},
): ProductComparison {
  const model = fitModel(catches, trialOptions);
  return productComparison(model, productComparisonOptions(trialOptions, given));
}

function between(result: ProductComparison, first: string, second: string) {
  const found = result.contrasts.find(
    (one) =>
      (one.first === first && one.second === second) ||
      (one.first === second && one.second === first),
  );
  return present(found);
}

function codes(result: ProductComparison): readonly string[] {
  return result.cautions.map(({ code }) => code);
}

/** Fills of two catches of 20 turns about the given deliveries, with a little catch scatter. */
function fillsOf(product: string, deliveries: readonly number[], given: Partial<Catch> = {}) {
  return deliveries.flatMap((delivery, i) =>
    aFill(
      [
        [20, 20 * delivery * 1.01],
        [20, 20 * delivery * 0.99],
      ],
      { product, fill: i + 1, ...given },
    ),
  );
}

const threeProducts = [
  ...fillsOf("wheat", [0.41, 0.42, 0.43, 0.415]),
  ...fillsOf("pea", [0.4, 0.395, 0.41]),
  ...fillsOf("barley", [0.33, 0.34, 0.32, 0.335, 0.325]),
];

describe("the demo trial of four products", () => {
  it("gives the planted answer: every pair differs but the two lots of wheat", async () => {
    const result = compare(await productTrialCatches());
    expect(result.method).toBe("games-howell");
    expect(result.contrasts).toHaveLength(6);
    const same = result.contrasts.filter(({ differenceFound }) => !differenceFound);
    expect(same).toHaveLength(1);
    expect(between(result, "wheat lot A", "wheat lot B").verdict).toBe("undecided");
    expect(codes(result)).toContain("blocks-not-used");
    expect(codes(result)).toContain("no-equivalence-margin");
  });

  it("covers the true deliveries and ratios that it was made from", async () => {
    const result = compare(await productTrialCatches());
    const truth = { "wheat lot A": 0.4158, "wheat lot B": 0.4168, pea: 0.3967, barley: 0.3317 };
    for (const { product, estimate } of result.products) {
      const interval = present(estimate.interval);
      expect(truth[product as keyof typeof truth]).toBeGreaterThan(present(interval.lower));
      expect(truth[product as keyof typeof truth]).toBeLessThan(present(interval.upper));
    }
    const { ratio, first } = between(result, "wheat lot A", "barley");
    const set = present(ratio.set);
    if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
    const planted = first === "barley" ? 0.3317 / 0.4158 : 0.4158 / 0.3317;
    expect(planted).toBeGreaterThan(set.lower);
    expect(planted).toBeLessThan(set.upper);
  });

  it("shows the lots of wheat equivalent within 2 % and calls no other pair so", async () => {
    const result = compare(await productTrialCatches(), { equivalenceMargin: 0.02 });
    const equivalent = result.contrasts.filter(({ verdict }) => verdict === "equivalent");
    expect(equivalent.map(({ first, second }) => [first, second].sort())).toEqual([
      ["wheat lot A", "wheat lot B"],
    ]);
    expect(codes(result)).not.toContain("no-equivalence-margin");
  });

  it("pairs products by day when each is to have its own spread", async () => {
    const result = compare(await productTrialCatches(), { blocks: "day", spread: "separate" });
    expect(result.method).toBe("paired-bonferroni");
    expect(result.input.blocks).toEqual({ count: 5, complete: 5 });
    for (const { df, n } of result.contrasts) {
      expect(df).toBe(4);
      expect(n).toEqual([5, 5]);
    }
    const same = result.contrasts.filter(({ differenceFound }) => !differenceFound);
    expect(same.map(({ first, second }) => [first, second].sort())).toEqual([
      ["wheat lot A", "wheat lot B"],
    ]);
  });

  it("takes dates for blocks as well as the column that counts days", async () => {
    const catches = await productTrialCatches();
    const byDate = compare(catches, { blocks: "date", spread: "common" });
    const byDay = compare(catches, { blocks: "day", spread: "common" });
    expect(byDate.contrasts).toEqual(byDay.contrasts);
    expect(byDate.method).toBe("tukey-blocks");
  });

  it("compares with a reference on the log scale, in ratios only", async () => {
    const result = compare(await productTrialCatches(), { reference: "pea", scale: "log" });
    expect(result.method).toBe("dunnett-separate");
    expect(result.contrasts).toHaveLength(3);
    for (const contrast of result.contrasts) {
      expect(contrast.second).toBe("pea");
      expect(contrast.difference).toBeNull();
      expect(present(contrast.ratio.set).shape).toBe("interval");
    }
  });

  it("finds no product that scatters more than another, and shows every coefficient of variation", async () => {
    const { scatter } = compare(await productTrialCatches());
    expect(scatter.turns).toBe(30);
    expect(scatter.products.map(({ comparableFills }) => comparableFills)).toEqual([5, 5, 5, 5]);
    for (const { variation } of scatter.products) {
      expect(present(variation).df).toBe(15);
      // Planted: 1 % for 20 turns, so 0.82 % for 30, and a part from two meter speeds in every fill.
      expect(present(present(variation).interval).lower).toBeLessThan(0.0125);
      expect(present(present(variation).interval).upper).toBeGreaterThan(0.0082);
    }
    expect(scatter.contrasts.every(({ differenceFound }) => !differenceFound)).toBe(true);
  });
});

describe("two routes to one answer", () => {
  const deliveries = (product: string) =>
    fitModel(threeProducts, trialOptions)
      .meters.filter((meter) => meter.product === product)
      .flatMap(({ fills }) => fills.map(({ delivery }) => delivery));
  const groups = ["wheat", "pea", "barley"].map(deliveries);

  it("is Games and Howell on the deliveries of fills", () => {
    const { contrasts: textbook } = compareGroups(groups, plainDesign);
    compare(threeProducts).contrasts.forEach(({ difference, pValue }, i) => {
      expect(difference?.value).toBeCloseTo(present(textbook[i]).difference, 14);
      expect(difference?.interval?.lower).toBeCloseTo(present(present(textbook[i]).lower), 12);
      expect(pValue).toBeCloseTo(present(present(textbook[i]).pValue), 12);
    });
  });

  it("is Tukey's procedure where a common spread is declared", () => {
    const design = { ...plainDesign, spread: "common" } as const;
    const { contrasts: textbook } = compareGroups(groups, design);
    const result = compare(threeProducts, { spread: "common" });
    expect(result.method).toBe("tukey-kramer");
    result.contrasts.forEach(({ difference, pValue }, i) => {
      expect(difference?.interval?.upper).toBeCloseTo(present(present(textbook[i]).upper), 12);
      expect(pValue).toBeCloseTo(present(present(textbook[i]).pValue), 12);
    });
  });

  it("has a ratio interval that holds 1 exactly when no difference is found, near enough", () => {
    for (const { ratio, differenceFound } of compare(threeProducts).contrasts) {
      const set = present(ratio.set);
      if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
      expect(set.lower > 1 || set.upper < 1).toBe(differenceFound);
    }
  });

  it("shows the mean of fills, and its own interval, as the model does for one bin by itself in an order drawn by lot", () => {
    // Here reading the scale is no part of either.
    const unread = { ...trialOptions, scaleDivisionKg: null };
    const model = fitModel(threeProducts, unread, {
      asked: "never",
      borrowing: { ...usualBorrowing, borrow: "none" },
    });
    const { products } = compare(threeProducts);
    products.forEach(({ estimate }, i) => {
      expect(estimate.value).toBeCloseTo(present(model.meters[i]).across.mean.value, 14);
      expect(estimate.interval?.upper).toBeCloseTo(
        present(present(model.meters[i]).across.mean.interval?.upper),
        14,
      );
    });
  });
});

describe("the verdicts", () => {
  const near = [...fillsOf("a", [0.4, 0.402, 0.398, 0.401]), ...fillsOf("b", [0.4, 0.401, 0.399])];
  const apart = [
    ...fillsOf("a", [0.4, 0.402, 0.398, 0.401]),
    ...fillsOf("b", [0.45, 0.452, 0.449]),
  ];
  const vague = [...fillsOf("a", [0.4, 0.45]), ...fillsOf("b", [0.42, 0.47])];

  it.each([
    ["equivalent", near],
    ["different", apart],
    ["undecided", vague],
  ] as const)("is %s where the fills say so", (verdict, catches) => {
    const [contrast] = compare(catches, { equivalenceMargin: 0.03 }).contrasts;
    expect(contrast?.verdict).toBe(verdict);
  });

  it("is a difference by less than the margin when a small difference is known exactly", () => {
    const exact = [
      ...fillsOf("a", [0.4, 0.4004, 0.3996, 0.4002]),
      ...fillsOf("b", [0.404, 0.4044, 0.4038]),
    ];
    const [contrast] = compare(exact, { equivalenceMargin: 0.05 }).contrasts;
    expect(contrast).toMatchObject({
      verdict: "different within the margin",
      differenceFound: true,
    });
  });

  it("does not depend on which product comes first", () => {
    const there = compare(vague, { equivalenceMargin: 0.2 }).contrasts[0];
    const back = compare([...vague.slice(4), ...vague.slice(0, 4)], { equivalenceMargin: 0.2 });
    expect(back.contrasts[0]?.equivalence?.pValue).toBeCloseTo(
      present(there?.equivalence?.pValue),
      12,
    );
  });
});

describe("catches taken for fills", () => {
  it("are warned of where they would change a verdict, with both p-values", () => {
    // Fills of a differ more from one another than the products do; catches of a fill agree closely.
    const catches = [
      ...fillsOf("a", [0.4, 0.44, 0.42]).map((row) => ({ ...row })),
      ...fillsOf("b", [0.44, 0.47, 0.45]),
    ].flatMap((row) => [row, { ...row, catch: row.catch + 2 }, { ...row, catch: row.catch + 4 }]);
    const result = compare(catches);
    const warning = present(result.cautions.find(({ code }) => code === "catches-would-mislead"));
    expect(warning.facts).toMatchObject({
      first: "a",
      second: "b",
      verdict: "undecided",
      wrongVerdict: "different",
    });
  });

  it("are not mentioned where they come to the same verdict", () => {
    const apart = [...fillsOf("a", [0.4, 0.402, 0.398]), ...fillsOf("b", [0.45, 0.452, 0.449])];
    expect(codes(compare(apart))).not.toContain("catches-would-mislead");
  });
});

describe("what the fills cannot tell", () => {
  it("shows a product of one fill and makes no test of it", () => {
    const result = compare([...threeProducts, ...fillsOf("rye", [0.38])]);
    expect(result.products).toHaveLength(4);
    expect(result.contrasts).toHaveLength(3);
    const rye = present(result.products.find(({ product }) => product === "rye"));
    expect(rye.estimate).toMatchObject({ standardError: null, interval: null });
    expect(rye.spread).toBeNull();
    expect(result.cautions).toContainEqual(
      expect.objectContaining({
        code: "product-not-repeated",
        where: expect.objectContaining({ product: "rye" }),
      }),
    );
  });

  it("compares nothing when only one product has fills enough", () => {
    const result = compare([...fillsOf("wheat", [0.41, 0.42]), ...fillsOf("pea", [0.4])]);
    expect(result).toMatchObject({ method: null, overall: null, contrasts: [] });
    expect(codes(result)).toContain("nothing-to-compare");
  });

  it("compares no more pairs than a person reads, and says what to do", () => {
    const many = Array.from({ length: 72 }, (_, i) => fillsOf(`p${i}`, [0.41, 0.42])).flat();
    const result = compare(many);
    expect(result).toMatchObject({ contrasts: [], scatter: { contrasts: [] } });
    expect(result.products).toHaveLength(72);
    expect(result.cautions).toContainEqual(
      expect.objectContaining({ code: "too-many-pairs", facts: { products: 72, pairs: 2500 } }),
    );
    expect(compare(many, { reference: "p3" }).contrasts).toHaveLength(71);
  });

  it("compares nothing with a reference of one fill", () => {
    const result = compare([...threeProducts, ...fillsOf("rye", [0.38])], { reference: "rye" });
    expect(result.contrasts).toEqual([]);
  });

  it("leaves a pair untested whose fills agree exactly", () => {
    const still = [...fillsOf("a", [0.4, 0.4]), ...fillsOf("b", [0.5, 0.5])];
    const result = compare(still, { equivalenceMargin: 0.05 });
    expect(result.contrasts[0]).toMatchObject({ verdict: "untested", pValue: null });
    expect(result.contrasts[0]?.ratio.set).toBeNull();
    expect(result.contrasts[0]?.ratio.value).toBeCloseTo(0.8, 12);
    expect(codes(result)).toContain("product-without-spread");
  });

  it("calls fewer than four fills of a product few", () => {
    const result = compare(threeProducts);
    const few = result.cautions.filter(({ code }) => code === "product-few-fills");
    expect(few.map(({ where }) => where.product)).toEqual(["pea"]);
  });

  it("does not compare catch scatter of fills of two catches", () => {
    const result = compare(threeProducts);
    expect(result.scatter.contrasts.every(({ method }) => method === "none")).toBe(true);
    expect(codes(result)).toContain("scatter-not-compared");
  });

  it("sets aside fills whose scatter the scale hid when scatter is compared", () => {
    const four = (product: string, scatter: number) =>
      [1, 2, 3, 4].flatMap((number) =>
        aFill(
          [1 + scatter, 1 - scatter, 1 + scatter / 2, 1 - scatter / 2].map(
            (factor) => [20, 8 * factor * (1 + number / 500)] as const,
          ),
          { product, fill: number },
        ),
      );
    const hidden = four("a", 0.01).map((row) => (row.fill === 2 ? { ...row, netKg: 8 } : row));
    const result = compare([...hidden, ...four("b", 0.02)]);
    expect(result.scatter.products[0]).toMatchObject({ comparableFills: 3, withoutScatter: 1 });
    expect(codes(result)).toContain("fills-without-scatter");
    expect(result.scatter.contrasts[0]?.ratio?.value ?? 0).toBeLessThan(1);
  });

  it("compares the scatter of one fill each by Brown and Forsythe when catches are enough", () => {
    const turns = [0.4, 0.402, 0.398, 0.401, 0.399, 0.4005];
    const wide = turns.map((delivery) => 0.4 + 8 * (delivery - 0.4));
    const one = (product: string, deliveries: readonly number[]) =>
      aFill(
        deliveries.map((delivery) => [20, 20 * delivery] as const),
        { product },
      );
    const { scatter } = compare([...one("a", turns), ...one("b", wide)]);
    expect(scatter.contrasts[0]?.method).toBe("Brown–Forsythe");
    expect(present(scatter.contrasts[0]?.pValue)).toBeLessThan(0.05);
    expect(scatter.contrasts[0]?.ratio).toBeNull();
  });
});

describe("bins and blocks", () => {
  it("takes a product's fills together over bins", () => {
    const catches = [
      ...fillsOf("wheat", [0.41, 0.42], { bin: "front" }),
      ...fillsOf("wheat", [0.43, 0.44], { bin: "rear" }),
      ...fillsOf("pea", [0.4, 0.39], { bin: "front" }),
      ...fillsOf("pea", [0.38, 0.37], { bin: "rear" }),
    ];
    const result = compare(catches);
    expect(result.products.map(({ fills }) => fills)).toEqual([4, 4]);
    expect(result.products[0]?.estimate.value).toBeCloseTo(mean([0.41, 0.42, 0.43, 0.44]), 12);
    expect(codes(result)).not.toContain("products-share-some-bins");
    const byBin = compare(catches, { blocks: "bin" });
    expect(byBin.contrasts[0]).toMatchObject({ n: [2, 2], df: 1 });
  });

  it("says that two products in two bins cannot be told from two meters", () => {
    const result = compare([
      ...fillsOf("wheat", [0.41, 0.42], { bin: "front" }),
      ...fillsOf("pea", [0.4, 0.39], { bin: "rear" }),
    ]);
    const found = present(
      result.cautions.find(({ code }) => code === "products-in-different-bins"),
    );
    expect(found.severity).toBe("serious");
  });

  it("says when products share only some bins, and not when bins are the blocks", () => {
    const catches = [
      ...fillsOf("wheat", [0.41, 0.42], { bin: "front" }),
      ...fillsOf("wheat", [0.43, 0.44], { bin: "rear" }),
      ...fillsOf("pea", [0.4, 0.39], { bin: "front" }),
    ];
    expect(codes(compare(catches))).toContain("products-share-some-bins");
    expect(codes(compare(catches, { blocks: "bin" }))).not.toContain("products-share-some-bins");
  });

  it("uses the blocks that a pair shares, and counts neither others nor their products", () => {
    const inBlock = (product: string, deliveries: readonly number[], labels: readonly string[]) =>
      fillsOf(product, deliveries).map((row) => ({
        ...row,
        extra: { block: present(labels[row.fill - 1]) },
      }));
    const catches = [
      ...inBlock("a", [0.41, 0.42, 0.43, 0.4], ["I", "II", "III", "IV"]),
      ...inBlock("b", [0.4, 0.415, 0.42], ["I", "II", "III"]),
      ...inBlock("c", [0.33, 0.34], ["IV", ""]),
    ];
    const result = compare(catches, { blocks: "block" });
    expect(result.contrasts.map(({ first, second, n }) => [first, second, n[0]])).toEqual([
      ["a", "b", 3],
    ]);
    expect(codes(result)).toContain("pairs-share-no-blocks");
    expect(result.input).toMatchObject({
      products: 3,
      fills: 9,
      blocks: { count: 3, complete: 3 },
    });
    expect(result.compared).toEqual({
      products: 2,
      fills: 6,
      catches: 12,
      leftOut: { products: [{ product: "c", fills: 2 }], withoutBlock: 0, alone: 1 },
    });
  });

  it("reports fills whose block is not known", () => {
    const catches = threeProducts.map((row) => ({
      ...row,
      extra: row.fill === 1 ? {} : { day: String(row.fill) },
    }));
    const found = compare(catches, { blocks: "day" }).cautions;
    expect(found).toContainEqual(
      expect.objectContaining({ code: "fills-without-block", facts: { fills: 3 } }),
    );
  });

  it("doubts a declared common spread that the fills contradict", () => {
    const catches = [
      ...fillsOf("a", [0.4, 0.4001, 0.3999, 0.4002]),
      ...fillsOf("b", [0.3, 0.4, 0.5, 0.45]),
    ];
    expect(codes(compare(catches, { spread: "common" }))).toContain("common-spread-doubtful");
    expect(codes(compare(catches))).not.toContain("common-spread-doubtful");
  });
});

describe("properties", () => {
  const deliveries = fc.array(fc.double({ min: 0.3, max: 0.5, noNaN: true }), {
    minLength: 2,
    maxLength: 5,
  });

  it("has plain JSON as result and no number that is not one", () => {
    fc.assert(
      fc.property(deliveries, deliveries, (a, b) => {
        const result = compare([...fillsOf("a", a), ...fillsOf("b", b)], {
          equivalenceMargin: 0.05,
        });
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
      }),
      { numRuns: 15 },
    );
  });

  it("does not depend on the order of rows, and scales with the unit of mass", () => {
    fc.assert(
      fc.property(deliveries, deliveries, (a, b) => {
        const catches = [...fillsOf("a", a), ...fillsOf("b", b)];
        const [plain] = compare(catches).contrasts;
        const rowsOf = (product: string) => catches.filter((row) => row.product === product);
        const mixed = compare([...rowsOf("a").reverse(), ...rowsOf("b").reverse()]);
        expect(mixed.contrasts[0]?.difference?.value).toBeCloseTo(
          present(plain?.difference).value,
          12,
        );
        const heavy = compare(catches.map((row) => ({ ...row, netKg: row.netKg * 1024 })));
        const scaled = present(heavy.contrasts[0]?.difference);
        expect(scaled.value / 1024).toBeCloseTo(present(plain?.difference).value, 12);
        if (plain?.pValue !== null && plain?.pValue !== undefined) {
          expect(heavy.contrasts[0]?.pValue).toBeCloseTo(plain.pValue, 9);
        }
      }),
      { numRuns: 15 },
    );
  });
});

describe("options", () => {
  it.each([
    ["a reference that is no product", { reference: "oats" }],
    ["a column that is not there", { blocks: "week" }],
    ["an unknown spread", { spread: "equal" as never }],
    ["an unknown scale", { scale: "square root" as never }],
    ["a margin of zero", { equivalenceMargin: 0 }],
    ["a misspelt option", { referenc: "pea" } as never],
  ])("refuses %s", (_, given) => {
    expect(() => compare(threeProducts, given)).toThrow(OptionError);
  });
});
