import type { Drift, DriftFill } from "../questions/drift.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";

/**
 * Control chart of fills: every fill in order of time with its interval, the band expected from the fills before it, the
 * tolerance lines, and the step, line or mean that the verdict rests on. Missing fills and long pauses have a place of
 * their own on the axis.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, in the units the words
 *          show
 */
export function driftChart(result: Drift, words: Words): ChartSpec {
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
    bandLower: shown(one.asItCame?.interval.lower ?? null),
    bandUpper: shown(one.asItCame?.interval.upper ?? null),
    role: roleOf(one, result),
  }));
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title(result),
      description: say.description(result),
    }),
    layer: [
      ...bandLayers(rows, result, shown, axes, say),
      ...toleranceLayers(result, shown, say.tolerance, axes),
      ...levelLayers(result, shown, axes),
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

function roleOf({ judged, asItCame, fill }: DriftFill, { newest }: Drift) {
  if (!judged) return "earlier";
  const odd = asItCame?.outside || (newest?.fill === fill && newest.outside);
  return odd ? "flagged" : "observation";
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

/** Season limits of every fill as it came, and the narrower band of the newest, which is looked at once. */
function bandLayers(
  rows: readonly { readonly bandLower: number | null }[],
  { newest }: Drift,
  shown: Shown,
  { x, y }: Axes,
  say: Words["drift"]["chart"],
): readonly object[] {
  const banded = rows.filter(({ bandLower }) => bandLower !== null);
  const label = (values: readonly object[], field: string, text: string) => ({
    data: { values },
    mark: { type: "text", style: "remark", dy: -7 },
    encoding: { x, y: y(field), text: { value: text } },
  });
  const look = {
    fill: String(newest?.fill),
    lower: shown(newest?.interval.lower ?? null),
    upper: shown(newest?.interval.upper ?? null),
  };
  if (newest === null || banded.length === 0) return [];
  return [
    {
      data: { values: banded },
      mark: { type: "bar", style: "next-band", width: { band: 0.96 } },
      encoding: { x, y: y("bandLower"), y2: { field: "bandUpper" } },
    },
    {
      data: { values: [look] },
      mark: { type: "bar", style: "band", width: { band: 0.4 } },
      encoding: { x, y: y("lower"), y2: { field: "upper" } },
    },
    label(banded.slice(0, 1), "bandUpper", say.band),
    label([look], "upper", say.bandOfNewest),
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

/** Where the meter stands: before and after a shift, along a trend, or at one mean. */
function levelLayers(result: Drift, shown: Shown, { x, y }: Axes): readonly object[] {
  return levelsOf(result).map(({ from, to, start, end }) => ({
    data: {
      values: [
        { fill: String(from), level: shown(start) },
        { fill: String(to), level: shown(end) },
      ],
    },
    mark: { type: "line", style: "estimate" },
    encoding: { x, y: y("level") },
  }));
}

function levelsOf({ verdict, shift, trend, toleranceLines, fills }: Drift) {
  const judged = fills.filter((one) => one.judged).map(({ fill }) => fill);
  const [first = 0, last = 0] = [judged[0], judged.at(-1)];
  if (verdict === "moved" && shift !== null) {
    const lastBefore = judged[shift.fillsBefore - 1] ?? first;
    return [
      { from: first, to: lastBefore, start: shift.before, end: shift.before },
      { from: shift.since.fill, to: last, start: shift.after, end: shift.after },
    ];
  }
  if (verdict === "trending" && trend !== null) return [{ from: first, to: last, ...trend.line }];
  const { center } = toleranceLines;
  return [{ from: first, to: last, start: center, end: center }];
}
