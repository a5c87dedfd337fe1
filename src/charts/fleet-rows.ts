import type { FleetStanding } from "../analysis/fleet.ts";
import type { Estimate } from "../results/estimate.ts";
import type { Drawn } from "../wording/sayings/fleet.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { type KeyEntry, keyed, keyLayer, lineShape, uprightShape } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { type Axes, intervalLayer, pointLayer } from "./product-rows.ts";
import { baseSpec, chartStyles } from "./theme.ts";

/** Rows lie closer than those of products: there are many, each with one short name. */
const rowHeight = 17;
const frameHeight = 70;
/** A picture longer than this is scrolled past, not looked at; the rest is in the table. */
const mostRows = 60;
/** Letters of a name there is room for on a phone; of a longer one both ends stand, since numbers are at either. */
const longestName = 16;
const nameEnds = { start: 6, end: 9 } as const;
const label = `length(datum.label) <= ${longestName} ? datum.label : slice(datum.label, 0, ${nameEnds.start}) + '…' + slice(datum.label, -${nameEnds.end})`;

/** What a row of a caterpillar plot shows, in percent. */
export interface CaterpillarRow {
  readonly standing: FleetStanding;
  readonly value: number;
  readonly interval: Pick<NonNullable<Estimate["interval"]>, "lower" | "upper"> | null;
  /** Middle of the others, where it is not the same for all. */
  readonly typical?: number;
  readonly unlike: boolean;
}

/** Rows from the largest to the smallest value, thinned where they are too many: the marked stay, and the outermost. */
export function rowsToDraw(rows: readonly CaterpillarRow[]): readonly CaterpillarRow[] {
  const sorted = rows.toSorted((a, b) => b.value - a.value);
  if (sorted.length <= mostRows) return sorted;
  const marked = sorted.filter(({ unlike }) => unlike).length;
  const eachEnd = Math.max(0, Math.floor((mostRows - marked) / 2));
  return sorted.filter(({ unlike }, i) => unlike || i < eachEnd || i >= sorted.length - eachEnd);
}

/** Both lists of meters for what is said of a picture. */
export function drawnOf(drawn: readonly CaterpillarRow[], all: readonly CaterpillarRow[]): Drawn {
  const standings = (rows: readonly CaterpillarRow[]) => rows.map(({ standing }) => standing);
  return { drawn: standings(drawn), of: standings(all) };
}

export interface Caterpillar {
  readonly title: string;
  readonly description: string;
  readonly axis: string;
  /** As they are drawn, from above. */
  readonly rows: readonly CaterpillarRow[];
  /** A row is named by its bin alone where all hold one product. */
  readonly nameOf: (standing: FleetStanding) => string;
  /** A line at this value; null: none. */
  readonly line: number | null;
  /** Confidence level of the intervals. */
  readonly level: number;
  /** Intervals of a spread are about as wide up as down in ratio. */
  readonly logarithmic: boolean;
}

/** A row for each meter, its value with its interval, the largest on top, the marked ones in another shape and colour. */
export function caterpillar(
  { title, description, axis, rows, nameOf, line, level, logarithmic }: Caterpillar,
  { format, fleet, charts }: Words,
): ChartSpec {
  const values = rows.map(({ standing, value, interval, typical, unlike }) => ({
    name: nameOf(standing),
    product: standing.product,
    fills: standing.fills,
    value: 100 * value,
    said: format.percent(value),
    lower: percent(interval?.lower),
    upper: percent(interval?.upper),
    typical: percent(typical),
    unlike,
  }));
  const axes = rowAxes(
    values.map(({ name }) => name),
    axis,
    logarithmic,
  );
  const hints = [
    { field: "name", title: fleet.chart.bin },
    { field: "said", title: axis },
    { field: "fills", title: fleet.chart.fills },
  ];
  const typical = values.filter((one) => one.typical !== null);
  const intervals = intervalLayer(values, axes, { style: "earlier" });
  return withNamedData({
    ...baseSpec({
      marks: format.marks,
      title,
      description,
      height: frameHeight + rowHeight * values.length,
    }),
    layer: [
      ...(line === null
        ? []
        : [
            {
              data: { values: [{ line: 100 * line }] },
              mark: { type: "rule", style: "reference" },
              encoding: { x: axes.x("line") },
            },
          ]),
      ...intervals,
      ...(typical.length === 0
        ? []
        : [
            {
              data: { values: typical },
              mark: { type: "tick", style: "reference", thickness: 2, size: 10 },
              encoding: { x: axes.x("typical"), y: axes.y },
            },
          ]),
      ...[false, true].flatMap((unlike) => {
        const own = values.filter((one) => one.unlike === unlike);
        // A layer without data would make the drawing complain.
        return own.length === 0
          ? []
          : [pointLayer(own, unlike ? "flagged" : "observation", axes, "value", hints)];
      }),
      ...keyLayer([
        ...meterKeys(rows, fleet.chart),
        ...keyed(
          { shape: lineShape, stroke: chartStyles.interval.color },
          charts.interval(level),
          intervals.length > 0,
        ),
        ...keyed("reference", fleet.chart.level, line !== null),
        ...keyed(
          { shape: uprightShape, stroke: chartStyles.reference.color },
          fleet.chart.typical,
          typical.length > 0,
        ),
      ]),
    ],
  });
}

/** The points of meters in a key, those that are there. */
export function meterKeys(
  meters: readonly { readonly unlike: boolean }[],
  say: Words["fleet"]["chart"],
): readonly KeyEntry[] {
  return [
    ...keyed(
      "observation",
      say.meter,
      meters.some(({ unlike }) => !unlike),
    ),
    ...keyed(
      "flagged",
      say.unlike,
      meters.some(({ unlike }) => unlike),
    ),
  ];
}

function rowAxes(names: readonly string[], title: string, logarithmic: boolean): Axes {
  const scale = logarithmic ? { type: "log", nice: false } : { zero: false };
  return {
    x: (field) => ({
      field,
      type: "quantitative",
      title,
      scale: { ...scale, padding: 12 },
      axis: { ...(logarithmic ? { format: "~g" } : {}), tickCount: 5, grid: true },
    }),
    y: {
      field: "name",
      type: "nominal",
      scale: { domain: names },
      axis: { title: null, grid: false, labelLimit: 400, labelExpr: label },
    },
  };
}

const percent = (value: number | null | undefined) => (value == null ? null : 100 * value);
