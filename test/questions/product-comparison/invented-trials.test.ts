import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import type {
  ContrastOfProducts,
  ProductComparison,
} from "../../../src/questions/product-comparison/result.ts";
import type { RatioSet } from "../../../src/statistics/ratio-interval.ts";
import { aFill } from "../../support/catches.ts";
import { compared } from "../../support/product-answers.ts";
import { present } from "../../support/reference.ts";
import { wordsBy } from "../../support/words.ts";

/** A trial nobody made: what its products deliver, how its fills and blocks differ, and how it is judged. */
const inventedTrial = fc.record({
  means: fc.array(
    fc.integer({ min: -30, max: 30 }).map((tenths) => tenths / 1000),
    {
      minLength: 2,
      maxLength: 4,
    },
  ),
  blocks: fc.integer({ min: 2, max: 4 }),
  spreads: fc.array(fc.constantFrom(0.001, 0.005, 0.02), { minLength: 4, maxLength: 4 }),
  noise: fc.array(
    fc.integer({ min: -170, max: 170 }).map((hundredths) => hundredths / 100),
    {
      minLength: 16,
      maxLength: 16,
    },
  ),
  lacking: fc.option(fc.integer({ min: 0, max: 15 })),
  inBlocks: fc.boolean(),
  against: fc.boolean(),
  spread: fc.constantFrom("by design", "common", "separate"),
  scale: fc.constantFrom("by design", "as measured", "log"),
  order: fc.constantFrom("as listed", "by size"),
  equivalenceMargin: fc.constantFrom(null, 0.01, 0.03, 0.06),
} as const);

type Invented = typeof inventedTrial extends fc.Arbitrary<infer T> ? T : never;

const names = ["wheat", "pea", "barley", "rye"];

function catchesOf({ means, blocks, spreads, noise, lacking }: Invented): readonly Catch[] {
  return Array.from({ length: blocks }, (_, block) =>
    means.flatMap((mean, place) => {
      const number = block * means.length + place;
      if (number === lacking) return [];
      const own = present(spreads[place]) * present(noise[number]);
      const delivery = 0.4 * (1 + mean) * (1 + own) * (1 + 0.01 * block);
      return aFill(
        [
          [20, 20 * delivery * 1.004],
          [20, 20 * delivery * 0.996],
        ],
        { product: present(names[place]), fill: number + 1, extra: { block: String(block + 1) } },
      );
    }),
  ).flat();
}

function comparisonOf(invented: Invented): ProductComparison {
  const { inBlocks, against, spread, scale, order, equivalenceMargin } = invented;
  return compared(catchesOf(invented), {
    blocks: inBlocks ? "block" : null,
    reference: against ? "pea" : null,
    spread,
    scale,
    order,
    equivalenceMargin,
  });
}

function holdsOne(set: RatioSet): boolean {
  if (set.shape === "interval") return set.lower <= 1 && set.upper >= 1;
  return set.shape === "whole line" || set.below >= 1 || set.above <= 1;
}

/** Ends of the intervals that a text prints, in percent. */
function rangesIn(text: string): readonly (readonly [number, number])[] {
  const number = (digits: string) => Number(digits.replaceAll("\u2212", "-").replace(",", "."));
  return [...text.matchAll(/([\u2212\d.,]+)\s%\s(?:to|bis)\s([\u2212\d.,]+)\s%/g)].map(
    ([, lower = "", upper = ""]) => [number(lower), number(upper)],
  );
}

describe("products of invented trials", () => {
  it("are called different exactly where their ratio's interval leaves out 100 %", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(inventedTrial, (invented) => {
        for (const { notAlike, ...pair } of comparisonOf(invented).contrasts)
          for (const one of [pair, notAlike].filter((each) => each !== null)) {
            seen.add(one.verdict);
            expectOneMind(one);
          }
      }),
      { numRuns: 60, seed: 11 },
    );
    for (const verdict of ["different", "different within the margin", "equivalent", "undecided"])
      expect(seen).toContain(verdict);
  });

  it("are never printed as different beside an interval that holds 100 %, in either language", () => {
    let printed = 0;
    fc.assert(
      fc.property(inventedTrial, (invented) => {
        const result = comparisonOf(invented);
        for (const { productComparison: say } of Object.values(wordsBy))
          for (const contrast of result.contrasts) {
            if (!contrast.verdict.startsWith("different")) continue;
            // What is not assumed alike has a verdict of its own behind it.
            const sentence = say.contrast({ ...contrast, notAlike: null }, result);
            const ranges = [
              ...rangesIn(sentence),
              ...rangesIn(say.ratioSet(contrast.ratio.set)),
              ...(contrast.notAlike?.differenceFound
                ? rangesIn(say.ratioSet(contrast.notAlike.ratio.set))
                : []),
            ];
            expect(ranges.length).toBeGreaterThan(0);
            for (const [lower, upper] of ranges) {
              printed++;
              expect(lower > 100 || upper < 100, `${sentence} ${lower} ${upper}`).toBe(true);
            }
          }
      }),
      { numRuns: 60, seed: 12 },
    );
    expect(printed).toBeGreaterThan(100);
  });

  it("prints as many decimals as keep an end apart from 100 %", () => {
    const say = wordsBy.en.productComparison;
    expect(say.ratioSet({ shape: "interval", lower: 1.0002, upper: 1.03 })).toBe(
      "100.02\u00a0% to 103.0\u00a0%",
    );
    expect(say.ratioSet({ shape: "interval", lower: 0.97, upper: 0.99996 })).toBe(
      "97.0\u00a0% to 99.996\u00a0%",
    );
    expect(say.ratioSet({ shape: "interval", lower: 0.97, upper: 1 })).toBe(
      "97.0\u00a0% to 100.0\u00a0%",
    );
  });

  it("stand beside one another with lines that overlap exactly where no difference is found", () => {
    let pairs = 0;
    fc.assert(
      fc.property(inventedTrial, (invented) => {
        const pooled = { inBlocks: true, against: false, spread: "common", scale: "log" } as const;
        const result = comparisonOf({ ...invented, ...pooled, lacking: null });
        const { standings, contrasts, method } = result;
        if (standings === null) return;
        expect(method).toBe("tukey-blocks");
        const of = (name: string) => present(standings.find(({ product }) => product === name));
        for (const { first, second, differenceFound, ratio } of contrasts) {
          pairs++;
          const [a, b] = [of(first), of(second)];
          expect(a.lower > b.upper || b.lower > a.upper).toBe(differenceFound);
          expect(a.ratio / b.ratio).toBeCloseTo(ratio.value, 12);
        }
      }),
      { numRuns: 60, seed: 13 },
    );
    expect(pairs).toBeGreaterThan(30);
  });
});

function expectOneMind({
  verdict,
  differenceFound,
  ratio,
  equivalence,
  pValue,
}: ContrastOfProducts) {
  if (verdict === "untested") return;
  expect(verdict.startsWith("different")).toBe(differenceFound);
  expect(holdsOne(present(ratio.set))).toBe(!differenceFound);
  expect(present(pValue) < 0.05).toBe(differenceFound);
  if (verdict === "different within the margin")
    expect(holdsOne(present(equivalence).set)).toBe(false);
}
