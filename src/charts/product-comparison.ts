import type { ProductComparison } from "../questions/product-comparison.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";

const rowHeight = 46;
const frameHeight = 90;
const lineThickness = 1.75;
/** Pixels by which fills stand above the mean, so that neither hides the other. */
const fillsAbove = 13;
/** Between two lines of a label; no name can hold it. */
const lineBreak = "\n";

/** What rows of a chart are named by and what is measured along it. */
interface Axes {
  readonly x: (field: string) => object;
  readonly y: object;
}

/**
 * Every fill of every product, with the mean of the product and its own interval.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, in the units the words
 *          show
 */
export function productEstimatesChart(result: ProductComparison, words: Words): ChartSpec {
  const say = words.productComparison.charts.estimates;
  const { format } = words;
  const size = Math.max(...result.products.map(({ estimate }) => estimate.value));
  const shown = (value: number | null | undefined) =>
    value == null ? null : format.convert(value, "delivery", size);
  const means = result.products.map(({ product, fills, estimate }) => ({
    product,
    fills,
    mean: shown(estimate.value),
    lower: shown(estimate.interval?.lower),
    upper: shown(estimate.interval?.upper),
  }));
  const axes = axesOf(
    "product",
    means.map(({ product }) => product),
    say.delivery(format.unit("delivery", size)),
  );
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title,
      description: say.description(result),
      height: frameHeight + rowHeight * means.length,
    }),
    layer: [
      fillLayer(result, words, shown, axes),
      ...intervalLayer(means, axes),
      pointLayer(means, "observation", axes, "mean", [
        { field: "product", type: "nominal", title: say.product },
        { field: "mean", type: "quantitative", title: say.mean },
        { field: "fills", type: "quantitative", title: say.fills },
      ]),
    ],
  };
}

/**
 * Every pair of products: the first in percent of the second with its simultaneous interval, the line of no difference,
 * and the band of equivalence where a margin was given.
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

function contrastRows({ contrasts }: ProductComparison, { productComparison: say }: Words) {
  return contrasts.map(({ first, second, ratio, verdict }) => ({
    pair: say.contrasts.pair(first, second, lineBreak),
    ratio: 100 * ratio.value,
    lower: ratio.set?.shape === "interval" ? 100 * ratio.set.lower : null,
    upper: ratio.set?.shape === "interval" ? 100 * ratio.set.upper : null,
    verdict: say.verdicts[verdict],
    different: verdict === "different",
  }));
}

function fillLayer(
  result: ProductComparison,
  words: Words,
  shown: (value: number) => number | null,
  axes: Axes,
): object {
  const say = words.productComparison.charts.estimates;
  const values = result.products.flatMap(({ product, points }) =>
    points.map(({ bin, fill, delivery }) => ({ product, bin, fill, delivery: shown(delivery) })),
  );
  return {
    data: { values },
    mark: { type: "point", style: "earlier", yOffset: -fillsAbove },
    encoding: {
      y: axes.y,
      x: axes.x("delivery"),
      tooltip: [
        { field: "product", type: "nominal", title: say.product },
        { field: "bin", type: "nominal", title: say.bin },
        { field: "fill", type: "quantitative", title: say.fill },
        { field: "delivery", type: "quantitative", title: say.mean },
      ],
    },
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

function pointLayer(
  values: readonly object[],
  style: string,
  { x, y }: Axes,
  field: string,
  tooltip: readonly object[],
): object {
  return {
    data: { values },
    mark: { type: "point", style },
    encoding: { y, x: x(field), tooltip },
  };
}

/** Intervals of the rows that have one; a layer without any would have no extent. */
function intervalLayer(
  rows: readonly { readonly lower: number | null; readonly upper: number | null }[],
  { x, y }: Axes,
): readonly object[] {
  const values = rows.filter(({ lower, upper }) => lower !== null && upper !== null);
  if (values.length === 0) return [];
  return [
    {
      data: { values },
      mark: { type: "rule", style: "estimate", size: lineThickness },
      encoding: { y, x: x("lower"), x2: { field: "upper" } },
    },
  ];
}

/** One row for each of `rows`; a label may have several lines, so that long names leave room for the numbers. */
function axesOf(rowField: string, rows: readonly string[], title: string): Axes {
  return {
    x: (field) => ({
      field,
      type: "quantitative",
      title,
      scale: { zero: false, padding: 12 },
    }),
    y: {
      field: rowField,
      type: "nominal",
      scale: { domain: rows },
      axis: {
        title: null,
        grid: false,
        labelLimit: 400,
        labelExpr: `split(datum.label, ${JSON.stringify(lineBreak)})`,
      },
    },
  };
}
