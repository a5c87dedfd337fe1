import type {
  ProductContrast,
  ScatterContrast,
} from "../../questions/product-comparison/result.ts";
import type { ComparisonMethod } from "../../statistics/comparison-layout.ts";

interface Pair {
  readonly first: string;
  readonly second: string;
}

interface Tested extends Pair {
  readonly proof: string;
}

interface Intervals {
  readonly level: string;
  /** Every product, or every pair, with its figures. */
  readonly all: string;
}

/** What is said of how products compare. */
export const productComparison = {
  labels: {
    heading: "How products compare",
    methods: {
      "games-howell": "Games–Howell: every product its own spread",
      "tukey-kramer": "Tukey–Kramer: one spread declared common to all products",
      "dunnett-separate": "Dunnett's comparison with a reference, every product its own spread",
      dunnett: "Dunnett's comparison with a reference, one spread declared common",
      "paired-holm": "paired by block, adjusted by Holm; intervals by Bonferroni",
      "tukey-blocks": "Tukey within complete blocks, one spread declared common",
      "dunnett-blocks": "Dunnett within complete blocks, one spread declared common",
    } satisfies Record<ComparisonMethod, string>,
    verdicts: {
      different: "different",
      equivalent: "equivalent",
      undecided: "undecided",
      untested: "not tested",
    } satisfies Record<ProductContrast["verdict"], string>,
    spreadNote:
      "Fill-to-fill spreads are shown and not tested: with few fills even a doubled spread would be missed more often than found. Intervals of spread and scatter are χ² intervals, approximate in that they take the mean delivery as known.",
    unknown: "not known",
    scatterTable: {
      caption: "Catch scatter, first against second",
      pair: "Pair",
      ratio: "Ratio of scatter",
      pValue: "p, adjusted",
      method: "Test",
      methods: {
        "ln s² of fills, Welch's t": "log variance of fills, Welch's t",
        "ln s² of fills, pooled t": "log variance of fills, pooled t",
        "Brown–Forsythe": "Brown–Forsythe, one fill each",
        none: "none",
      } satisfies Record<ScatterContrast["method"], string>,
    },
    detail: "Products and scatter in figures",
  },
  nothingToCompare:
    "No product can be compared with another: both products of a pair need two fills each.",
  compared: (f: {
    readonly products: number;
    readonly fills: number;
    readonly pairs: number;
    readonly verdicts: string;
    readonly method: string;
    readonly level: string;
  }) =>
    `${f.products} products over ${f.fills} fills. Of ${f.pairs === 1 ? "1 pair" : `${f.pairs} pairs`}: ${f.verdicts} (${f.method}; ${f.level} for all pairs together).`,
  ratioOutside: (f: { readonly below: string; readonly above: string }) =>
    `up to ${f.below}, or from ${f.above}`,
  anyRatio: "any ratio",
  ratio: (set: string) => `ratio ${set}`,
  less: (percent: string) => `${percent} less`,
  more: (percent: string) => `${percent} more`,
  different: (f: Tested & { readonly relative: string }) =>
    `${f.first} delivers ${f.relative} per turn than ${f.second} (${f.proof}).`,
  equivalent: (f: Tested & { readonly margin: string | null; readonly relative: string | null }) =>
    `${f.first} and ${f.second} are equivalent within ${f.margin === null ? "the margin" : f.margin}${f.relative === null ? "" : `, although ${f.first} was found to deliver ${f.relative}`} (${f.proof}).`,
  undecided: (f: Tested) =>
    `${f.first} and ${f.second}: not shown to differ, not shown to be equal either (${f.proof}).`,
  undecidedWithin: (f: Tested & { readonly margin: string }) =>
    `${f.first} and ${f.second}: undecided. Neither a difference nor equivalence within ${f.margin} could be shown (${f.proof}).`,
  untested: (f: Pair) =>
    `${f.first} and ${f.second} cannot be tested: their fills show no scatter to judge by.`,
  overall: (f: {
    readonly statistic: string;
    readonly df: readonly string[];
    readonly p: string;
  }) =>
    `That no product differs at all: F = ${f.statistic} on ${f.df[0]} and ${f.df[1]} degrees of freedom, ${f.p}.`,
  byFill: "Every fill is one observation; catches of a fill only make it more precise.",
  byBlock: (f: {
    readonly name: string | null;
    readonly count: number;
    readonly complete: number;
  }) =>
    `Fills are compared within blocks (${f.name}): ${f.count} of them, ${f.complete} with every product.`,
  onLogarithms: "Ratios of geometric means, computed on logarithms.",
  byFieller: "Ratios by Fieller with the same critical values.",
  equivalenceTests: (limits: string) =>
    `Equivalence: two one-sided tests within a ratio of ${limits}, adjusted by Holm. An interval may reach a little beyond the margin all the same: it guards both sides at once, the tests one side at a time.`,
  scatterUntested:
    "Whether one product scatters more from catch to catch than another cannot be tested with these fills.",
  scatterAlike: "No product was found to scatter more from catch to catch than another.",
  scatterFound: (f: Pair & { readonly times: string | null; readonly p: string | null }) =>
    `Catches of ${f.first} scatter ${f.times === null ? "not as" : `${f.times} times as`} much as those of ${f.second}${f.p === null ? "" : ` (${f.p})`}.`,
  products: {
    caption: "Products",
    product: "Product",
    fills: "Fills",
    catches: "Catches",
    interval: "Interval",
    spread: "Fill-to-fill spread",
  },
  productMean: (unit: string) => `Mean of fills (${unit})`,
  productScatter: (turns: string) => `Catch scatter at ${turns} turns`,
  contrasts: {
    heading: "Pair",
    interval: "Interval",
    ratio: "Ratio",
    pValue: "p, adjusted",
    equivalence: "p, equivalence",
    verdict: "Verdict",
  },
  contrastsCaption: (level: string) => `First against second, ${level} for all pairs together`,
  pair: (f: Pair & { readonly space: string }) => `${f.first}${f.space}against ${f.second}`,
  difference: (unit: string) => `Difference (${unit})`,
  estimatesChart: {
    title: "Delivery per turn by product",
    product: "Product",
    mean: "Delivery",
    fill: "Fill",
    bin: "Bin",
    fills: "Fills",
  },
  estimatesDescription: (f: Intervals) =>
    `Every fill, and the mean of each product with its own ${f.level} interval: ${f.all}.`,
  delivery: (unit: string) => `Delivery (${unit})`,
  contrastsChart: {
    title: "Products against one another",
    ratio: "First in percent of second",
    pair: "Pair",
    verdict: "Verdict",
  },
  contrastsDescription: (f: Intervals) =>
    `Delivery of the first product in percent of the second, with intervals that hold together at ${f.level}: ${f.all}.`,
  equivalentWithin: (margin: string) => `equivalent within ${margin}`,
};
