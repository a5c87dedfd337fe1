import type { SpeedLinearity } from "../questions/speed-linearity.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { limitLines } from "./limit-lines.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

/**
 * Delivery of each catch, relative to its fill's own, against the speed of the meter, with the straight line, its band and
 * the tolerance.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent of the fill's own
 *          delivery; null where speeds do not differ enough to tell anything
 */
export function speedLinearityChart(result: SpeedLinearity, words: Words): ChartSpec | null {
  if (result.slope === null) return null;
  const say = words.speedLinearity.chart;
  const line = result.line.map(({ turnsPerMin, relative, lower, upper }) => ({
    turnsPerMin,
    relative: relative * 100,
    lower: lower * 100,
    upper: upper * 100,
  }));
  const points = result.points.map((point) => ({
    turnsPerMin: point.turnsPerMin,
    relative: point.relative * 100,
    words: say.catch(point),
  }));
  const limits = [result.band.upper * 100, result.band.lower * 100];
  const key = words.charts;
  const scale = { zero: false };
  const x = {
    field: "turnsPerMin",
    type: "quantitative",
    title: say.speed,
    scale: { ...scale, padding: 16 },
  };
  const y = (field: string) => ({ field, type: "quantitative", title: say.relative, scale });
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(result),
    }),
    layer: [
      {
        data: { values: line },
        mark: { type: "area", style: "band" },
        encoding: { x, y: y("lower"), y2: { field: "upper" } },
      },
      {
        data: { values: line },
        mark: { type: "line", style: "estimate" },
        encoding: { x, y: y("relative") },
      },
      ...limitLines(limits, y),
      {
        data: { values: points },
        mark: { type: "point", style: "observation" },
        encoding: { x, y: y("relative"), ...sentenceHint("words") },
      },
      ...keyLayer([
        ...keyed("observation", key.catch),
        ...keyed("estimate", key.straightLine),
        ...keyed("band", key.lineBand(result.options.level)),
        ...keyed("reference", key.tolerance(result.options.tolerance)),
      ]),
    ],
  });
}
