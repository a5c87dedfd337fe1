import type { Drift } from "../questions/drift.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { chartSize, composedSpec } from "./theme.ts";

/**
 * EWMA and CUSUM of the normal scores, one above the other. Charts for the eye: the verdict does not use them.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's. The lower sum is drawn
 *          downwards
 */
export function driftScoreChart(result: Drift, words: Words): ChartSpec {
  const say = words.drift.scoreChart;
  const { points, cusum } = result.scoreCharts;
  const rows = points.map((point) => ({
    fill: String(point.fill),
    score: point.score,
    ewma: point.ewma.value,
    lower: point.ewma.lower,
    upper: point.ewma.upper,
    above: point.cusum.upper,
    below: -point.cusum.lower,
  }));
  const x = {
    field: "fill",
    type: "ordinal",
    title: say.fill,
    scale: { domain: rows.map(({ fill }) => fill) },
    axis: { tickCount: rows.length, labelAngle: 0, labelOverlap: rows.length > mostLabels },
  };
  const decisions = [cusum.decision, -cusum.decision].map((decision) => ({
    decision,
    label: say.decision,
  }));
  return {
    ...composedSpec({
      language: words.format.language,
      title: say.title(result),
      description: say.description(result),
    }),
    vconcat: [
      view([
        line(rows, x, y("lower", say.ewma), "next-edge"),
        line(rows, x, y("upper", say.ewma), "next-edge"),
        line(rows, x, y("ewma", say.ewma), "estimate"),
        pointsOf(rows, x, y("ewma", say.ewma), [
          { field: "fill", type: "nominal", title: say.fill },
          { field: "score", type: "quantitative", title: say.score, format: ".2f" },
          { field: "ewma", type: "quantitative", title: say.ewma, format: ".2f" },
        ]),
      ]),
      view([
        {
          data: { values: decisions },
          mark: { type: "rule", style: "next-edge" },
          encoding: { y: y("decision", say.cusum) },
        },
        ...(["above", "below"] as const).flatMap((side) => [
          line(rows, x, y(side, say.cusum), "estimate"),
          pointsOf(rows, x, y(side, say.cusum), [
            { field: "fill", type: "nominal", title: say.fill },
            { field: side, type: "quantitative", title: say[side], format: ".2f" },
          ]),
        ]),
      ]),
    ],
  };
}

/** More places than this leave no room for every label. */
const mostLabels = 24;
const viewHeight = 150;
/** Axis titles and labels of a view stand outside its width. */
const axisRoom = 90;

function view(layer: readonly object[]) {
  return { width: chartSize.width - axisRoom, height: viewHeight, layer };
}

function y(field: string, title: string) {
  return { field, type: "quantitative", title };
}

function line(values: readonly object[], x: object, y: object, style: string) {
  return { data: { values }, mark: { type: "line", style }, encoding: { x, y } };
}

function pointsOf(values: readonly object[], x: object, y: object, tooltip: readonly object[]) {
  return {
    data: { values },
    mark: { type: "point", style: "observation" },
    encoding: { x, y, tooltip },
  };
}
