import type {
  ProductComparison,
  ProductContrast,
  ProductEstimate,
  ScatterContrast,
} from "../../questions/product-comparison/result.ts";
import type { RatioSet } from "../../statistics/ratio-interval.ts";
import type { productComparison as templates } from "../en/product-comparison.ts";
import type { Format } from "../format.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about how products compare. */
export function productComparisonSayings(format: Format, say: typeof templates) {
  const { methods, verdicts, unknown } = say.labels;
  const level = ({ options }: ProductComparison) => format.percent(options.level, 0);
  const percent = (ratio: number) => format.percent(ratio, 1);
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
  const relative = ({ value }: ProductContrast["ratio"]) =>
    (value < 1 ? say.less : say.more)(percent(Math.abs(value - 1)));
  const proof = ({ set }: ProductContrast["ratio"], pValue: number | null) =>
    [
      ...(set === null ? [] : [say.ratio(ratioSet(set))]),
      ...(pValue === null ? [] : [format.pValue(pValue)]),
    ].join(", ");
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
      const { contrasts, input, method } = result;
      if (contrasts.length === 0 || method === null) return say.nothingToCompare;
      const counts = (["different", "equivalent", "undecided", "untested"] as const).flatMap(
        (verdict) => {
          const count = contrasts.filter((contrast) => contrast.verdict === verdict).length;
          return count === 0 ? [] : [`${count} ${verdicts[verdict]}`];
        },
      );
      return say.compared({
        products: input.products,
        fills: input.fills,
        pairs: contrasts.length,
        verdicts: format.list(counts),
        method: methods[method],
        level: level(result),
      });
    },
    contrast: (contrast: ProductContrast, { options }: ProductComparison): string => {
      const { first, second, ratio, pValue, equivalence, differenceFound } = contrast;
      const margin =
        options.equivalenceMargin === null ? null : format.plusMinus(options.equivalenceMargin);
      const tested = { first, second, proof: proof(ratio, pValue) };
      switch (contrast.verdict) {
        case "different":
          return say.different({ ...tested, relative: relative(ratio) });
        case "equivalent":
          return say.equivalent({
            first,
            second,
            margin,
            relative: differenceFound ? relative(ratio) : null,
            proof: proof(ratio, equivalence?.adjustedPValue ?? null),
          });
        case "undecided":
          return margin === null
            ? say.undecided(tested)
            : say.undecidedWithin({ ...tested, margin });
        case "untested":
          return say.untested({ first, second });
      }
    },
    overall: ({ overall }: ProductComparison): string | null =>
      overall === null
        ? null
        : say.overall({
            statistic: format.plain(overall.statistic),
            df: [format.plain(overall.df1), format.plain(overall.df2)],
            p: format.pValue(overall.pValue),
          }),
    method: ({ input: { blocks }, options }: ProductComparison): string => {
      const { blocks: name, scale, equivalenceMargin: margin } = options;
      const limits =
        margin === null ? null : format.range(percent(1 / (1 + margin)), percent(1 + margin));
      return sentences(
        blocks === null ? say.byFill : say.byBlock({ name, ...blocks }),
        scale === "log" ? say.onLogarithms : say.byFieller,
        limits === null ? null : say.equivalenceTests(limits),
      );
    },
    scatterSentence: ({ scatter: { contrasts } }: ProductComparison): string => {
      if (contrasts.every(({ pValue }) => pValue === null)) return say.scatterUntested;
      const found = contrasts.filter(({ differenceFound }) => differenceFound);
      return found.length === 0 ? say.scatterAlike : sentences(...found.map(scatterFound));
    },
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
        margin: (margin: number) => say.equivalentWithin(format.plusMinus(margin)),
      },
    },
  };
}
