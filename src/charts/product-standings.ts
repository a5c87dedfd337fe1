import type { ProductComparison } from "../questions/product-comparison.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { axesOf, frameHeight, intervalLayer, pointLayer, rowHeight } from "./product-rows.ts";
import { baseSpec } from "./theme.ts";

/**
 * Every product in percent of the mean of all, in the order of the comparison, with lines that overlap exactly where no
 * difference is found.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent; null where no
 *          such lines exist
 */
export function productStandingsChart(result: ProductComparison, words: Words): ChartSpec | null {
  const { standings } = result;
  if (standings === null) return null;
  const say = words.trial.standings;
  const values = standings.map(({ product, ratio, lower, upper }) => ({
    product,
    ratio: 100 * ratio,
    lower: 100 * lower,
    upper: 100 * upper,
    said: say.said(ratio),
  }));
  const axes = axesOf(
    "product",
    values.map(({ product }) => product),
    say.ratio,
  );
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title,
      description: say.description(standings),
      height: frameHeight + rowHeight * values.length,
    }),
    layer: [
      {
        data: { values: [{ ratio: 100 }] },
        mark: { type: "rule", style: "reference" },
        encoding: { x: axes.x("ratio") },
      },
      ...intervalLayer(values, axes),
      pointLayer(values, "observation", axes, "ratio", [
        { field: "product", title: say.product },
        { field: "said", title: say.ratio },
      ]),
      ...keyLayer([
        ...keyed("observation", words.charts.meanOfProduct),
        ...keyed("estimate", words.charts.comparedByOverlap),
        ...keyed("reference", words.charts.meanOfProducts),
      ]),
    ],
  });
}
