import type {
  ContrastOfProducts,
  Equivalence,
  ProductComparison,
  ProductContrast,
  ProductEstimate,
  ScatterContrast,
} from "../../questions/product-comparison/result.ts";
import { studied } from "../../results/studied.ts";
import type { ComparisonVerdict } from "../../statistics/mean-comparison.ts";
import type { RatioSet } from "../../statistics/ratio-interval.ts";
import { powerOfTen } from "../../units/power-of-ten.ts";
import type { productComparison as templates } from "../en/product-comparison.ts";
import type { Format } from "../format.ts";
import { leftOutSaying } from "./left-out.ts";
import { sentences } from "./sentences.ts";
import { studiedRange } from "./studied-range.ts";

/** In the order in which they are told. */
export const everyVerdict: readonly ComparisonVerdict[] = [
  "different",
  "different within the margin",
  "equivalent",
  "undecided",
  "untested",
];

const mostDecimals = 13;

/** One, or as many as keep a ratio that is not 100 % from being read as 100 %: an end may leave it out by little. */
function decimalsApart(ratio: number): number {
  const distance = Math.abs(100 * (ratio - 1));
  let decimals = 1;
  while (decimals < mostDecimals && ratio !== 1 && distance < 0.5 * powerOfTen(-decimals))
    decimals++;
  return decimals;
}

/** Which sentences are said about how products compare. */
export function productComparisonSayings(format: Format, say: typeof templates) {
  const { methods, verdicts, unknown } = say.labels;
  const leftOut = leftOutSaying(format, say);
  const level = ({ options }: ProductComparison) => format.percent(options.level, 0);
  /** Of a pair by itself, when equivalence is asked. */
  const ownLevel = ({ level }: { readonly level: number }) => format.percent(2 * level - 1, 0);
  const percent = (ratio: number) => format.percent(ratio, decimalsApart(ratio));
  const ratioSet = (set: RatioSet): string => {
    switch (set.shape) {
      case "interval":
        return format.range(percent(set.lower), percent(set.upper));
      case "two half-lines":
        return say.ratioOutside({ below: percent(set.below), above: percent(set.above) });
      case "whole line":
        return say.anyRatio;
    }
  };
  const moreOrLess = (ratio: number) =>
    (ratio < 1 ? say.less : say.more)(format.percent(Math.abs(ratio - 1), decimalsApart(ratio)));
  const possible = ({ set }: ProductContrast["ratio"]) =>
    set?.shape === "interval" ? format.range(moreOrLess(set.lower), moreOrLess(set.upper)) : null;
  const ownRatios = ({ set, level }: Equivalence) =>
    say.atLevel({ set: ratioSet(set), level: format.percent(level, 0) });
  /** The ratios that the verdict is read off. */
  const decisive = ({ verdict, equivalence, ratio: { set } }: ContrastOfProducts) => {
    if (verdict === "equivalent" && equivalence !== null) return ownRatios(equivalence);
    return set === null ? unknown : ratioSet(set);
  };
  const byItself = ({ equivalence }: ContrastOfProducts) =>
    equivalence === null ? [] : [say.byItself({ set: ownRatios(equivalence) })];
  const simultaneous = ({ verdict, ratio: { set } }: ContrastOfProducts) =>
    // What is possible of an undecided pair is said in words already.
    set === null || (verdict === "undecided" && set.shape === "interval")
      ? []
      : [say.ratio(ratioSet(set))];
  const proof = (contrast: ProductContrast) => {
    const { pValue, verdict, notAlike } = contrast;
    const different = [
      ...simultaneous(contrast),
      ...(pValue === null ? [] : [format.pValue(pValue)]),
    ];
    const own = {
      different,
      undecided: different,
      untested: different,
      equivalent: byItself(contrast),
      "different within the margin": [...different, ...byItself(contrast)],
    }[verdict];
    return [own.join(", "), ...(notAlike === null ? [] : [beside(notAlike, verdict)])].join("; ");
  };
  const beside = (notAlike: ContrastOfProducts, verdict: ComparisonVerdict) =>
    say.notAlike({
      set: decisive(notAlike),
      verdict: notAlike.verdict === verdict ? null : verdicts[notAlike.verdict],
    });
  const productWords = ({ product, estimate }: ProductEstimate) =>
    `${product} ${format.estimateInterval(estimate, "delivery") ?? format.value(estimate.value, "delivery")}`;
  const pair = (first: string, second: string, space = " ") => say.pair({ first, second, space });
  const contrastWords = ({ first, second, ratio, verdict }: ProductContrast) =>
    `${pair(first, second)} ${percent(ratio.value)}, ${verdicts[verdict]}`;
  const scatterFound = ({ first, second, ratio, pValue }: ScatterContrast) =>
    say.scatterFound({
      first,
      second,
      times: ratio === null ? null : format.plain(ratio.value, 2),
      p: pValue === null ? null : format.pValue(pValue),
    });

  return {
    ...say.labels,
    sentence: (result: ProductComparison): string => {
      const { cautions, contrasts, compared, method } = result;
      if (cautions.some(({ code }) => code === "too-many-pairs")) return say.tooManyPairs;
      if (compared === null || method === null) return say.nothingToCompare;
      const counts = everyVerdict.flatMap((verdict) => {
        const count = contrasts.filter((contrast) => contrast.verdict === verdict).length;
        return count === 0 ? [] : [`${count} ${verdicts[verdict]}`];
      });
      return say.compared({
        products: compared.products,
        fills: compared.fills,
        leftOut: leftOut(compared),
        pairs: contrasts.length,
        verdicts: format.list(counts),
        method: methods[method],
        level: level(result),
      });
    },
    contrast: (contrast: ProductContrast, { input, options }: ProductComparison): string => {
      const { first, second, ratio, verdict } = contrast;
      const margin =
        options.equivalenceMargin === null ? null : format.plusMinus(options.equivalenceMargin);
      const tested = { first, second, proof: proof(contrast) };
      const relative = moreOrLess(ratio.value);
      if (verdict === "untested")
        return say.untested({ first, second, inBlocks: input.blocks !== null });
      if (verdict === "different") return say.different({ ...tested, relative });
      if (verdict === "undecided" || margin === null)
        return say.undecided({ ...tested, possible: possible(ratio), margin });
      return verdict === "equivalent"
        ? say.equivalent({ ...tested, margin })
        : say.differentWithin({ ...tested, relative, margin });
    },
    /** What one spread for all products is worth; null where each has its own. */
    pooled: ({ method, options }: ProductComparison): string | null => {
      if (method !== "tukey-blocks" && method !== "dunnett-blocks") return null;
      const { alike, unlike } = studied.blocks[method];
      const { paired, equivalentAtMargin } = studied.blocks;
      return say.pooled({
        alike: studiedRange(alike, format),
        unlike: studiedRange(unlike, format),
        paired: studiedRange(paired, format),
        equivalent:
          options.equivalenceMargin === null ? null : format.percent(equivalentAtMargin, 0),
      });
    },
    overall: ({ overall, cautions }: ProductComparison): string | null =>
      overall === null
        ? null
        : say.overall({
            statistic: format.plain(overall.statistic),
            df: [format.plain(overall.df1), format.plain(overall.df2)],
            p: format.pValue(overall.pValue),
            someLeftOut: cautions.some(({ code }) => code === "product-not-repeated"),
          }),
    method: (result: ProductComparison): string => {
      const { scale, method } = result;
      const { blocks } = result.input;
      const { blocks: name, equivalenceMargin: margin } = result.options;
      return sentences(
        blocks === null ? say.byFill : say.byBlock({ name, ...blocks }),
        scale === "log" ? say.onLogarithms : say.byFieller,
        margin === null
          ? null
          : say.equivalence({
              limits: format.range(percent(1 / (1 + margin)), percent(1 + margin)),
              level: ownLevel(result.options),
            }),
        method === "games-howell"
          ? say.gamesHowell(studiedRange(studied.gamesHowell, format))
          : null,
      );
    },
    scatterSentence: ({ scatter: { contrasts } }: ProductComparison): string => {
      if (contrasts.every(({ pValue }) => pValue === null)) return say.scatterUntested;
      const found = contrasts.filter(({ differenceFound }) => differenceFound);
      return found.length === 0 ? say.scatterAlike : sentences(...found.map(scatterFound));
    },
    /** Ratios and verdict with spreads not assumed alike. */
    notAlike: (contrast: ContrastOfProducts | null) =>
      contrast === null ? unknown : `${decisive(contrast)}, ${verdicts[contrast.verdict]}`,
    ratioSet: (set: RatioSet | null) => (set === null ? unknown : ratioSet(set)),
    products: {
      ...say.products,
      mean: say.productMean,
      scatter: (turns: number) => say.productScatter(format.plain(turns, 4)),
      withInterval: (value: string, interval: string | null) =>
        interval === null ? value : `${value} (${interval})`,
    },
    contrasts: {
      ...say.contrasts,
      caption: (result: ProductComparison) => say.contrastsCaption(level(result)),
      pair,
      difference: say.difference,
      equivalence: (result: ProductComparison) => say.equivalenceColumn(ownLevel(result.options)),
    },
    charts: {
      estimates: {
        ...say.estimatesChart,
        description: (result: ProductComparison) =>
          say.estimatesDescription({
            level: level(result),
            all: result.products.map(productWords).join("; "),
          }),
        delivery: say.delivery,
      },
      contrasts: {
        ...say.contrastsChart,
        description: (result: ProductComparison) =>
          say.contrastsDescription({
            level: level(result),
            all: result.contrasts.map(contrastWords).join("; "),
          }),
        /** What else its lines are; null where there is nothing beside the intervals of the title. */
        lines: ({ contrasts, options }: ProductComparison): string | null => {
          const isPooled = contrasts.some(({ notAlike }) => notAlike !== null);
          if (options.equivalenceMargin === null && !isPooled) return null;
          return sentences(
            options.equivalenceMargin === null ? null : say.thickLine(ownLevel(options)),
            isPooled ? say.dashedLine : null,
          );
        },
      },
    },
  };
}
