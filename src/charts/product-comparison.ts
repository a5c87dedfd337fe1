import { max } from "simple-statistics";
import type { ProductComparison } from "../questions/product-comparison.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { hints } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
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
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in the units the words
 *          show
 */
export function productEstimatesChart(result: ProductComparison, words: Words): ChartSpec {
  const say = words.productComparison.charts.estimates;
  const { format } = words;
  const size = max(result.products.map(({ estimate }) => estimate.value));
  const shown = (value: number | null | undefined) =>
    value == null ? null : format.convert(value, "delivery", size);
  const means = result.products.map(({ product, fills, estimate }) => ({
    product,
    fills,
    mean: shown(estimate.value),
    said: format.number(estimate.value, "delivery", size, estimate.standardError),
    lower: shown(estimate.interval?.lower),
    upper: shown(estimate.interval?.upper),
  }));
  const key = words.charts;
  const title = say.delivery(format.unit("delivery", size));
  const axes = axesOf(
    "product",
    means.map(({ product }) => product),
    title,
  );
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title,
      description: say.description(result),
      height: frameHeight + rowHeight * means.length,
    }),
    layer: [
      fillLayer(result, words, size, axes, title),
      ...intervalLayer(means, axes),
      pointLayer(means, "observation", axes, "mean", [
        { field: "product", title: say.product },
        { field: "said", title: title },
        { field: "fills", title: say.fills },
      ]),
      ...keyLayer([
        ...keyed("earlier", key.fill),
        ...keyed("observation", key.meanOfProduct),
        ...keyed("estimate", key.interval(result.options.level)),
      ]),
    ],
  });
}

function fillLayer(
  result: ProductComparison,
  words: Words,
  size: number,
  axes: Axes,
  title: string,
): object {
  const say = words.productComparison.charts.estimates;
  const values = result.products.flatMap(({ product, points }) =>
    points.map(({ bin, fill, delivery }) => ({
      product,
      bin,
      fill,
      delivery: words.format.convert(delivery, "delivery", size),
      said: words.format.number(delivery, "delivery", size),
    })),
  );
  return {
    data: { values },
    mark: { type: "point", style: "earlier", yOffset: -fillsAbove },
    encoding: {
      y: axes.y,
      x: axes.x("delivery"),
      ...hints([
        { field: "product", title: say.product },
        { field: "bin", title: say.bin },
        { field: "fill", title: say.fill },
        { field: "said", title },
      ]),
    },
  };
}
