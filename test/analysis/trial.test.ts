import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { aFill } from "../support/catches.ts";
import { fleets } from "../support/fleets.ts";
import { present } from "../support/reference.ts";
import { inventedTrial, trialCatches, trialLog, trialSetup } from "../support/trials.ts";

const comparisonOf = (...given: Parameters<typeof inventedTrial>) =>
  present(inventedTrial(...given).products).comparison;

describe("a log is a trial", () => {
  it("where its setup has one, and its products are compared as that says", () => {
    const told = {
      products: ["rye", "wheat", "pea"],
      reference: "wheat",
      equivalence_margin_percent: 3,
      spread: "separate",
      fills: 5,
    };
    const { trial, products } = inventedTrial(told);
    expect(present(trial).planned).toEqual({ products: ["rye", "wheat", "pea"], fills: 5 });
    const { options, method, contrasts } = present(products).comparison;
    expect(options).toMatchObject({
      blocks: "block",
      reference: "wheat",
      equivalenceMargin: 0.03,
      spread: "separate",
    });
    expect(method).toBe("paired-bonferroni");
    expect(contrasts.map(({ first, second }) => [first, second])).toEqual([
      ["rye", "wheat"],
      ["pea", "wheat"],
    ]);
  });

  it("or where it is told to be one, and nowhere else", () => {
    const comparison = { trial: { fills: null }, blocks: "block" };
    expect(analyse(trialLog(), null, { comparison }).trial).toBeDefined();
    expect(analyse(trialLog(), null, { comparison: { blocks: "block" } }).trial).toBeUndefined();
    expect(analyse(trialLog()).trial).toBeUndefined();
    const never = analyse(trialLog(), trialSetup(), { comparison: { when: "never" } });
    expect([never.trial, never.products]).toEqual([undefined, null]);
  });

  it("and what is told counts before its setup, part by part", () => {
    const { options } = comparisonOf(
      { equivalence_margin_percent: 3, order: "size" },
      { comparison: { equivalenceMargin: 0.01, trial: { fills: null } } },
    );
    expect(options).toMatchObject({ equivalenceMargin: 0.01, order: "by size", blocks: "block" });
    const both = inventedTrial({ fills: 4 }, { comparison: { trial: { fills: null } } });
    expect(present(both.trial).planned.fills).toBe(4);
  });

  it("and nobody asks whether its meters have moved, unless that is asked for", () => {
    const verdicts = (...given: Parameters<typeof inventedTrial>) =>
      new Set(inventedTrial(...given).meters.map(({ drift }) => drift?.verdict));
    expect(verdicts()).toEqual(new Set(["not asked"]));
    expect(verdicts({}, { drift: "after every fill" }).has("not asked")).toBe(false);
    expect(inventedTrial({}, { comparison: { when: "never" } }).options.drift).toBe(
      "after every fill",
    );
  });

  it("and not a fleet, however many its products", () => {
    const [, log] = present(fleets[0]);
    expect(analyse(log).fleet).toBeDefined();
    const trial = analyse(log, null, { comparison: { trial: { fills: null } } });
    expect([trial.fleet, trial.trial === undefined]).toEqual([undefined, false]);
  });
});

describe("what a trial tells of its plan", () => {
  it("is which products are not caught yet, are no part of it, or are behind", () => {
    const some = trialCatches().filter(({ product, fill }) => product !== "pea" || fill > 12);
    const told = { products: ["pea", "wheat", "oats"], fills: 5 };
    const trial = present(inventedTrial(told, {}, some).trial);
    expect(trial.notCaught).toEqual(["oats"]);
    expect(trial.notPlanned).toEqual(["barley", "rye"]);
    expect(trial.behind).toEqual([{ product: "pea", fills: 2 }]);
  });

  it("is nothing to compare while one product is caught", () => {
    const one = trialCatches().filter(({ product }) => product === "wheat");
    const { trial, products } = inventedTrial({ products: ["wheat", "pea"] }, {}, one);
    expect(present(trial).notCaught).toEqual(["pea"]);
    expect(present(products).comparison.contrasts).toEqual([]);
  });

  it("is no trial at all while none of its products is caught", () => {
    expect(inventedTrial({ products: ["oats", "triticale"] }).trial).toBeUndefined();
  });
});

describe("what came of a trial", () => {
  it("is counted by outcome, every pair once", () => {
    const { trial, products } = inventedTrial({ equivalence_margin_percent: 2 });
    const { outcomes } = present(trial);
    expect(Object.values(outcomes).reduce((sum, count) => sum + count)).toBe(6);
    for (const [verdict, count] of Object.entries(outcomes))
      expect(
        present(products).comparison.contrasts.filter((one) => one.verdict === verdict),
      ).toHaveLength(count);
  });

  it("is told in the order planned, or the heaviest first", () => {
    const names = (told: object) =>
      comparisonOf({ ...told }).products.map(({ product }) => product);
    const planned = { products: ["rye", "barley", "pea", "wheat"] };
    expect(names(planned)).toEqual(planned.products);
    expect(names({})).toEqual(["wheat", "pea", "barley", "rye"]);
    const bySize = comparisonOf({ ...planned, order: "size" });
    const means = bySize.products.map(({ estimate }) => estimate.value);
    expect(means).toEqual(means.toSorted((a, b) => b - a));
    for (const { first, ratio } of bySize.contrasts)
      expect(ratio.value, first).toBeGreaterThanOrEqual(1);
  });

  it("is to be relied on once what is serious about any fill of it is settled", () => {
    expect(present(inventedTrial().trial).toSettle).toEqual([]);
    const slipped = trialCatches().map((row) =>
      row.product === "pea" && row.fill === 2 && row.catch === 2
        ? { ...row, netKg: row.netKg * 1.9 }
        : row,
    );
    const { toSettle } = present(inventedTrial({}, {}, slipped).trial);
    expect(toSettle.map(({ code, where }) => [code, where.fill])).toEqual([["fill-set-aside", 2]]);
    const aside = aFill([[20, 99]], { product: "oats", fill: 21, extra: { block: "1" } });
    const only = { products: ["wheat", "pea", "barley", "rye"] };
    const beside = inventedTrial(only, {}, [...trialCatches(), ...aside]);
    expect(present(beside.trial).toSettle).toEqual([]);
  });
});
