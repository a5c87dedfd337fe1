import type { Drift, DriftFill } from "../questions/drift.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { hints } from "./hints.ts";
import { type KeyEntry, keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";
import { thinned } from "./thinned.ts";

/**
 * Fills in order of time: every fill with its interval, the level of each stretch, the last of which is in force (or the
 * line, while they trend), fills that stand apart, and the tolerance lines. Missing fills and long pauses have a place of
 * their own on the axis.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in the units the words
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
    said: format.number(one.estimate.value, "delivery", size, one.estimate.standardError),
    lower: shown(one.estimate.interval?.lower ?? null),
    upper: shown(one.estimate.interval?.upper ?? null),
    role: roleOf(one, result),
  }));
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(whole),
      description: say.description(whole),
      remark,
    }),
    layer: [
      ...toleranceLayers(result, shown, axes),
      ...levelLayers(result, shown, axes),
      ...intervalLayers(rows, axes),
      ...rolesIn(rows).map((role) => ({
        data: { values: rows.filter((row) => row.role === role) },
        mark: { type: "point", style: role },
        encoding: {
          x: axes.x,
          y: axes.y("delivery"),
          ...hints([
            { field: "fill", title: say.fill },
            ...(result.fills.some(({ takenAt }) => takenAt !== null)
              ? [{ field: "date", title: say.date }]
              : []),
            { field: "said", title: deliveryTitle },
            { field: "catches", title: say.catches },
          ]),
        },
      })),
      ...keyLayer(keyOf(result, rolesIn(rows), words)),
    ],
  });
}

/** More places than this leave no room for every label. */
const mostLabels = 24;

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
      scale: { domain: places },
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

/** What is drawn, in words. A fill that stands apart is one that did, one that does now, or both are there. */
function keyOf(
  { stretches, trending, stoodApart, differs, options }: Drift,
  roles: readonly string[],
  { charts: key }: Words,
): readonly KeyEntry[] {
  const apart = [...(stoodApart.length > 0 ? [key.apart] : []), ...(differs ? [key.differs] : [])];
  return [
    ...keyed("observation", key.fill, roles.includes("observation")),
    ...keyed("earlier", key.earlier, roles.includes("earlier")),
    ...keyed("flagged", apart.join(", "), roles.includes("flagged") && apart.length > 0),
    ...keyed("interval", key.interval(options.level)),
    ...keyed("estimate", trending === null ? key.level : key.trend),
    ...keyed("next-edge", key.earlierLevel, stretches.slice(0, -1).some(hasLevel)),
    ...keyed("reference", key.tolerance(options.tolerance)),
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
          mark: { type: "rule", style: "interval" },
          encoding: { x, y: y("lower"), y2: { field: "upper" } },
        },
      ];
}

function toleranceLayers({ toleranceLines }: Drift, shown: Shown, { y }: Axes): readonly object[] {
  const values = [toleranceLines.lower, toleranceLines.upper].map((tolerance) => ({
    tolerance: shown(tolerance),
  }));
  return [
    {
      data: { values },
      mark: { type: "rule", style: "reference" },
      encoding: { y: y("tolerance") },
    },
  ];
}

/** A fill alone that was never settled has no level. */
function hasLevel({ begins }: Drift["stretches"][number]): boolean {
  return begins !== "unsettled";
}

/** The level of each stretch, the last without a fill that differs; the line while the fills of the last one trend. */
function levelLayers(
  { stretches, trending, toleranceLines }: Drift,
  shown: Shown,
  { x, y }: Axes,
): readonly object[] {
  return stretches.flatMap((stretch, i) => {
    const { from, to, mean } = stretch;
    const inForce = i === stretches.length - 1;
    if (!hasLevel(stretch)) return [];
    const level = inForce ? toleranceLines.center : mean;
    const { start, end } = (inForce ? trending?.line : null) ?? { start: level, end: level };
    const values = [
      { fill: String(from), level: shown(start) },
      { fill: String(to), level: shown(end) },
    ];
    return [
      {
        data: { values },
        mark: { type: "line", style: inForce ? "estimate" : "next-edge" },
        encoding: { x, y: y("level") },
      },
    ];
  });
}
