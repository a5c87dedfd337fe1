import type { Drift } from "../questions/drift.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { type Hint, hints } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { stackedSpec } from "./theme.ts";

/**
 * EWMA and CUSUM of the normal scores, one above the other. Charts for the eye: the verdict does not use them.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's. The lower sum is drawn
 *          downwards
 */
export function driftScoreChart(result: Drift, words: Words): ChartSpec {
  const say = words.drift.scoreChart;
  const { points, cusum } = result.scoreCharts;
  const figure = (value: number) => words.format.plain(value);
  const rows = points.map((point) => ({
    fill: String(point.fill),
    score: point.score,
    ewma: point.ewma.value,
    lower: point.ewma.lower,
    upper: point.ewma.upper,
    above: point.cusum.upper,
    below: -point.cusum.lower,
    scoreWords: figure(point.score),
    ewmaWords: figure(point.ewma.value),
    aboveWords: figure(point.cusum.upper),
    belowWords: figure(point.cusum.lower),
  }));
  const x = {
    field: "fill",
    type: "ordinal",
    title: say.fill,
    scale: { domain: rows.map(({ fill }) => fill) },
    axis: { tickCount: rows.length, labelAngle: 0, labelOverlap: rows.length > mostLabels },
  };
  const decisions = [cusum.decision, -cusum.decision].map((decision) => ({ decision }));
  const fill = { field: "fill", title: say.fill };
  return withNamedData(
    stackedSpec(
      {
        marks: words.format.marks,
        title: say.title(result),
        description: say.description(result),
      },
      [
        view([
          line(rows, x, y("lower", say.ewma), "next-edge"),
          line(rows, x, y("upper", say.ewma), "next-edge"),
          line(rows, x, y("ewma", say.ewma), "estimate"),
          pointsOf(rows, x, y("ewma", say.ewma), [
            fill,
            { field: "scoreWords", title: say.score },
            { field: "ewmaWords", title: say.ewma },
          ]),
          ...keyLayer(keyed("next-edge", words.charts.limits)),
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
              fill,
              { field: `${side}Words`, title: say[side] },
            ]),
          ]),
        ]),
      ],
    ),
  );
}

/** More places than this leave no room for every label. */
const mostLabels = 24;
const viewHeight = 150;

function view(layer: readonly object[]) {
  return { height: viewHeight, layer };
}

function y(field: string, title: string) {
  return { field, type: "quantitative", title };
}

function line(values: readonly object[], x: object, y: object, style: string) {
  return { data: { values }, mark: { type: "line", style }, encoding: { x, y } };
}

function pointsOf(values: readonly object[], x: object, y: object, said: readonly Hint[]) {
  return {
    data: { values },
    mark: { type: "point", style: "observation" },
    encoding: { x, y, ...hints(said) },
  };
}
