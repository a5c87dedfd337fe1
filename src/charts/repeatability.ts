import type { Repeatability } from "../questions/repeatability.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { hints } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";
import { thinned } from "./thinned.ts";

/**
 * Catch scatter of every fill with its interval, against the usual one and what reading the scale alone
 * makes. Logarithmic, because intervals of a standard deviation are about as wide up as down in ratio.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent
 */
export function repeatabilityChart(result: Repeatability, words: Words): ChartSpec {
  const say = words.repeatability.chart;
  const { format, charts: key } = words;
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
            said: format.percent(scatter.relative.value),
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
    scale: { domain: places },
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
    title: key.logScale(say.scatter),
    scale: { type: "log", nice: false, padding: 12 },
    axis: { format: "~g" },
  });
  const lines = [
    { level: percent(result.usual?.relative), label: key.usualScatter, style: "estimate" },
    { level: percent(result.scale.relativeError), label: key.reading, style: "reference" },
  ] as const;
  const known = lines.filter(({ level }) => level !== null);
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(result),
      remark,
    }),
    layer: [
      ...known.map(({ level, style }) => ({
        data: { values: [{ level }] },
        mark: { type: "rule", style },
        encoding: { y: y("level") },
      })),
      {
        data: { values: rows },
        mark: { type: "rule", style: "interval" },
        encoding: { x, y: y("lower"), y2: { field: "upper" } },
      },
      ...[...new Set(rows.map((row) => row.unusual))].map((unusual) => ({
        data: { values: rows.filter((row) => row.unusual === unusual) },
        mark: { type: "point", style: unusual ? "flagged" : "observation" },
        encoding: {
          x,
          y: y("scatter"),
          ...hints([
            { field: "fill", title: say.fill },
            { field: "said", title: say.scatter },
            { field: "catches", title: say.catches },
          ]),
        },
      })),
      ...keyLayer([
        ...keyed("observation", key.fill),
        ...keyed(
          "flagged",
          key.unusual,
          rows.some(({ unusual }) => unusual),
        ),
        ...keyed("interval", key.interval(result.options.level)),
        ...known.flatMap(({ label, style }) => keyed(style, label)),
      ]),
    ],
  });
}

/** More places than this leave no room for every label. */
const mostLabels = 24;
