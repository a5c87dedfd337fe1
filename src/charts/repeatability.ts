import type { Repeatability } from "../questions/repeatability.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";
import { thinned } from "./thinned.ts";

/**
 * Catch scatter of every fill with its interval, against the usual one and what reading the scale alone
 * makes. Logarithmic, because intervals of a standard deviation are about as wide up as down in ratio.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, in percent
 */
export function repeatabilityChart(result: Repeatability, words: Words): ChartSpec {
  const say = words.repeatability.chart;
  const percent = (value: number | null | undefined) => (value == null ? null : 100 * value);
  const { drawn, remark } = thinned(
    result.fills,
    "fills",
    ({ scatter }) => scatter?.relative.value ?? null,
    ({ fill }) => fill === result.fill,
    words,
  );
  const rows = drawn.flatMap(({ fill, catches, scatter }) =>
    scatter === null
      ? []
      : [
          {
            fill: String(fill),
            catches,
            scatter: percent(scatter.relative.value),
            lower: percent(scatter.relative.interval?.lower),
            upper: percent(scatter.relative.interval?.upper),
            unusual: fill === result.fill && result.practice === "more than usual",
          },
        ],
  );
  const places = drawn.map(({ fill }) => String(fill));
  const x = {
    field: "fill",
    type: "ordinal",
    title: say.fill,
    scale: { domain: [...places, blankPlace] },
    axis: {
      values: places,
      tickCount: places.length,
      labelAngle: 0,
      labelOverlap: places.length > mostLabels,
    },
  };
  const y = (field: string) => ({
    field,
    type: "quantitative",
    title: say.scatter,
    scale: { type: "log", nice: false, padding: 12 },
    axis: { format: "~g" },
  });
  const lines = [
    { level: percent(result.usual?.relative), label: say.usual, style: "estimate" },
    { level: percent(result.scale.relativeError), label: say.reading, style: "reference" },
  ].filter(({ level }) => level !== null);
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title(result),
      description: say.description(result),
      remark,
    }),
    layer: [
      ...lines.flatMap(({ level, label, style }) => lineLayers(level, label, style, y("level"))),
      {
        data: { values: rows },
        mark: { type: "rule", style: "earlier", size: intervalWidth },
        encoding: { x, y: y("lower"), y2: { field: "upper" } },
      },
      ...[...new Set(rows.map((row) => row.unusual))].map((unusual) => ({
        data: { values: rows.filter((row) => row.unusual === unusual) },
        mark: { type: "point", style: unusual ? "flagged" : "observation" },
        encoding: {
          x,
          y: y("scatter"),
          tooltip: [
            { field: "fill", type: "nominal", title: say.fill },
            { field: "scatter", type: "quantitative", title: say.scatter, format: ".2f" },
            { field: "catches", type: "quantitative", title: say.catches },
          ],
        },
      })),
    ],
  };
}

/** More places than this leave no room for every label. */
const mostLabels = 24;

/** The size of a role's points would otherwise be the thickness of its rules. */
const intervalWidth = 1.75;

/** A place at the end of the axis that no fill takes, for the names of lines. */
const blankPlace = " ";

function lineLayers(level: number | null, label: string, style: string, y: object) {
  const data = { values: [{ level, label }] };
  return [
    { data, mark: { type: "rule", style }, encoding: { y } },
    {
      data,
      mark: {
        type: "text",
        style: style === "reference" ? "reference-label" : "remark",
        align: "right",
        dx: 24,
        dy: -7,
      },
      encoding: { x: { datum: blankPlace }, y, text: { field: "label" } },
    },
  ];
}
