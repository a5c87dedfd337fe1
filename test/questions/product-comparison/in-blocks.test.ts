import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import type { ProductContrast } from "../../../src/questions/product-comparison/result.ts";
import { compared } from "../../support/product-answers.ts";
import { present } from "../../support/reference.ts";
import { catchesInBlocks } from "../../support/trials.ts";

/** One row a block: the delivery of wheat, pea and barley in it. */
type Trial = readonly (readonly number[])[];
const products = ["wheat", "pea", "barley"];

const trial: Trial = [
  [0.301, 0.31, 0.297],
  [0.295, 0.309, 0.296],
  [0.306, 0.318, 0.304],
  [0.298, 0.306, 0.29],
];

function catchesOf(rows: Trial, names: readonly string[] = products): readonly Catch[] {
  return catchesInBlocks(rows, names, 0.005);
}

const inBlocks = { blocks: "block" } as const;

function ratios({ ratio, notAlike }: ProductContrast): readonly number[] {
  return [ratio, present(notAlike).ratio].flatMap(({ value, set }) =>
    set?.shape === "interval" ? [value, set.lower, set.upper] : [],
  );
}

function expectAlike(found: readonly number[], wanted: readonly number[], digits = 10): void {
  expect(found).toHaveLength(6);
  found.forEach((value, i) => {
    expect(value).toBeCloseTo(present(wanted[i]), digits);
  });
}

/** Blocks whose products scatter enough to be judged. */
const trials = fc
  .array(fc.array(fc.double({ min: 0.3, max: 0.5, noNaN: true }), { minLength: 3, maxLength: 3 }), {
    minLength: 3,
    maxLength: 5,
  })
  .filter((rows) => {
    const shares = rows.map(([a = 1, b = 1, c = 1]) => [a / b, b / c]);
    const spreadOf = (place: 0 | 1) => {
      const own = shares.map((row) => present(row[place]));
      return Math.max(...own) - Math.min(...own);
    };
    return spreadOf(0) > 0.01 && spreadOf(1) > 0.01;
  });

describe("products in complete blocks", () => {
  it("share one residual variance on (blocks − 1)·(products − 1) degrees of freedom, unasked", () => {
    const result = compared(catchesOf(trial), inBlocks);
    expect(result).toMatchObject({ method: "tukey-blocks", scale: "log" });
    expect(result.contrasts.map(({ df }) => df)).toEqual([6, 6, 6]);
    expect(result.contrasts.map(({ notAlike }) => notAlike?.df)).toEqual([3, 3, 3]);
  });

  it("are judged by Dunnett against a reference", () => {
    const result = compared(catchesOf(trial), { ...inBlocks, reference: "pea" });
    expect(result.method).toBe("dunnett-blocks");
    expect(result.contrasts.map(({ first, second }) => [first, second])).toEqual([
      ["wheat", "pea"],
      ["barley", "pea"],
    ]);
    const all = compared(catchesOf(trial), inBlocks);
    const width = ([, lower = 0, upper = 0]: readonly number[]) => upper / lower;
    const [against] = result.contrasts;
    expect(width(ratios(present(against)))).toBeLessThan(width(ratios(present(all.contrasts[0]))));
  });

  it("differ exactly where the interval that is shown leaves out equality", () => {
    fc.assert(
      fc.property(trials, (rows) => {
        for (const { ratio, pValue, differenceFound, notAlike } of compared(
          catchesOf(rows),
          inBlocks,
        ).contrasts) {
          const set = present(ratio.set);
          if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
          expect(differenceFound).toBe(set.lower > 1 || set.upper < 1);
          expect(present(pValue) < 0.05).toBe(differenceFound);
          const beside = present(notAlike);
          const own = present(beside.ratio.set);
          if (own.shape !== "interval") throw new Error(`It is a ${own.shape}.`);
          expect(beside.differenceFound).toBe(own.lower > 1 || own.upper < 1);
          expect(present(beside.pValue) < 0.05).toBe(beside.differenceFound);
        }
      }),
      { numRuns: 15 },
    );
  });

  it("are equivalent exactly where the pair's own interval lies within the margin", () => {
    const verdicts = [0.005, 0.02, 0.05, 0.06].map((equivalenceMargin) =>
      compared(catchesOf(trial), { ...inBlocks, equivalenceMargin }).contrasts.map(
        ({ verdict, equivalence }) => {
          const { set, lowerLimit, upperLimit, level } = present(equivalence);
          if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
          expect(level).toBe(0.9);
          expect(verdict.includes("within") || verdict === "equivalent").toBe(
            set.lower > lowerLimit && set.upper < upperLimit,
          );
          return verdict;
        },
      ),
    );
    expect(verdicts).toEqual([
      ["different", "undecided", "different"],
      ["different", "undecided", "different"],
      ["different within the margin", "equivalent", "different"],
      ["different within the margin", "equivalent", "different within the margin"],
    ]);
  });

  it("are never called equivalent without a margin", () => {
    for (const { equivalence, notAlike } of compared(catchesOf(trial), inBlocks).contrasts) {
      expect(equivalence).toBeNull();
      expect(notAlike?.equivalence).toBeNull();
    }
  });

  it("do not notice what a block does to all of them in proportion", () => {
    fc.assert(
      fc.property(
        trials,
        fc.array(fc.double({ min: 0.7, max: 1.4, noNaN: true }), { minLength: 5, maxLength: 5 }),
        (rows, effects) => {
          const moved = rows.map((row, i) => row.map((value) => value * present(effects[i])));
          const after = compared(catchesOf(moved), inBlocks).contrasts;
          compared(catchesOf(rows), inBlocks).contrasts.forEach((contrast, i) => {
            expectAlike(ratios(present(after[i])), ratios(contrast), 8);
          });
        },
      ),
      { numRuns: 10 },
    );
  });

  it("have the same ratios in any unit of mass", () => {
    fc.assert(
      fc.property(trials, fc.double({ min: 0.01, max: 1000, noNaN: true }), (rows, factor) => {
        const scaled = catchesOf(rows).map((row) => ({ ...row, netKg: row.netKg * factor }));
        const after = compared(scaled, inBlocks).contrasts;
        compared(catchesOf(rows), inBlocks).contrasts.forEach((contrast, i) => {
          expectAlike(ratios(present(after[i])), ratios(contrast), 8);
        });
      }),
      { numRuns: 10 },
    );
  });

  it("change places in the answer when they change places in the file", () => {
    const turned = trial.map(([a = 0, b = 0, c = 0]) => [c, a, b]);
    const before = compared(catchesOf(trial), inBlocks).contrasts;
    const after = compared(catchesOf(turned, ["barley", "wheat", "pea"]), inBlocks).contrasts;
    for (const contrast of before) {
      const { first, second } = contrast;
      const same = after.find((one) => one.first === first && one.second === second);
      const other = after.find((one) => one.first === second && one.second === first);
      const inverse = ([value = 0, lower = 0, upper = 0]: readonly number[]) => [
        1 / value,
        1 / upper,
        1 / lower,
      ];
      const found =
        same === undefined
          ? [ratios(present(other)).slice(0, 3), ratios(present(other)).slice(3)].flatMap(inverse)
          : ratios(same);
      expectAlike(found, ratios(contrast));
    }
  });

  it("are compared over the complete blocks where one of many lacks a product, and it is said", () => {
    const catches = catchesOf(trial).filter(
      ({ product, extra }) => product !== "barley" || extra.block !== "4",
    );
    const result = compared(catches, inBlocks);
    expect(result.method).toBe("tukey-blocks");
    expect(result.contrasts.map(({ n, notAlike }) => [n[0], notAlike?.n[0]])).toEqual([
      [3, 4],
      [3, 3],
      [3, 3],
    ]);
    expect(result.cautions).toContainEqual(
      expect.objectContaining({
        code: "blocks-incomplete",
        facts: { blocks: 4, complete: 3, pooled: true },
      }),
    );
  });

  it("are taken each pair by itself beyond 8 blocks, or where that is asked for", () => {
    const nine = Array.from({ length: 9 }, (_, i) => present(trial[i % 4]).map((x) => x + i / 1e4));
    const [long, asked] = [
      compared(catchesOf(nine), inBlocks),
      compared(catchesOf(trial), { ...inBlocks, spread: "separate" }),
    ];
    for (const { method, contrasts } of [long, asked]) {
      expect(method).toBe("paired-bonferroni");
      expect(contrasts.every(({ notAlike }) => notAlike === null)).toBe(true);
    }
  });

  it("know no error where every block agrees", () => {
    const still = trial.map(() => [0.3, 0.31, 0.32]);
    for (const { verdict, ratio } of compared(catchesOf(still), inBlocks).contrasts) {
      expect([verdict, ratio.set]).toEqual(["untested", null]);
    }
  });
});
