import type { CatchesNeeded } from "../questions/catches-needed.ts";
import type { Cost } from "../questions/cost.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec, composedSpec } from "./theme.ts";

const width = 590;
const heights = { curve: 230, cost: 130 } as const;
/** Wider intervals than this many tolerances leave the picture: nobody decides by them. */
const tolerancesShown = 4;
/** More catches than this are not counted one by one on an axis. */
const mostTicks = 200;

/**
 * What each catch buys on one picture: half-width against catches with the tolerance and the number from which on another
 * no longer pays, and below it, on the same axis of catches, what so many catches of every fill cost.
 *
 * @param cost  of the same bin and product; null, or without prices: the curve alone
 * @returns     a plain Vega-Lite specification, data inline; every number is one of the results', in percent and money
 */
export function catchesNeededChart(
  result: CatchesNeeded,
  words: Words,
  cost: Cost | null = null,
): ChartSpec {
  const say = words.catchesNeeded.chart;
  const most = Math.max(...result.curve.points.map(({ catches }) => catches), 1);
  const x = {
    field: "catches",
    type: "quantitative",
    title: say.catches,
    scale: { domain: [-0.3, most + 0.3], nice: false },
    // With fewer ticks than values every other value is left out.
    axis:
      most > mostTicks
        ? { format: "d" }
        : {
            values: Array.from({ length: most + 1 }, (_, i) => i),
            format: "d",
            tickCount: most + 1,
          },
  };
  const totals = cost === null ? [] : totalsOf(cost, words, most);
  const about = {
    language: words.format.language,
    title: say.title(result),
    description: say.description(result),
  };
  const curve = { height: heights.curve, layer: curveLayers(result, most, words, x) };
  // A single view can be drawn as narrow as a phone.
  if (totals.length < 2 || cost === null) return { ...baseSpec(about), ...curve };
  return {
    ...composedSpec(about),
    vconcat: [
      { width, ...curve },
      { width, height: heights.cost, layer: costLayers(totals, cost, words, x) },
    ],
  };
}

function curveLayers(
  result: CatchesNeeded,
  most: number,
  words: Words,
  x: object,
): readonly object[] {
  const say = words.catchesNeeded.chart;
  const { format } = words;
  const tolerance = result.options.tolerance;
  const highest = tolerancesShown * tolerance * 100;
  const y = (field: string) => ({
    field,
    type: "quantitative",
    title: say.halfWidth,
    scale: { domainMin: 0 },
  });
  const points = result.curve.points.flatMap(({ catches, halfWidth, halfWidthAssured, basis }) =>
    halfWidth === null
      ? []
      : [
          {
            catches,
            halfWidth: halfWidth * 100,
            assured: halfWidthAssured === null ? null : halfWidthAssured * 100,
            label: format.plusMinus(halfWidth),
            basis: say[basis],
            isHistory: basis === "earlier fills",
          },
        ],
  );
  const history = points.filter(({ isHistory }) => isHistory).map(drawn);
  const expected = points
    .filter(({ isHistory, halfWidth }) => !isHistory && halfWidth <= highest)
    .map(drawn);
  const assured = points.flatMap(({ catches, assured: half, isHistory }) =>
    half === null || isHistory || half > highest
      ? []
      : [{ catches, halfWidth: half, basis: say.assured(result.options.assurance) }],
  );
  const layers = [
    ...toleranceLayers(tolerance, most, words, x, y),
    ...priceLayers(result, most, words, x),
    line(assured, "next-edge", x, y("halfWidth")),
    line(expected, "estimate", x, y("halfWidth")),
    {
      // One place names the dashed line: its end, where the lines lie apart from the labels of the first points.
      data: { values: assured.slice(-1) },
      mark: { type: "text", style: "remark", dy: 14, align: "right" },
      encoding: { x, y: y("halfWidth"), text: { field: "basis" } },
    },
    {
      data: { values: [...history, ...expected] },
      mark: { type: "point", style: "observation" },
      encoding: {
        x,
        y: y("halfWidth"),
        tooltip: [
          { field: "catches", type: "quantitative", title: say.catches },
          { field: "label", type: "nominal", title: say.halfWidth },
          { field: "basis", type: "nominal", title: words.catchesNeeded.curve.basis },
        ],
      },
    },
    {
      // Where the fill stands; labels at every point run together.
      data: { values: [...history, ...expected.slice(0, 1)] },
      mark: { type: "text", style: "remark", dx: 4, dy: -14, align: "left" },
      encoding: { x, y: y("halfWidth"), text: { field: "label" } },
    },
  ];
  // A layer without values has no extent to scale.
  return layers.filter(({ data }) => data.values.length > 0);
}

function drawn({
  catches,
  halfWidth,
  label,
  basis,
}: {
  readonly catches: number;
  readonly halfWidth: number;
  readonly label: string;
  readonly basis: string;
}) {
  return { catches, halfWidth, label, basis };
}

function toleranceLayers(
  tolerance: number,
  most: number,
  words: Words,
  x: object,
  y: (field: string) => object,
): readonly Layer[] {
  const values = [
    { tolerance: tolerance * 100, words: words.catchesNeeded.chart.tolerance, catches: most },
  ];
  return [
    {
      data: { values },
      mark: { type: "rule", style: "reference" },
      encoding: { y: y("tolerance") },
    },
    {
      data: { values },
      mark: { type: "text", style: "reference-label", align: "right", dy: -8 },
      encoding: { x, y: y("tolerance"), text: { field: "words" } },
    },
  ];
}

/** Where another catch no longer pays. */
function priceLayers(
  { worth }: CatchesNeeded,
  most: number,
  words: Words,
  x: object,
): readonly Layer[] {
  if (worth === null || worth.until === null) return [];
  const values = [{ catches: worth.until, words: words.catchesNeeded.chart.pays }];
  // To the side with more room.
  const beside = worth.until > most / 2 ? { align: "right", dx: -6 } : { align: "left", dx: 6 };
  return [
    { data: { values }, mark: { type: "rule", style: "reference" }, encoding: { x } },
    {
      data: { values },
      mark: { type: "text", style: "reference-label", ...beside },
      encoding: { x, y: { value: heights.curve - 10 }, text: { field: "words" } },
    },
  ];
}

interface Layer {
  readonly data: { readonly values: readonly object[] };
  readonly mark: object;
  readonly encoding: object;
}

interface Total {
  readonly catches: number;
  readonly total: number;
  readonly label: string;
}

function totalsOf(cost: Cost, words: Words, most: number): readonly Total[] {
  const perArea = words.format.convert(1, "area", 1);
  return cost.points.flatMap(({ catches, totalPerHectare }) =>
    totalPerHectare === null || catches > most
      ? []
      : [
          {
            catches,
            total: totalPerHectare / perArea,
            label: words.cost.perArea(totalPerHectare, cost),
          },
        ],
  );
}

function costLayers(
  totals: readonly Total[],
  cost: Cost,
  words: Words,
  x: object,
): readonly object[] {
  const say = words.cost.chart;
  const y = {
    field: "total",
    type: "quantitative",
    title: say.cost(cost),
    scale: { zero: true },
  };
  const least = totals.filter(({ catches }) => catches === cost.cheapest?.catches);
  const tooltip = [
    { field: "catches", type: "quantitative", title: say.catches },
    { field: "label", type: "nominal", title: say.cost(cost) },
  ];
  return [
    line(totals, "estimate", x, y),
    {
      data: { values: totals },
      mark: { type: "point", style: "observation" },
      encoding: { x, y, tooltip },
    },
    {
      data: { values: least.map((one) => ({ ...one, words: say.cheapest })) },
      mark: { type: "text", style: "remark", dy: -14 },
      encoding: { x, y, text: { field: "words" } },
    },
  ];
}

function line(values: readonly object[], style: string, x: object, y: object): Layer {
  return { data: { values }, mark: { type: "line", style }, encoding: { x, y } };
}
