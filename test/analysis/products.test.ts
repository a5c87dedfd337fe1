import { describe, expect, it } from "vitest";
import type { ComparisonChoices } from "../../src/analysis/options.ts";
import { productAnswers } from "../../src/analysis/products.ts";
import type { Catch } from "../../src/data/types.ts";
import { fitModel } from "../../src/model/model.ts";
import { fillsOf } from "../support/product-answers.ts";
import { present } from "../support/reference.ts";
import { english } from "../support/words.ts";

const caught = (bin: string, product: string, delivery: number, fills = 4) =>
  fillsOf(
    product,
    [0.01, -0.012, 0.006, -0.004].slice(0, fills).map((share) => delivery * (1 + share)),
    { bin },
  );

function answers(catches: readonly Catch[], choices: ComparisonChoices = {}) {
  return productAnswers(fitModel(catches), choices);
}

function pairs(catches: readonly Catch[], choices: ComparisonChoices = {}): readonly string[] {
  const { comparison } = present(answers(catches, choices));
  return comparison.contrasts.map(({ first, second }) => `${first}–${second}`);
}

const season = [
  ...caught("front", "wheat", 0.4),
  ...caught("front", "barley", 0.35),
  ...caught("middle", "pea", 0.3),
  ...caught("rear", "fertiliser", 0.2),
];

describe("products, unasked", () => {
  it("are compared where they shared a bin, and the others are left out of it", () => {
    expect(pairs(season)).toEqual(["wheat–barley"]);
    const { comparison, explaining } = present(answers(season));
    expect(comparison.products.map(({ product }) => product)).toEqual(["wheat", "barley"]);
    expect(JSON.stringify(explaining)).not.toContain("fertiliser");
    expect(comparison.cautions.map(({ code }) => code)).not.toContain("products-in-different-bins");
    const alone = season.filter(({ product }) => ["wheat", "barley"].includes(product));
    expect(pairs(alone)).toEqual(pairs(season));
    expect(comparison.contrasts).toEqual(present(answers(alone)).comparison.contrasts);
  });

  it("are not compared across bins that each held several", () => {
    const two = [...season, ...caught("rear", "lime", 0.25)];
    expect(pairs(two)).toEqual(["wheat–barley", "fertiliser–lime"]);
    const { comparison } = present(answers(two));
    expect(comparison.scatter.contrasts).toHaveLength(2);
    const codes = comparison.cautions.map(({ code }) => code);
    expect(codes).not.toContain("products-in-different-bins");
    expect(codes).toContain("products-share-some-bins");
  });

  it("are compared only with those they shared a bin with, along a chain of bins", () => {
    const chain = [...season, ...caught("middle", "barley", 0.34)];
    expect(pairs(chain)).toEqual(["wheat–barley", "barley–pea"]);
  });

  it("keep intervals that hold together with those of all pairs, so that none is too narrow", () => {
    const two = [...season, ...caught("rear", "lime", 0.25)];
    const all = present(answers(two, { when: "always" })).comparison.contrasts;
    const told = present(answers(two)).comparison.contrasts;
    expect(all).toHaveLength(10);
    for (const contrast of told) {
      const { first, second } = contrast;
      const same = present(all.find((one) => one.first === first && one.second === second));
      // Fewer products in the family: never narrower than alone, never wider than with everything.
      const width = ({ interval }: NonNullable<typeof contrast.difference>) =>
        Number(interval?.upper) - Number(interval?.lower);
      const widest = width(present(same.difference));
      const alone = two.filter(({ product }) => product === first || product === second);
      const narrowest = width(present(present(answers(alone)).comparison.contrasts[0]?.difference));
      expect(width(present(contrast.difference))).toBeLessThan(widest);
      expect(width(present(contrast.difference))).toBeGreaterThan(narrowest);
    }
  });

  it("say that none can be compared when those that shared a bin were filled once", () => {
    const once = [
      ...caught("front", "wheat", 0.4),
      ...caught("front", "barley", 0.35, 1),
      ...caught("rear", "pea", 0.3),
      ...caught("rear", "oats", 0.33, 1),
    ];
    expect(pairs(once)).toEqual([]);
    const { comparison } = present(answers(once));
    expect(comparison.cautions.map(({ code }) => code)).toContain("nothing-to-compare");
    expect(english().productComparison.sentence(comparison)).toBe(
      "No product can be compared with another: both products of a pair need two fills each.",
    );
  });

  it("are not compared where every bin kept to its own", () => {
    expect(answers(season.filter(({ product }) => product !== "barley"))).toBeNull();
  });
});

describe("products, asked for", () => {
  it("are all compared, with the warning that some never shared a bin", () => {
    expect(pairs(season, { when: "always" })).toHaveLength(6);
    const { comparison } = present(answers(season, { when: "always" }));
    expect(comparison.cautions.map(({ code }) => code)).toContain("products-in-different-bins");
  });

  it("are told of in part where that is asked for", () => {
    const choices = { when: "always", pairs: "sharing a bin" } as const;
    expect(pairs(season, choices)).toEqual(["wheat–barley"]);
    const asked = { when: "always", pairs: "some" } as unknown as ComparisonChoices;
    expect(() => answers(season, asked)).toThrow("all or sharing a bin");
  });
});
