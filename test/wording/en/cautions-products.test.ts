import { describe, expect, it } from "vitest";
import { cautionList } from "../../../src/report/sections/cautions.ts";
import type { Where } from "../../../src/results/caution.ts";
import { cautionsProducts } from "../../../src/wording/en/cautions-products.ts";
import { cautionsProductsSayings } from "../../../src/wording/sayings/cautions-products.ts";
import {
  compared,
  explained,
  fillsOf,
  fourProducts,
  planned,
} from "../../support/product-answers.ts";
import { english } from "../../support/words.ts";

const words = english();
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, " ");

function sentences(result: { readonly cautions: Parameters<typeof cautionList>[0] }) {
  return cautionList(result.cautions, words).items.map(({ text }) => plain(String(text)));
}

describe("cautions about products, in words", () => {
  it("name the product they are about", () => {
    const said = sentences(compared(fourProducts));
    expect(said).toContain(
      "rye has one fill, which cannot tell the product from the fill: it is shown, not tested.",
    );
  });

  it("give both verdicts and both p-values where catches would mislead", () => {
    const many = [...fillsOf("a", [0.4, 0.44, 0.42]), ...fillsOf("b", [0.44, 0.47, 0.45])].flatMap(
      (row) => [row, { ...row, catch: row.catch + 2 }, { ...row, catch: row.catch + 4 }],
    );
    expect(sentences(compared(many)).join(" ")).toMatch(
      /would call a and b different \(p < 0\.001\) instead of undecided \(p = 0\.\d+\)/,
    );
  });

  it("say what to do about a density that was not tried", () => {
    const said = sentences(explained(fourProducts, { newDensityKgPerM3: 1000 }));
    expect(said[0]).toMatch(
      /^A bulk density of 1000.* kg\/m³ lies outside .* catch the product itself\.$/,
    );
  });

  it("say what a thin plan will not show", () => {
    const said = sentences(planned({ fills: 2, turnLevels: [20], catchesPerLevel: 1 }));
    expect(said).toHaveLength(4);
    expect(said.join(" ")).toMatch(/would be found in \d+ % of such trials only/);
  });

  it("say by which law a plan of many blocks would know more", () => {
    const [said] = sentences(planned({ fills: 12, analysis: "blocks", fillSpread: 0.02 }));
    expect(said).toMatch(
      /^Beyond 8 blocks each pair is judged by a spread of its own, here within ± \d\.\d %\. One spread for all products \(--spread-law common\) would come to ± \d\.\d % with the same fills; /,
    );
  });

  it("are whole sentences for every code, whatever the facts", () => {
    const facts = {
      fills: 1,
      products: 1,
      bins: ["front", "rear"],
      by: "day",
      blocks: 5,
      complete: 4,
      pairs: 1,
      pValue: 0.03,
      first: "a",
      second: "b",
      verdict: "undecided",
      wrongVerdict: "different",
      wrongPValue: 0.001,
      variable: "moisture",
      variables: ["moisture", "bulk density"],
      densityKgPerM3: 900,
      lowest: 600,
      highest: 800,
      power: 0.4,
      difference: 0.05,
      catches: 1,
      mostPooled: 8,
      halfWidth: 0.067,
      pooledHalfWidth: 0.046,
    };
    const where = { bin: null, product: "wheat", fill: null, catches: [] };
    // Each sentence takes the facts it knows and passes over the rest.
    const all = Object.values(
      cautionsProductsSayings(words.format, cautionsProducts),
    ) as unknown as readonly ((given: object, at: Where) => string)[];
    for (const sentence of all) {
      const said = sentence(facts, where);
      expect(said).toMatch(/^[A-Za-z0-9].*\.$/);
      expect(said).not.toMatch(/undefined|NaN|null/);
    }
  });
});
