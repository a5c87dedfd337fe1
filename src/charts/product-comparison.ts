import type { ProductComparison } from "../questions/product-comparison.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import {
  type Axes,
  axesOf,
  frameHeight,
  intervalLayer,
  pointLayer,
  rowHeight,
} from "./product-rows.ts";
import { baseSpec } from "./theme.ts";

/** Pixels by which fills stand above the mean, so that neither hides the other. */
const fillsAbove = 13;

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
