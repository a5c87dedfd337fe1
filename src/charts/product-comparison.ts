import type { ProductComparison } from "../questions/product-comparison.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";

const rowHeight = 46;
const frameHeight = 90;
const lineThickness = 1.75;
/** Pixels by which fills stand above the mean, so that neither hides the other. */
const fillsAbove = 13;
/** Two lines of a label; the data must not hold it otherwise. */
const lineBreak = "\n";

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
  const fills = result.products.flatMap(({ product, points }) =>
    points.map(({ bin, fill, delivery }) => ({ product, bin, fill, delivery: shown(delivery) })),
  );
  const means = result.products.map(({ product, fills: count, estimate }) => ({
    product,
    fills: count,
    mean: shown(estimate.value),
    lower: shown(estimate.interval?.lower),
    upper: shown(estimate.interval?.upper),
  }));
  const title = say.delivery(format.unit("delivery", size));
  const x = (field: string) => ({
    field,
    type: "quantitative",
    title,
    scale: { zero: false, padding: 12 },
  });
  const y = rowAxis(
    "product",
    result.products.map(({ product }) => product),
  );
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title,
      description: say.description(result),
      height: frameHeight + rowHeight * result.products.length,
    }),
    layer: [
      {
        data: { values: fills },
        mark: { type: "point", style: "earlier", yOffset: -fillsAbove },
        encoding: {
          y,
          x: x("delivery"),
          tooltip: [
            { field: "product", type: "nominal", title: say.product },
            { field: "bin", type: "nominal", title: say.bin },
            { field: "fill", type: "quantitative", title: say.fill },
            { field: "delivery", type: "quantitative", title },
          ],
        },
      },
      ...intervalLayer(means, y, x("lower")),
      {
        data: { values: means },
        mark: { type: "point", style: "observation" },
        encoding: {
          y,
          x: x("mean"),
          tooltip: [
            { field: "product", type: "nominal", title: say.product },
            { field: "mean", type: "quantitative", title },
            { field: "fills", type: "quantitative", title: say.fills },
          ],
        },
      },
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
  const { contrasts: table, verdicts } = words.productComparison;
  const values = result.contrasts.map(({ first, second, ratio, verdict }) => ({
    pair: table.pair(first, second, lineBreak),
    ratio: 100 * ratio.value,
    lower: ratio.set?.shape === "interval" ? 100 * ratio.set.lower : null,
    upper: ratio.set?.shape === "interval" ? 100 * ratio.set.upper : null,
    verdict: verdicts[verdict],
    decided: verdict === "different",
  }));
  const x = (field: string) => ({
    field,
    type: "quantitative",
    title: say.ratio,
    scale: { zero: false, padding: 12 },
  });
  const y = rowAxis(
    "pair",
    values.map(({ pair }) => pair),
  );
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title,
      description: say.description(result),
      height: frameHeight + rowHeight * result.contrasts.length,
    }),
    layer: [
      ...equivalenceBand(result, words, x),
      {
        data: { values: [{ ratio: 100 }] },
        mark: { type: "rule", style: "reference" },
        encoding: { x: x("ratio") },
      },
      ...intervalLayer(values, y, x("lower")),
      ...[...new Set(values.map(({ decided }) => decided))].map((decided) => ({
        data: { values: values.filter((one) => one.decided === decided) },
        mark: { type: "point", style: decided ? "observation" : "earlier" },
        encoding: {
          y,
          x: x("ratio"),
          tooltip: [
            { field: "pair", type: "nominal", title: say.pair },
            { field: "ratio", type: "quantitative", title: say.ratio, format: ".1f" },
            { field: "verdict", type: "nominal", title: say.verdict },
          ],
        },
      })),
    ],
  };
}

function equivalenceBand(
  { contrasts, options }: ProductComparison,
  words: Words,
  x: (field: string) => object,
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

/** Intervals of the rows that have one; a layer without any would have no extent. */
function intervalLayer(
  rows: readonly { readonly lower: number | null; readonly upper: number | null }[],
  y: object,
  x: object,
): readonly object[] {
  const values = rows.filter(({ lower, upper }) => lower !== null && upper !== null);
  return values.length === 0
    ? []
    : [
        {
          data: { values },
          mark: { type: "rule", style: "estimate", size: lineThickness },
          encoding: { y, x, x2: { field: "upper" } },
        },
      ];
}

/** Rows of the chart; a label may have several lines, so that long names leave room for the numbers. */
function rowAxis(field: string, domain: readonly string[]): object {
  return {
    field,
    type: "nominal",
    scale: { domain },
    axis: {
      title: null,
      grid: false,
      labelLimit: 400,
      labelExpr: `split(datum.label, ${JSON.stringify(lineBreak)})`,
    },
  };
}
