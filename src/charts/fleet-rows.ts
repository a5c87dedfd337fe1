import type { FleetStanding } from "../analysis/fleet.ts";
import type { Estimate } from "../results/estimate.ts";
import type { Drawn } from "../wording/sayings/fleet.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { withNamedData } from "./named-data.ts";
import { type Axes, intervalLayer, pointLayer } from "./product-rows.ts";
import { baseSpec } from "./theme.ts";

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
  /** Intervals of a spread are about as wide up as down in ratio. */
  readonly logarithmic: boolean;
}

/** A row for each meter, its value with its interval, the largest on top, the marked ones in another shape and colour. */
export function caterpillar(
  { title, description, axis, rows, nameOf, line, logarithmic }: Caterpillar,
  { format, fleet }: Words,
): ChartSpec {
  const values = rows.map(({ standing, value, interval, typical, unlike }) => ({
    name: nameOf(standing),
    product: standing.product,
    fills: standing.fills,
    value: 100 * value,
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
  const tooltip = [
    { field: "name", type: "nominal", title: fleet.chart.bin },
    { field: "value", type: "quantitative", title: axis, format: ".1f" },
    { field: "fills", type: "quantitative", title: fleet.chart.fills },
  ];
  const typical = values.filter((one) => one.typical !== null);
  return withNamedData({
    ...baseSpec({
      language: format.language,
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
      ...intervalLayer(values, axes, { style: "earlier" }),
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
          : [pointLayer(own, unlike ? "flagged" : "observation", axes, "value", tooltip)];
      }),
    ],
  });
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
