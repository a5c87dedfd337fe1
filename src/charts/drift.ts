import type { Drift, DriftFill } from "../questions/drift.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";
import { thinned } from "./thinned.ts";

/**
 * Fills in order of time: every fill with its interval, the level of each stretch, the last of which is in force (or the
 * line, while they trend), fills that stand apart, and the tolerance lines. Missing fills and long pauses have a place of
 * their own on the axis.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, in the units the words
 *          show
 */
export function driftChart(whole: Drift, words: Words): ChartSpec {
  const { drawn, remark } = thinned(
    whole.fills,
    "fills",
    ({ estimate }) => estimate.value,
    (one) => mustStay(one, whole),
    words,
  );
  const result = { ...whole, fills: drawn };
  const say = words.drift.chart;
  const { format } = words;
  const size = result.toleranceLines.center;
  const deliveryTitle = say.delivery(format.unit("delivery", size));
  const axes = axesOf(result, words, deliveryTitle);
  const shown = (value: number | null) =>
    value === null ? null : format.convert(value, "delivery", size);
  const rows = result.fills.map((one) => ({
    fill: String(one.fill),
    date: one.takenAt === null ? "" : format.date(one.takenAt),
    catches: one.catches,
    delivery: shown(one.estimate.value),
    lower: shown(one.estimate.interval?.lower ?? null),
    upper: shown(one.estimate.interval?.upper ?? null),
    role: roleOf(one, result),
  }));
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title(whole),
      description: say.description(whole),
      remark,
    }),
    layer: [
      ...toleranceLayers(result, shown, say.tolerance, axes),
      ...levelLayers(result, shown, axes, say),
      ...intervalLayers(rows, axes),
      ...rolesIn(rows).map((role) => ({
        data: { values: rows.filter((row) => row.role === role) },
        mark: { type: "point", style: role },
        encoding: {
          x: axes.x,
          y: axes.y("delivery"),
          tooltip: [
            { field: "fill", type: "nominal", title: say.fill },
            { field: "date", type: "nominal", title: say.date },
            { field: "delivery", type: "quantitative", title: deliveryTitle },
            { field: "catches", type: "quantitative", title: say.catches },
          ],
        },
      })),
      ...remarkLayers(rows, result, axes, say),
    ],
  };
}

/** More places than this leave no room for every label. */
const mostLabels = 24;

/** The size of a role's points would otherwise be the thickness of its rules. */
const intervalWidth = 1.75;

/** A place at the end of the axis that no fill takes, for the names of lines. */
const blankPlace = " ";

type Shown = (value: number | null) => number | null;

interface Axes {
  readonly x: object;
  readonly y: (field: string) => object;
}

function roleOf({ stretch, fill }: DriftFill, { differs, stretches }: Drift) {
  if (stretch === null || differs?.fill === fill) return "flagged";
  return stretch === stretches.length - 1 ? "observation" : "earlier";
}

/** Fills that lines and words of the chart hang on, beside those that stand out. */
function mustStay(one: DriftFill, result: Drift): boolean {
  const { stretches, input, fills } = result;
  return (
    roleOf(one, result) === "flagged" ||
    one === fills[0] ||
    one === fills.at(-1) ||
    stretches.some(({ from, to }) => from === one.fill || to === one.fill) ||
    input.gaps.some(({ beforeFill }) => beforeFill === one.fill)
  );
}

/** Roles that some fill has: a layer without data would make the drawing complain. */
function rolesIn(rows: readonly { readonly role: string }[]): readonly string[] {
  return [...new Set(rows.map(({ role }) => role))].sort();
}

function axesOf(result: Drift, words: Words, deliveryTitle: string): Axes {
  const places = placesOf(result, words);
  return {
    x: {
      field: "fill",
      type: "ordinal",
      title: words.drift.chart.fill,
      scale: { domain: [...places, blankPlace] },
      axis: {
        values: places,
        tickCount: places.length,
        labelAngle: 0,
        labelOverlap: places.length > mostLabels,
      },
    },
    y: (field) => ({
      field,
      type: "quantitative",
      title: deliveryTitle,
      scale: { zero: false },
    }),
  };
}

/** Fills in order of time, with a place for every gap. */
function placesOf({ fills, input }: Drift, { drift }: Words): readonly string[] {
  const places: string[] = [];
  for (const { fill } of fills) {
    const gap = input.gaps.find(({ beforeFill }) => beforeFill === fill);
    if (gap !== undefined) places.push(unlike(places, drift.chart.gap(gap)));
    places.push(String(fill));
  }
  return places;
}

/** Two pauses of equal length would otherwise be one place on the axis. */
function unlike(places: readonly string[], label: string): string {
  return places.includes(label) ? unlike(places, `${label}\u200b`) : label;
}

/** A word at each fill that stands apart. */
function remarkLayers(
  rows: readonly { readonly fill: string; readonly delivery: number | null }[],
  { differs, stoodApart }: Drift,
  { x, y }: Axes,
  say: Words["drift"]["chart"],
): readonly object[] {
  const odd = [
    ...stoodApart.map(({ fill }) => ({ fill, remark: say.apart })),
    ...(differs === null ? [] : [{ fill: differs.fill, remark: say.differs }]),
  ].map(({ fill, remark }) => ({
    remark,
    ...rows.find((row) => row.fill === String(fill)),
  }));
  if (odd.length === 0) return [];
  return [
    {
      data: { values: odd.map(({ fill, delivery, remark }) => ({ fill, delivery, remark })) },
      mark: { type: "text", style: "remark", align: "left", dx: 9 },
      encoding: { x, y: y("delivery"), text: { field: "remark" } },
    },
  ];
}

function intervalLayers(
  rows: readonly { readonly lower: number | null }[],
  { x, y }: Axes,
): readonly object[] {
  const known = rows.filter(({ lower }) => lower !== null);
  return known.length === 0
    ? []
    : [
        {
          data: { values: known },
          mark: { type: "rule", style: "earlier", size: intervalWidth },
          encoding: { x, y: y("lower"), y2: { field: "upper" } },
        },
      ];
}

function toleranceLayers(
  { toleranceLines }: Drift,
  shown: Shown,
  label: string,
  { y }: Axes,
): readonly object[] {
  const lines = [toleranceLines.lower, toleranceLines.upper].map((value) => ({
    tolerance: shown(value),
    label,
  }));
  const labelled = (line: object, dy: number) => ({
    data: { values: [line] },
    mark: { type: "text", style: "reference-label", dy },
    encoding: { x: { datum: blankPlace }, y: y("tolerance"), text: { field: "label" } },
  });
  return [
    {
      data: { values: lines },
      mark: { type: "rule", style: "reference" },
      encoding: { y: y("tolerance") },
    },
    ...lines.map((line, i) => labelled(line, i === 0 ? 9 : -7)),
  ];
}

/**
 * The level of each stretch, the last with its name and without a fill that differs; the line while the fills of the last
 * one trend.
 */
function levelLayers(
  result: Drift,
  shown: Shown,
  { x, y }: Axes,
  say: Words["drift"]["chart"],
): readonly object[] {
  const { stretches, trending, toleranceLines } = result;
  return stretches.flatMap(({ from, to, mean, begins }, i) => {
    const inForce = i === stretches.length - 1;
    // A fill alone that was never settled has no level.
    if (begins === "unsettled") return [];
    const level = inForce ? toleranceLines.center : mean;
    const { start, end } = (inForce ? trending?.line : null) ?? { start: level, end: level };
    const values = [
      { fill: String(from), level: shown(start) },
      { fill: String(to), level: shown(end) },
    ];
    const line = {
      data: { values },
      mark: { type: "line", style: inForce ? "estimate" : "next-edge" },
      encoding: { x, y: y("level") },
    };
    const name = {
      data: { values: values.slice(-1) },
      mark: { type: "text", style: "remark" },
      encoding: {
        x: { datum: blankPlace },
        y: y("level"),
        text: { value: trending === null ? say.level : say.trend },
      },
    };
    return inForce ? [line, name] : [line];
  });
}
