import type {
  ProductContrast,
  ScatterContrast,
} from "../../questions/product-comparison/result.ts";
import type { ComparisonMethod } from "../../statistics/comparison-layout.ts";
import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";

const { fills } = nouns;

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
      "paired-bonferroni":
        "paired by block, every pair its own spread; Bonferroni for their number",
      "tukey-blocks": "Tukey within complete blocks, one spread for all products",
      "dunnett-blocks":
        "Dunnett's comparison with a reference within complete blocks, one spread for all products",
    } satisfies Record<ComparisonMethod, string>,
    verdicts: {
      different: "different",
      equivalent: "equivalent",
      "different within the margin": "different but by less than the margin",
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
  tooManyPairs: "The products were not compared: they are too many to hold each against each.",
  nothingToCompare:
    "No product can be compared with another: both products of a pair need two fills each.",
  compared: (f: {
    readonly leftOut: string | null;
    readonly products: number;
    readonly fills: number;
    readonly pairs: number;
    readonly verdicts: string;
    readonly method: string;
    readonly level: string;
  }) =>
    `${f.products} products over ${f.fills} fills. ${f.leftOut === null ? "" : `${f.leftOut} `}Of ${f.pairs === 1 ? "1 pair" : `${f.pairs} pairs`}: ${f.verdicts} (${f.method}; ${f.level} for all pairs together).`,
  /** What of the log is not compared: products with their fills, and fills of others. */
  leftOut: (left: string) => `Not compared: ${left}.`,
  productLeftOut: (f: Facts<"product"> & Counts<"fills">) => `${f.product} (${fills(f.fills)})`,
  fillsWithoutBlock: (count: number) => `${fills(count)} without a block`,
  fillsAlone: (count: number) =>
    count === 1 ? "1 fill alone in its block" : `${count} fills alone in their blocks`,
  ratioOutside: (f: { readonly below: string; readonly above: string }) =>
    `up to ${f.below}, or from ${f.above}`,
  anyRatio: "any ratio",
  ratio: (set: string) => `ratio ${set}`,
  /** Of the pair alone, at the level at which equivalence is asked. */
  byItself: (f: Facts<"set">) => `ratio ${f.set}, for this pair alone`,
  atLevel: (f: Facts<"set" | "level">) => `${f.set} at ${f.level}`,
  /** What the same pair comes to where spreads are not pooled; the verdict only where it is another. */
  notAlike: (f: Facts<"set", "verdict">) =>
    `spreads not assumed alike: ${f.set}${f.verdict === null ? "" : `, ${f.verdict}`}`,
  less: (percent: string) => `${percent} less`,
  more: (percent: string) => `${percent} more`,
  different: (f: Tested & { readonly relative: string }) =>
    `${f.first} delivers ${f.relative} per turn than ${f.second} (${f.proof}).`,
  differentWithin: (f: Tested & Facts<"relative" | "margin">) =>
    `${f.first} delivers ${f.relative} per turn than ${f.second}: a difference, but less than the ${f.margin} that count as none (${f.proof}).`,
  equivalent: (f: Tested & Facts<"margin">) =>
    `${f.first} and ${f.second} are equivalent within ${f.margin} (${f.proof}).`,
  undecided: (f: Tested & Facts<never, "possible" | "margin">) =>
    `${f.first} and ${f.second}: undecided${f.possible === null ? "" : `; ${f.first} may deliver anything from ${f.possible}`}. ${f.margin === null ? "Not shown to differ, not shown to be equal either" : `Neither a difference nor equivalence within ${f.margin} is shown`} (${f.proof}).`,
  /** Within blocks it is the differences of a pair that have to scatter. */
  untested: (f: Pair & { readonly inBlocks: boolean }) =>
    `${f.first} and ${f.second} cannot be tested: ${f.inBlocks ? "they differ by the same in every block, so their differences show no scatter to judge by, however much their fills do" : "their fills show no scatter to judge by"}.`,
  overall: (f: {
    readonly statistic: string;
    readonly df: readonly string[];
    readonly p: string;
    /** Whether a product has one fill, and so no part in it. */
    readonly someLeftOut: boolean;
  }) =>
    `That no product differs at all: F = ${f.statistic} on ${f.df[0]} and ${f.df[1]} degrees of freedom, ${f.p}. This asks of all products${f.someLeftOut ? " with two fills or more" : ""} at once; which of them differ is read off their intervals.`,
  byFill: "Every fill is one observation; catches of a fill only make it more precise.",
  byBlock: (f: {
    readonly name: string | null;
    readonly count: number;
    readonly complete: number;
  }) =>
    `Fills are compared within blocks (${f.name}): ${f.count} of them, ${f.complete} with every product compared.`,
  onLogarithms: "Ratios of geometric means, computed on logarithms.",
  byFieller: "Ratios by Fieller with the same critical values.",
  equivalence: (f: Facts<"limits" | "level">) =>
    `Equivalent: the pair's own ${f.level} interval of the ratio lies within ${f.limits}, a margin to be fixed before the catches. It holds for one pair and guards one side at a time, and so is narrower than the interval that differences are read off.`,
  /** What one spread for all products is worth. */
  pooled: (f: Facts<"alike" | "unlike" | "paired", "equivalent">) =>
    `One spread is estimated from all products together, which is what makes these intervals so narrow with few blocks. In simulated trials at 95 % where no product differs, ${f.alike} find a difference all the same; ${f.unlike} where the fills of one product spread four times as much as those of another${f.equivalent === null ? "" : `, and products that differ by just the margin then pass as equivalent in up to ${f.equivalent}`}. "Spreads not assumed alike" takes each pair by itself and errs in ${f.paired}, whether spreads are alike or not.`,
  gamesHowell: (found: string) =>
    `Where products spread unlike one another and have few fills, or unequal numbers of them, ${found} of such comparisons find a difference where there is none; 5 % are meant.`,
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
    notAlike: "Spreads not assumed alike",
    verdict: "Verdict",
  },
  equivalenceColumn: (level: string) => `Ratio by itself, ${level}`,
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
  thickLine: (level: string) =>
    `Thick: the pair's own interval at ${level}; equivalent where it lies within the margin.`,
  dashedLine: "Dashed: the same pair with spreads not assumed alike.",
};
