import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCatches } from "../../src/data/read-catches.ts";
import { rowsToCsv } from "../../src/data/write-csv.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { trialPlanOptions } from "../../src/questions/trial-plan/options.ts";
import type { TrialPlanOptions } from "../../src/questions/trial-plan/result.ts";
import { sheetRows } from "../../src/questions/trial-plan/sheet.ts";
import { trialPlan } from "../../src/questions/trial-plan.ts";
import { blockLayout, independentLayout } from "../../src/statistics/comparison-layout.ts";
import { compareMeans, type MeanContrast } from "../../src/statistics/mean-comparison.ts";
import { allPairs, studentizedRangeRule } from "../../src/statistics/simultaneous.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const products = ["wheat", "pea", "barley"];

function design(given: Partial<TrialPlanOptions> = {}) {
  return trialPlan(trialPlanOptions({ products, ...given }));
}

describe("the sheet", () => {
  it("fills every product once in every block, and catches every turn level in every fill", () => {
    const { rows, input } = design({ fills: 4, meterSpeeds: [40, 70], catchesPerLevel: 1 });
    expect(input).toEqual({ products: 3, fills: 12, catches: 48, turns: 12 * 120 });
    for (const block of [1, 2, 3, 4]) {
      const own = rows.filter((row) => row.block === block);
      for (const product of products) {
        const fill = own.filter((row) => row.product === product);
        expect(fill.map(({ turns, meter_rpm }) => `${turns} at ${meter_rpm}`).sort()).toEqual([
          "20 at 40",
          "20 at 70",
          "40 at 40",
          "40 at 70",
        ]);
        expect(new Set(fill.map((row) => row.fill)).size).toBe(1);
      }
    }
  });

  it("numbers fills through the bin and catches through the fill, in the order of work", () => {
    const { rows } = design({ fills: 3 });
    expect([...new Set(rows.map(({ fill }) => fill))]).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect(rows.slice(0, 5).map((row) => row.catch)).toEqual([1, 2, 3, 4, 1]);
  });

  it("is the same for the same seed and another for another", () => {
    expect(design({ seed: 7 }).rows).toEqual(design({ seed: 7 }).rows);
    expect(design({ seed: 8 }).rows).not.toEqual(design({ seed: 7 }).rows);
  });

  it("puts every product first about equally often", () => {
    const firsts = new Map<unknown, number>();
    for (let seed = 1; seed <= 300; seed++) {
      const options = trialPlanOptions({ products, seed, fills: 2, turnLevels: [20] });
      const first = sheetRows(options)[0]?.product;
      firsts.set(first, (firsts.get(first) ?? 0) + 1);
    }
    // 300 draws at 1/3 scatter by 8.2.
    for (const product of products) {
      expect(Math.abs((firsts.get(product) ?? 0) - 100)).toBeLessThan(33);
    }
  });

  it("is a file of catches once the masses are filled in", async () => {
    const { rows } = design({ massUnit: "g" });
    const filled = rows.map((row) => ({
      ...row,
      gross_g: Number(row.turns) * 400 + 350,
      tare_g: 350,
    }));
    const log = await readCatches({ name: "sheet.csv", text: rowsToCsv(filled) });
    expect(log.massUnit).toBe("g");
    expect(log.catches).toHaveLength(rows.length);
    expect(log.catches[0]?.extra).toEqual({ block: "1" });
  });
});

describe("what to expect", () => {
  it("has the power that simulated trials of the same design have", () => {
    const plan = design({
      fills: 4,
      fillSpread: 0.02,
      catchScatter: { relative: 0.015, turns: 20 },
      difference: 0.05,
    });
    const random = randomStream(5);
    const pairs = allPairs(3);
    const runs = 500;
    let found = 0;
    for (let run = 0; run < runs; run++) {
      const groups = [1.05, 1, 1].map((mean) =>
        Array.from({ length: 4 }, () => mean + plan.spreadOfFills * random.normal()),
      );
      const { pairOf, rule } = independentLayout(groups, pairs, null, "separate");
      const { first, second, error } = present(pairOf({ first: 0, second: 1 }));
      const { variance, df } = present(error).at(1);
      if (rule.adjustedPValue((first - second) / Math.sqrt(variance), df) < 0.05) found++;
    }
    const error = 4 * Math.sqrt((plan.expected.power * (1 - plan.expected.power)) / runs);
    expect(Math.abs(found / runs - plan.expected.power)).toBeLessThan(error);
  });

  it("has the standard error that simulated trials of the same design find", () => {
    const plan = design({
      fills: 4,
      fillSpread: 0.02,
      catchScatter: { relative: 0.015, turns: 20 },
    });
    const random = randomStream(6);
    const runs = 5000;
    let variance = 0;
    for (let run = 0; run < runs; run++) {
      const groups = [1, 1, 1].map((mean) =>
        Array.from({ length: 4 }, () => mean + plan.spreadOfFills * random.normal()),
      );
      const { pairOf } = independentLayout(groups, allPairs(3), null, "separate");
      variance += present(present(pairOf({ first: 0, second: 1 })).error).at(1).variance / runs;
    }
    // A variance on 6 degrees of freedom scatters by 58 %, the root of the mean of 5,000 by 0.41 %.
    const expected = plan.spreadOfFills * Math.sqrt(2 / 4);
    expect(Math.abs(Math.sqrt(variance) / expected - 1)).toBeLessThan(0.01);
  });

  it("adds the scatter of a whole fill's catches to the spread between fills", () => {
    // Four catches of 20 and 40 turns: 120 turns a fill, scatter 2 % at 20 turns.
    expect(design().spreadOfFills).toBeCloseTo(Math.sqrt(0.03 ** 2 + 0.02 ** 2 / 6), 14);
  });

  it("counts the catches of every turn level and speed in every fill of every product", () => {
    // Two turn levels at two speeds, twice each: 8 catches a fill, of 3 products.
    const { expected, alternatives } = design({ fills: 4, meterSpeeds: [40, 70] });
    expect([expected.fills, expected.catches]).toEqual([4, 4 * 3 * 8]);
    expect(alternatives.slice(0, 3).map(({ fills, catches }) => [fills, catches])).toEqual([
      [2, 48],
      [3, 72],
      [4, 96],
    ]);
  });

  it("narrows and gains power with every further fill", () => {
    const { alternatives } = design({ equivalenceMargin: 0.05 });
    alternatives.slice(1).forEach((one, i) => {
      const before = present(alternatives[i]);
      expect(one.halfWidth).toBeLessThan(before.halfWidth);
      expect(one.power).toBeGreaterThan(before.power);
      expect(present(one.equivalencePower)).toBeGreaterThan(present(before.equivalencePower));
    });
  });

  it("gains by a common spread, and loses degrees of freedom within blocks", () => {
    const separate = design().expected.halfWidth;
    expect(design({ spread: "common" }).expected.halfWidth).toBeLessThan(separate);
    const paired = design({ analysis: "blocks", spread: "separate" });
    expect(paired.expected.halfWidth).toBeGreaterThan(separate);
  });

  it("does not state equivalence without a margin", () => {
    expect(design().expected.equivalencePower).toBeNull();
  });

  it("is plain JSON with chances between 0 and 1, whatever the plan", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 6 }),
        fc.double({ min: 0.002, max: 0.2, noNaN: true }),
        fc.constantFrom("fills" as const, "blocks" as const),
        (fills, fillSpread, analysis) => {
          const plan = design({ fills, fillSpread, analysis, equivalenceMargin: 0.05 });
          expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
          for (const { power, equivalencePower } of [plan.expected, ...plan.alternatives]) {
            expect(power).toBeGreaterThan(0);
            expect(power).toBeLessThanOrEqual(1);
            expect(present(equivalencePower)).toBeGreaterThanOrEqual(0);
            expect(present(equivalencePower)).toBeLessThanOrEqual(1);
          }
        },
      ),
      { numRuns: 6 },
    );
  });
});

/** Within blocks, fills with a standard deviation of 2 % in all. */
function inBlocks(count: number, fills: number, given: Partial<TrialPlanOptions> = {}) {
  return design({
    products: ["wheat", "pea", "barley", "durum"].slice(0, count),
    fills,
    analysis: "blocks",
    fillSpread: 0.02,
    catchScatter: { relative: 1e-9, turns: 20 },
    difference: 0.05,
    // On the log scale, which blocks are compared on, these are ± 0.05.
    equivalenceMargin: Math.expm1(0.05),
    ...given,
  }).expected;
}

// Simulated in R, 40,000 trials a row: test/reference/generate/blocks.R (error of a chance up to 0.005). Median
// half-width in percent, pooled and separate; chance of finding 5 % by Tukey, Dunnett and separate spreads; chance of
// showing equivalence within 5 %, pooled and separate.
describe("what blocks give with a standard deviation of 2 %", () => {
  it.each([
    [3, 3, [5.36, 10.47], [0.439, 0.498, 0.158], [0.628, 0.448]],
    [3, 4, [4.09, 6.1], [0.675, 0.731, 0.35], [0.857, 0.714]],
    [3, 5, [3.47, 4.59], [0.834, 0.872, 0.569], null],
    [3, 6, [3.06, 3.81], [0.921, 0.943, 0.747], [0.983, 0.956]],
    [4, 3, [5.33, 14.72], [0.4344, 0.533, 0.083], [0.71, 0.452]],
    [4, 6, [3.25, 4.54], [0.906, 0.943, 0.585], [0.986, 0.956]],
  ] as const)("%d products in %d blocks", (count, fills, widths, powers, equivalences) => {
    const pooled = inBlocks(count, fills);
    const against = inBlocks(count, fills, { reference: "pea" });
    const separate = inBlocks(count, fills, { spread: "separate" });
    expect([pooled.spread, against.spread, separate.spread]).toEqual([
      "common",
      "common",
      "separate",
    ]);
    [pooled, separate].forEach(({ halfWidth }, i) => {
      expect(Math.abs(100 * halfWidth - present(widths[i]))).toBeLessThan(0.11);
    });
    [pooled, against, separate].forEach(({ power }, i) => {
      expect(Math.abs(power - present(powers[i]))).toBeLessThan(0.013);
    });
    [pooled, separate].forEach(({ equivalencePower }, i) => {
      if (equivalences === null) return;
      expect(Math.abs(present(equivalencePower) - present(equivalences[i]))).toBeLessThan(0.013);
    });
  });

  it("is what comparisons of such trials come to", () => {
    const expected = inBlocks(3, 4);
    const random = randomStream(11);
    const [pair] = allPairs(3);
    // Of 3 products on 6 degrees of freedom; found once, since all trials share it.
    const critical = studentizedRangeRule(3).criticalValue(0.95, 6);
    const rule = { criticalValue: () => critical, adjustedPValue: () => Number.NaN };
    const trials = Array.from({ length: 300 }, () => {
      const rows = Array.from({ length: 4 }, () => {
        const block = 0.03 * random.normal();
        return [0.05, 0, 0].map((effect) => block + effect + 0.02 * random.normal());
      });
      const pairs = [present(pair)];
      const layout = { ...blockLayout(rows, pairs, null, expected.spread), rule };
      return present(compareMeans(layout, pairs, { level: 0.95, scale: "log", margin: null })[0]);
    });
    const share = (of: (trial: MeanContrast) => boolean) => trials.filter(of).length / 300;
    const error = (chance: number) => 4 * Math.sqrt((chance * (1 - chance)) / 300);
    const found = share(({ differenceFound }) => differenceFound);
    expect(Math.abs(found - expected.power)).toBeLessThan(error(expected.power));
    const narrower = share(
      ({ lower, upper }) => (present(upper) - present(lower)) / 2 < expected.halfWidth,
    );
    expect(Math.abs(narrower - 0.5)).toBeLessThan(error(0.5));
  });

  it("is judged as a comparison of as many blocks is by design: pooled up to 8", () => {
    const { alternatives } = design({ analysis: "blocks" });
    expect(alternatives.map(({ fills, spread }) => [fills, spread])).toEqual([
      [2, "common"],
      [3, "common"],
      [4, "common"],
      [5, "common"],
      [6, "common"],
      [8, "common"],
      [10, "separate"],
    ]);
    expect(inBlocks(2, 4).spread).toBe("separate");
    expect(design().expected.spread).toBe("separate");
  });

  it("counts the pairs that will be compared", () => {
    expect(design().contrasts).toBe(3);
    expect(design({ reference: "pea" }).contrasts).toBe(2);
  });
});

describe("cautions", () => {
  const codes = (given: Partial<TrialPlanOptions>) =>
    design(given).cautions.map(({ code }) => code);

  it.each([
    ["plan-few-fills", { fills: 3 }],
    ["plan-little-power", { fillSpread: 0.06 }],
    ["plan-one-turn-level", { turnLevels: [20], catchesPerLevel: 4 }],
    ["plan-scatter-not-compared", { catchesPerLevel: 1 }],
  ] as const)("%s", (code, given) => {
    expect(codes(given)).toContain(code);
  });

  it("plan-spread-not-pooled: beyond 8 blocks of three products or more, unless the law is chosen", async () => {
    const twelve = Array.from({ length: 12 }, (_, i) => String(i + 1));
    const blocked = { products: twelve, analysis: "blocks", fills: 10 } as const;
    const found = design(blocked).cautions.find(({ code }) => code === "plan-spread-not-pooled");
    // The standard error of a difference, times the median of its estimate over it.
    const [halfWidth, pooled] = await evalR(`s <- sqrt(.03^2 + .02^2 * 20 / 120) * sqrt(2 / 10)
      c(qt(1 - .05 / 132, 9) * s * sqrt(qchisq(.5, 9) / 9),
        qtukey(.95, 12, 99) / sqrt(2) * s * sqrt(qchisq(.5, 99) / 99))`);
    expect(found).toMatchObject({
      severity: "note",
      asks: "to-know",
      facts: {
        mostPooled: 8,
        halfWidth: expect.closeTo(present(halfWidth), 7),
        pooledHalfWidth: expect.closeTo(present(pooled), 7),
      },
    });
    for (const other of [
      { fills: 8 },
      { spread: "separate" },
      { spread: "common" },
      { analysis: "fills" },
      { products: ["wheat", "pea"] },
    ] as const)
      expect(codes({ ...blocked, ...other })).not.toContain("plan-spread-not-pooled");
    expect(codes({ ...blocked, reference: "1" })).toContain("plan-spread-not-pooled");
  });

  it("has none for a plan that can be expected to show what it is for", () => {
    expect(codes({ fills: 10, fillSpread: 0.02 })).toEqual([]);
  });
});

it.each([
  ["one product", { products: ["wheat"] }],
  ["a product named twice", { products: ["wheat", "wheat"] }],
  ["one fill", { fills: 1 }],
  ["no turn level", { turnLevels: [] }],
  ["turns of zero", { turnLevels: [0] }],
  ["a seed that is no number", { seed: 0.5 }],
  ["an unknown analysis", { analysis: "days" as never }],
  ["an unknown unit", { massUnit: "st" as never }],
  ["a sheet without end", { fills: 100_000 }],
  ["a spread of zero", { fillSpread: 0 }],
  ["a reference that is no product", { reference: "oats" }],
  ["an unknown spread", { spread: "equal" as never }],
])("refuses %s", (_, given) => {
  expect(() => design(given)).toThrow(OptionError);
});
