import type { Outlet, Outlets } from "../questions/outlets.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { limitLines } from "./limit-lines.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

/**
 * How far each outlet lies off the centre, with the band about it; outlets outside the band are marked.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent
 */
export function outletsChart(result: Outlets, words: Words): ChartSpec {
  const say = words.outlets.chart;
  const x = {
    field: "outlet",
    type: "ordinal",
    title: say.outlet,
    sort: null,
    axis: { labelAngle: 0 },
  };
  const y = (field: string) => ({ field, type: "quantitative", title: say.off(result) });
  const points = (inside: boolean, style: string) => ({
    data: {
      values: result.outlets.filter(({ insideBand }) => insideBand === inside).map(pointOf(words)),
    },
    mark: { type: "point", style },
    encoding: { x, y: y("off"), ...sentenceHint("words") },
  });
  const limit = result.options.band * 100;
  const outside = result.outlets.some(({ insideBand }) => !insideBand);
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(result),
    }),
    layer: [
      ...limitLines([-limit, limit], y),
      {
        data: { values: result.outlets.map(pointOf(words)) },
        mark: { type: "bar", style: "interval", size: 2, aria: false },
        encoding: { x, y: y("off") },
      },
      points(true, "observation"),
      ...(outside ? [points(false, "flagged")] : []),
      ...keyLayer([
        ...keyed("observation", say.outlet),
        ...keyed("flagged", words.charts.outside, outside),
        ...keyed("reference", words.charts.outletBand(result.options.band)),
      ]),
    ],
  });
}

function pointOf(words: Words): (outlet: Outlet) => object {
  return (outlet) => ({
    outlet: outlet.outlet,
    off: outlet.relative * 100,
    words: words.outlets.chart.point(outlet),
  });
}
