import type { Cost } from "../questions/cost.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";

/**
 * Cost of 0, 1, 2, … catches of every fill: what the remaining rate error costs and what the minutes cost, stacked.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, in money for each hectare
 *          (or acre); null when no total is known
 */
export function costChart(result: Cost, words: Words): ChartSpec | null {
  if (result.cheapest === null) return null;
  const say = words.cost.chart;
  const perArea = words.format.convert(1, "area", 1);
  const known = result.points.flatMap(({ catches, loss, catchingPerHectare, totalPerHectare }) =>
    loss.perHectare === null || catchingPerHectare === null || totalPerHectare === null
      ? []
      : [{ catches, loss: loss.perHectare, catching: catchingPerHectare, total: totalPerHectare }],
  );
  const parts = known.flatMap(({ catches, loss, catching }) => [
    { catches, part: say.loss, order: 0, cost: loss / perArea },
    { catches, part: say.catching, order: 1, cost: catching / perArea },
  ]);
  const totals = known.map(({ catches, total }) => ({
    catches,
    total: total / perArea,
    label: words.format.plain(total / perArea),
  }));
  const least = totals.filter(({ catches }) => catches === result.cheapest?.catches);
  const x = { field: "catches", type: "ordinal", title: say.catches, axis: { labelAngle: 0 } };
  const y = (field: string) => ({ field, type: "quantitative", title: say.cost(result) });
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title(result),
      description: say.description(result),
    }),
    layer: [
      {
        data: { values: parts },
        mark: { type: "bar" },
        encoding: {
          x,
          y: { ...y("cost"), stack: "zero" },
          color: { field: "part", type: "nominal", title: null, sort: [say.loss, say.catching] },
          order: { field: "order", type: "quantitative" },
        },
      },
      {
        data: { values: totals },
        mark: { type: "text", style: "remark", dy: -8 },
        encoding: { x, y: y("total"), text: { field: "label" } },
      },
      {
        data: { values: least.map((one) => ({ ...one, words: say.cheapest })) },
        mark: { type: "text", style: "reference-label", dy: -24 },
        encoding: { x, y: y("total"), text: { field: "words" } },
      },
    ],
  };
}
