import type {
  ProductComparison,
  ProductContrast,
  ProductEstimate,
  ScatterContrast,
} from "../../questions/product-comparison/result.ts";
import type { RatioSet } from "../../statistics/ratio-interval.ts";
import type { Format } from "../format.ts";

export type ProductComparisonWords = ReturnType<typeof englishProductComparison>;

type Method = NonNullable<ProductComparison["method"]>;

const methods: Readonly<Record<Method, string>> = {
  "games-howell": "Games–Howell: every product its own spread",
  "tukey-kramer": "Tukey–Kramer: one spread declared common to all products",
  "dunnett-separate": "Dunnett's comparison with a reference, every product its own spread",
  dunnett: "Dunnett's comparison with a reference, one spread declared common",
  "paired-holm": "paired by block, adjusted by Holm; intervals by Bonferroni",
  "tukey-blocks": "Tukey within complete blocks, one spread declared common",
  "dunnett-blocks": "Dunnett within complete blocks, one spread declared common",
};

const verdicts: Readonly<Record<ProductContrast["verdict"], string>> = {
  different: "different",
  equivalent: "equivalent",
  undecided: "undecided",
  untested: "not tested",
};

/** Everything said about how products compare. */
export function englishProductComparison(format: Format) {
  const level = (result: ProductComparison) => format.percent(result.options.level, 0);
  const ratioSet = (set: RatioSet | null): string | null => {
    if (set === null) return null;
    switch (set.shape) {
      case "interval":
        return `${format.percent(set.lower, 1)} to ${format.percent(set.upper, 1)}`;
      case "two half-lines":
        return `up to ${format.percent(set.below, 1)}, or from ${format.percent(set.above, 1)}`;
      case "whole line":
        return "any ratio";
    }
  };
  const relative = (ratio: number) =>
    `${format.percent(Math.abs(ratio - 1), 1)} ${ratio < 1 ? "less" : "more"}`;
  const proof = ({ ratio, pValue }: Pick<ProductContrast, "ratio" | "pValue">) =>
    [
      ratioSet(ratio.set) === null ? null : `ratio ${ratioSet(ratio.set)}`,
      pValue === null ? null : format.pValue(pValue),
    ]
      .filter((part) => part !== null)
      .join(", ");

  return {
    heading: "How products compare",
    methods,
    verdicts,
    sentence: (result: ProductComparison): string => {
      const { contrasts, input, method } = result;
      if (contrasts.length === 0 || method === null)
        return "No product can be compared with another: both products of a pair need two fills each.";
      const count = (verdict: ProductContrast["verdict"]) =>
        contrasts.filter((contrast) => contrast.verdict === verdict).length;
      const counts = (["different", "equivalent", "undecided", "untested"] as const)
        .filter((verdict) => count(verdict) > 0)
        .map((verdict) => `${count(verdict)} ${verdicts[verdict]}`);
      const pairs = `${contrasts.length} ${contrasts.length === 1 ? "pair" : "pairs"}`;
      return `${input.products} products over ${input.fills} fills. Of ${pairs}: ${format.list(counts)} (${methods[method]}; ${level(result)} for all pairs together).`;
    },
    contrast: (contrast: ProductContrast, result: ProductComparison): string => {
      const { first, second, ratio, verdict, differenceFound } = contrast;
      const margin = result.options.equivalenceMargin;
      switch (verdict) {
        case "different":
          return `${first} delivers ${relative(ratio.value)} per turn than ${second} (${proof(contrast)}).`;
        case "equivalent":
          return `${first} and ${second} are equivalent within ${margin === null ? "the margin" : format.plusMinus(margin)}${differenceFound ? `, although ${first} was found to deliver ${relative(ratio.value)}` : ""} (${proof({ ratio, pValue: contrast.equivalence?.adjustedPValue ?? null })}).`;
        case "undecided":
          return margin === null
            ? `${first} and ${second}: not shown to differ, not shown to be equal either (${proof(contrast)}).`
            : `${first} and ${second}: undecided. Neither a difference nor equivalence within ${format.plusMinus(margin)} could be shown (${proof(contrast)}).`;
        case "untested":
          return `${first} and ${second} cannot be tested: their fills show no scatter to judge by.`;
      }
    },
    overall: ({ overall }: ProductComparison): string | null =>
      overall === null
        ? null
        : `That no product differs at all: F = ${format.plain(overall.statistic)} on ${format.plain(overall.df1)} and ${format.plain(overall.df2)} degrees of freedom, ${format.pValue(overall.pValue)}.`,
    method: (result: ProductComparison): string => {
      const blocks = result.input.blocks;
      const design =
        blocks === null
          ? "Every fill is one observation; catches of a fill only make it more precise."
          : `Fills are compared within blocks (${result.options.blocks}): ${blocks.count} of them, ${blocks.complete} with every product.`;
      const scale =
        result.options.scale === "log"
          ? " Ratios of geometric means, computed on logarithms."
          : " Ratios by Fieller with the same critical values.";
      const margin = result.options.equivalenceMargin;
      return `${design}${scale}${margin === null ? "" : ` Equivalence: two one-sided tests within a ratio of ${format.percent(1 / (1 + margin), 1)} to ${format.percent(1 + margin, 1)}, adjusted by Holm. An interval may reach a little beyond the margin all the same: it guards both sides at once, the tests one side at a time.`}`;
    },
    scatterSentence: ({ scatter }: ProductComparison): string => {
      const found = scatter.contrasts.filter(({ differenceFound }) => differenceFound);
      const tested = scatter.contrasts.filter(({ pValue }) => pValue !== null);
      if (tested.length === 0)
        return "Whether one product scatters more from catch to catch than another cannot be tested with these fills.";
      if (found.length === 0)
        return "No product was found to scatter more from catch to catch than another.";
      return found.map(scatterFound).join(" ");
    },
    spreadNote:
      "Fill-to-fill spreads are shown and not tested: with few fills even a doubled spread would be missed more often than found. Intervals of spread and scatter are χ² intervals, approximate in that they take the mean delivery as known.",
    ratioSet: (set: RatioSet | null) => ratioSet(set) ?? "not known",
    unknown: "not known",
    products: {
      caption: "Products",
      product: "Product",
      fills: "Fills",
      catches: "Catches",
      mean: (unit: string) => `Mean of fills (${unit})`,
      interval: "Interval",
      spread: "Fill-to-fill spread",
      scatter: (turns: number) => `Catch scatter at ${format.plain(turns, 4)} turns`,
      withInterval: (value: string, interval: string | null) =>
        interval === null ? value : `${value} (${interval})`,
    },
    contrasts: {
      caption: (result: ProductComparison) =>
        `First against second, ${level(result)} for all pairs together`,
      pair: (first: string, second: string, space = " ") => `${first}${space}against ${second}`,
      heading: "Pair",
      difference: (unit: string) => `Difference (${unit})`,
      interval: "Interval",
      ratio: "Ratio",
      pValue: "p, adjusted",
      equivalence: "p, equivalence",
      verdict: "Verdict",
    },
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
    charts: {
      estimates: {
        title: "Delivery per turn by product",
        description: (result: ProductComparison) =>
          `Every fill, and the mean of each product with its own ${level(result)} interval: ${result.products.map(productWords).join("; ")}.`,
        product: "Product",
        delivery: (unit: string) => `Delivery (${unit})`,
        mean: "Delivery",
        fill: "Fill",
        bin: "Bin",
        fills: "Fills",
      },
      contrasts: {
        title: "Products against one another",
        description: (result: ProductComparison) =>
          `Delivery of the first product in percent of the second, with intervals that hold together at ${level(result)}: ${result.contrasts.map((one) => `${one.first} against ${one.second} ${format.percent(one.ratio.value, 1)}, ${verdicts[one.verdict]}`).join("; ")}.`,
        ratio: "First in percent of second",
        pair: "Pair",
        margin: (margin: number) => `equivalent within ${format.plusMinus(margin)}`,
        verdict: "Verdict",
      },
    },
  };

  function productWords({ product, estimate }: ProductEstimate): string {
    return `${product} ${format.estimateInterval(estimate, "delivery") ?? format.value(estimate.value, "delivery")}`;
  }

  function scatterFound({ first, second, ratio, pValue }: ScatterContrast): string {
    const size = ratio === null ? "not as" : `${format.plain(ratio.value, 2)} times as`;
    const p = pValue === null ? "" : ` (${format.pValue(pValue)})`;
    return `Catches of ${first} scatter ${size} much as those of ${second}${p}.`;
  }
}
