import type { Cost } from "../questions/cost.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { cheapestKey, cheapestLayer } from "./cheapest.ts";
import { hints } from "./hints.ts";
import { keyed, keyLayer, seriesLook } from "./key.ts";
import type { Color } from "./looks.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

/**
 * Cost of 0, 1, 2, … catches of every fill: what the remaining rate error costs and what the minutes cost, one above the other.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in money for each hectare
 *          (or acre); null when no total is known
 */
export function costChart(result: Cost, words: Words): ChartSpec | null {
  if (result.cheapest === null) return null;
  const say = words.cost.chart;
  const perArea = words.format.convert(1, "area", 1);
  const money = (value: number) => words.format.plain(value / perArea);
  const known = result.points.flatMap(({ catches, loss, catchingPerHectare, totalPerHectare }) =>
    loss.perHectare === null || catchingPerHectare === null || totalPerHectare === null
      ? []
      : [
          {
            catches,
            loss: loss.perHectare / perArea,
            total: totalPerHectare / perArea,
            lossWords: money(loss.perHectare),
            catchingWords: money(catchingPerHectare),
            totalWords: money(totalPerHectare),
          },
        ],
  );
  const least = known.filter(({ catches }) => catches === result.cheapest?.catches);
  const x = { field: "catches", type: "ordinal", title: say.catches, axis: { labelAngle: 0 } };
  const y = (field: string) => ({ field, type: "quantitative", title: say.cost(result) });
  const said = hints([
    { field: "catches", title: say.catches },
    { field: "lossWords", title: say.loss },
    { field: "catchingWords", title: say.catching },
    { field: "totalWords", title: say.cost(result) },
  ]);
  const bar = (color: Color, encoding: object) => ({
    data: { values: known },
    mark: { type: "bar", color },
    encoding: { x, ...encoding, ...said },
  });
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(result),
    }),
    layer: [
      bar(lossColor, { y: y("loss") }),
      bar(catchingColor, { y: y("total"), y2: { field: "loss" } }),
      cheapestLayer(least, x, y("total")),
      ...keyLayer([
        ...keyed({ shape: "square", fill: lossColor }, say.loss),
        ...keyed({ shape: "square", fill: catchingColor }, say.catching),
        ...cheapestKey(words),
      ]),
    ],
  });
}

const [lossColor, catchingColor] = [seriesLook(0).fill, seriesLook(1).fill];
