import type { ProductContrast } from "../questions/product-comparison/result.ts";
import type { ProductComparison } from "../questions/product-comparison.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import {
  type Axes,
  axesOf,
  frameHeight,
  intervalLayer,
  lineBreak,
  pointLayer,
  rowHeight,
} from "./product-rows.ts";
import { baseSpec } from "./theme.ts";

/** Thickness of the interval that equivalence is read off. */
const ownThickness = 7;
/** Pixels by which a pair with spreads not assumed alike stands below its pooled line. */
const notAlikeBelow = 11;

/**
 * Every pair of products: the first in percent of the second with its simultaneous interval, and the line of no
 * difference. With a margin its band, and thick the interval that equivalence is read off; below, dashed, the pair with
 * spreads not assumed alike where one spread is pooled.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, in percent; null when no
 *          pair could be compared
 */
export function productContrastsChart(result: ProductComparison, words: Words): ChartSpec | null {
  if (result.contrasts.length === 0) return null;
  const say = words.productComparison.charts.contrasts;
  const values = contrastRows(result, words);
  const axes = axesOf(
    "pair",
    values.map(({ pair }) => pair),
    say.ratio,
  );
  const tooltip = [
    { field: "pair", type: "nominal", title: say.pair },
    { field: "ratio", type: "quantitative", title: say.ratio, format: ".1f" },
    { field: "verdict", type: "nominal", title: say.verdict },
  ];
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title,
      description: say.description(result),
      height: frameHeight + rowHeight * values.length,
    }),
    layer: [
      ...equivalenceBand(result, words, axes),
      {
        data: { values: [{ ratio: 100 }] },
        mark: { type: "rule", style: "reference" },
        encoding: { x: axes.x("ratio") },
      },
      ...intervalLayer(
        result.contrasts.map((one) => endsOf(one, one.equivalence?.set, words)),
        axes,
        {
          size: ownThickness,
          opacity: 0.45,
        },
      ),
      ...intervalLayer(
        result.contrasts.map((one) => endsOf(one, one.notAlike?.ratio.set, words)),
        axes,
        {
          strokeDash: [4, 3],
          yOffset: notAlikeBelow,
        },
      ),
      ...intervalLayer(values, axes),
      ...[...new Set(values.map(({ different }) => different))].map((different) =>
        pointLayer(
          values.filter((one) => one.different === different),
          different ? "observation" : "earlier",
          axes,
          "ratio",
          tooltip,
        ),
      ),
    ],
  };
}

function contrastRows({ contrasts }: ProductComparison, words: Words) {
  return contrasts.map((contrast) => ({
    ...endsOf(contrast, contrast.ratio.set, words),
    ratio: 100 * contrast.ratio.value,
    verdict: words.productComparison.verdicts[contrast.verdict],
    different: contrast.differenceFound,
  }));
}

/** A pair's row with the ends of one of its intervals, in percent; null where there is none. */
function endsOf(
  { first, second }: ProductContrast,
  set: ProductContrast["ratio"]["set"] | undefined,
  { productComparison: say }: Words,
) {
  const interval = set?.shape === "interval" ? set : null;
  return {
    pair: say.contrasts.pair(first, second, lineBreak),
    lower: interval === null ? null : 100 * interval.lower,
    upper: interval === null ? null : 100 * interval.upper,
  };
}

function equivalenceBand(
  { contrasts, options }: ProductComparison,
  words: Words,
  { x }: Axes,
): readonly object[] {
  const limits = contrasts.find(({ equivalence }) => equivalence !== null)?.equivalence ?? null;
  if (limits === null || options.equivalenceMargin === null) return [];
  const label = words.productComparison.charts.contrasts.margin(options.equivalenceMargin);
  const values = [{ lower: 100 * limits.lowerLimit, upper: 100 * limits.upperLimit, label }];
  return [
    {
      data: { values },
      mark: { type: "rect", style: "band" },
      encoding: { x: x("lower"), x2: { field: "upper" } },
    },
    {
      data: { values },
      mark: { type: "text", style: "remark", align: "left", baseline: "top", dx: 5 },
      encoding: { x: x("upper"), y: { value: 0 }, text: { field: "label" } },
    },
  ];
}
