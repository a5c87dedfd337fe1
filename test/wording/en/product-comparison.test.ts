import { describe, expect, it } from "vitest";
import type { ProductComparison } from "../../../src/questions/product-comparison.ts";
import {
  compared,
  explained,
  fillsOf,
  fourProducts,
  inBlocks,
  planned,
} from "../../support/product-answers.ts";
import { productTrialCatches } from "../../support/product-trial.ts";
import { present } from "../../support/reference.ts";
import { english } from "../../support/words.ts";

const words = english();
const plain = (text: string | null) => (text ?? "").replaceAll(/[\u00a0\u202f]/g, " ");

function pairSentence(result: ProductComparison, first: string, second: string): string {
  const contrast = result.contrasts.find((one) => one.first === first && one.second === second);
  return plain(words.productComparison.contrast(present(contrast), result));
}

describe("a comparison of products, in words", () => {
  const say = words.productComparison;

  it("counts the verdicts and names the method", () => {
    expect(plain(say.sentence(compared(fourProducts, { equivalenceMargin: 0.02 })))).toBe(
      "3 products over 12 fills. Not compared: rye (1 fill). Of 3 pairs: 2 different and 1 equivalent (Games–Howell: every product its own spread; 95 % for all pairs together).",
    );
    expect(say.sentence(compared(fillsOf("wheat", [0.4, 0.41])))).toContain("two fills each");
  });

  it("says by how much and how surely two products differ", () => {
    expect(pairSentence(compared(fourProducts), "wheat", "pea")).toMatch(
      /^wheat delivers 7\.9 % more per turn than pea \(ratio 107\.\d % to 108\.\d %, p < 0\.001\)\.$/,
    );
  });

  it("never calls two products the same because no difference was found", () => {
    expect(pairSentence(compared(fourProducts), "wheat", "durum")).toMatch(
      /^wheat and durum: undecided; wheat may deliver anything from 0\.8 % less to 0\.6 % more\. Not shown to differ, not shown to be equal either/,
    );
    expect(
      pairSentence(compared(fourProducts, { equivalenceMargin: 0.02 }), "wheat", "durum"),
    ).toMatch(/^wheat and durum are equivalent within ± 2\.0 %/);
    const tight = compared(fourProducts, { equivalenceMargin: 0.002 });
    expect(pairSentence(tight, "wheat", "durum")).toContain("undecided");
  });

  it("says of a difference within the margin that it is one, and that it counts as none", () => {
    const exact = [
      ...fillsOf("a", [0.4, 0.4004, 0.3996, 0.4002]),
      ...fillsOf("b", [0.404, 0.4044, 0.4038]),
    ];
    expect(pairSentence(compared(exact, { equivalenceMargin: 0.05 }), "a", "b")).toMatch(
      /^a delivers 1\.0 % less per turn than b: a difference, but less than the ± 5\.0 % that count as none \(ratio .*, p .*, ratio .* at 90 %, for this pair alone\)\.$/,
    );
  });

  it("has the pair with spreads not assumed alike beside every one that is pooled, and its verdict where it is another", () => {
    const result = compared(inBlocks(fourProducts), { blocks: "block", equivalenceMargin: 0.005 });
    for (const contrast of result.contrasts) {
      const said = plain(say.contrast(contrast, result));
      expect(said).toContain("spreads not assumed alike: ");
      const { verdict, notAlike } = contrast;
      const other = present(notAlike).verdict;
      expect(said.includes(`, ${say.verdicts[other]})`)).toBe(other !== verdict);
    }
    expect(plain(say.pooled(result))).toContain(
      "where no product differs, 5 % to 6 % find a difference all the same; 6 % to 9 % where",
    );
    expect(say.pooled(compared(fourProducts))).toBeNull();
  });

  it("says how often Games and Howell's comparison is wrong where it is used, and only there", () => {
    const where = "6 % to 8 % of such comparisons find a difference where there is none";
    expect(plain(say.method(compared(fourProducts)))).toContain(where);
    const others = [{ spread: "common" }, { reference: "pea" }] as const;
    for (const given of others)
      expect(plain(say.method(compared(fourProducts, given)))).not.toContain(where);
  });

  it("says when fills show no scatter to judge by", () => {
    const still = compared([...fillsOf("a", [0.4, 0.4]), ...fillsOf("b", [0.5, 0.5])]);
    expect(pairSentence(still, "a", "b")).toBe(
      "a and b cannot be tested: their fills show no scatter to judge by.",
    );
  });

  it("says within blocks that it is the differences that do not scatter, not the fills", () => {
    const deliveries = [0.4, 0.42, 0.39, 0.41, 0.405, 0.395];
    const twice = inBlocks([...fillsOf("a", deliveries), ...fillsOf("b", deliveries)]);
    const said = (third: readonly number[]) =>
      pairSentence(
        compared([...twice, ...inBlocks(fillsOf("c", third))], { blocks: "block" }),
        "a",
        "b",
      );
    // One spread for three products rests on c as well; alone, a pair has only its own differences.
    expect(said([])).toBe(
      "a and b cannot be tested: they differ by the same in every block, so their differences show no scatter to judge by, however much their fills do.",
    );
    expect(said(deliveries.map((each) => 1.1 * each))).toBe(said([]));
    expect(said(deliveries.toReversed())).not.toContain("cannot be tested");
  });

  it("has words for sets of ratios that are no interval", () => {
    expect(plain(say.ratioSet({ shape: "two half-lines", below: -2, above: 0.5 }))).toBe(
      "up to −200.0 %, or from 50.0 %",
    );
    expect(say.ratioSet({ shape: "whole line" })).toBe("any ratio");
    expect(say.ratioSet(null)).toBe("not known");
  });
});

describe("explaining variables, in words", () => {
  const say = words.explainingVariables;

  it("says that density does not explain all, and which products differ in volume", async () => {
    const result = explained(await productTrialCatches());
    expect(plain(say.sentence(result))).toMatch(/^Bulk density does not explain all .* 9\d % of/);
    expect(plain(say.volumes(result))).toContain("pea");
    expect(plain(say.afterDensity(result))).toContain("products still differ");
  });

  it("does not take a difference that was not found for proof", () => {
    const proportional = [770, 700, 640].flatMap((density) =>
      fillsOf(
        `product ${density}`,
        [0.00054, 0.000541, 0.000539].map((volume) => volume * density),
        { bulkDensityKgPerM3: density },
      ),
    );
    expect(say.sentence(explained(proportional))).toContain("does not prove that there is none");
  });

  it("says what one more turn a minute does, from how many fills", async () => {
    const result = explained(await productTrialCatches());
    const [speed] = result.withinFills;
    expect(plain(say.withinFill(present(speed), result))).toMatch(
      /^Within a fill, delivery changes by −0\.0\d+ % for one turn\/min more of meter speed \(.*\); one slope from each of 20 fills\.$/,
    );
  });

  it("predicts with the interval for a product, and without one from a single product", () => {
    const full = explained(fourProducts, { newDensityKgPerM3: 760 });
    expect(plain(say.prediction(full))).toMatch(
      /95 % prediction interval 0\.\d+ to 0\.\d+ kg\/turn/,
    );
    const one = fillsOf("wheat", [0.4, 0.41], { bulkDensityKgPerM3: 770 });
    expect(say.prediction(explained(one, { newDensityKgPerM3: 760 }))).toContain(
      "cannot be told from one product",
    );
    expect(say.prediction(explained(one))).toBeNull();
  });
});

describe("a planned trial, in words", () => {
  const say = words.trialPlan;

  it("says what the trial will be able to show", () => {
    expect(plain(say.sentence(planned()))).toMatch(
      /^3 products, 5 fills of each, 60 catches and 1,800 turns in all: .* ± 5\.\d % .* 5\.0 % will be found with a chance of \d+ %\.$/,
    );
    expect(say.equivalence(planned())).toBeNull();
    expect(say.equivalence(planned({ equivalenceMargin: 0.05 }))).toContain("not adjusted");
  });

  it("names the assumptions it rests on, and the random start", () => {
    expect(plain(say.assumptions(planned()))).toContain("catches of 20 turns scatter by 2.0 %");
    expect(say.order(planned({ seed: 42 }))).toContain("random start 42");
  });
});
