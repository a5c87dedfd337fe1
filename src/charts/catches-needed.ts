import { max } from "simple-statistics";
import type { CatchesNeeded } from "../questions/catches-needed.ts";
import type { Cost } from "../questions/cost.ts";
import type { Words } from "../wording/words.ts";
import { catchesCostLayers, totalsOf } from "./catches-cost.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { cheapestKey } from "./cheapest.ts";
import { hints } from "./hints.ts";
import { type KeyEntry, keyed, keyLayer, uprightShape } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec, chartStyles, stackedSpec } from "./theme.ts";

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
 * @returns     a plain Vega-Lite specification, data named once; every number is one of the results', in percent and money
 */
export function catchesNeededChart(
  result: CatchesNeeded,
  words: Words,
  cost: Cost | null = null,
): ChartSpec {
  const say = words.catchesNeeded.chart;
  const most = max([...result.curve.points.map(({ catches }) => catches), 1]);
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
    marks: words.format.marks,
    title: say.title(result),
    description: say.description(result),
  };
  const curve = (more: readonly KeyEntry[]) => ({
    height: heights.curve,
    layer: curveLayers(result, words, x, more),
  });
  if (totals.length < 2 || cost === null)
    return withNamedData({ ...baseSpec(about), ...curve([]) });
  return withNamedData(
    stackedSpec(about, [
      // One key for both views.
      curve(cost.cheapest === null ? [] : cheapestKey(words)),
      { height: heights.cost, layer: catchesCostLayers(totals, cost, words, x) },
    ]),
  );
}

function curveLayers(
  result: CatchesNeeded,
  words: Words,
  x: object,
  more: readonly KeyEntry[],
): readonly object[] {
  const say = words.catchesNeeded.chart;
  const { format, charts: key } = words;
  const tolerance = result.options.tolerance;
  const highest = tolerancesShown * tolerance * 100;
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
    half === null || isHistory || half > highest ? [] : [{ catches, halfWidth: half }],
  );
  const top =
    headroom * max([tolerance * 100, ...heightsOf([...history, ...expected, ...assured])]);
  const y = (field: string) => ({
    field,
    type: "quantitative",
    title: say.halfWidth,
    scale: { domain: [0, top], nice: false },
  });
  // Two labels side by side run together.
  const besides = expected.slice(0, 1).filter(({ catches }) => catches <= 2 && history.length > 0);
  const isHigher = besides.some(({ halfWidth }) => halfWidth > max(heightsOf(history)));
  const price = priceLayers(result, x);
  const layers = [
    toleranceLayer(tolerance, y),
    ...price,
    line(assured, "next-edge", x, y("halfWidth")),
    line(expected, "estimate", x, y("halfWidth")),
    {
      data: { values: [...history, ...expected] },
      mark: { type: "point", style: "observation" },
      encoding: {
        x,
        y: y("halfWidth"),
        ...hints([
          { field: "catches", title: say.catches },
          { field: "label", title: say.halfWidth },
          { field: "basis", title: words.catchesNeeded.curve.basis },
        ]),
      },
    },
    // Where the fill stands; labels at every point run together.
    pointLabel(history, isHigher ? belowPoint : abovePoint, x, y),
    pointLabel(
      expected.slice(0, 1),
      besides.length > 0 && !isHigher ? besidePoint : abovePoint,
      x,
      y,
    ),
  ];
  // A layer without values has no extent to scale.
  return [
    ...layers.filter(({ data }) => data.values.length > 0),
    ...keyLayer([
      ...keyed("estimate", key.expected, expected.length > 0),
      ...keyed("next-edge", key.assured(result.options.assurance), assured.length > 0),
      ...keyed("reference", key.tolerance(tolerance)),
      ...keyed(
        { shape: uprightShape, stroke: chartStyles.reference.color, dash: dots },
        key.pays,
        price.length > 0,
      ),
      ...more,
    ]),
  ];
}

function heightsOf(points: readonly { readonly halfWidth: number }[]): readonly number[] {
  return points.map(({ halfWidth }) => halfWidth);
}

const abovePoint = { dx: 4, dy: -14 };
const belowPoint = { dx: 4, dy: 16 };
const besidePoint = { dx: 9, dy: -2 };
/** Above the highest point, for its label. */
const headroom = 1.18;

function pointLabel(
  values: readonly object[],
  place: object,
  x: object,
  y: (field: string) => object,
): Layer {
  return {
    data: { values },
    mark: { type: "text", style: "remark", align: "left", ...place },
    encoding: { x, y: y("halfWidth"), text: { field: "label" } },
  };
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

function toleranceLayer(tolerance: number, y: (field: string) => object): Layer {
  return {
    data: { values: [{ tolerance: tolerance * 100 }] },
    mark: { type: "rule", style: "reference" },
    encoding: { y: y("tolerance") },
  };
}

/** Where another catch no longer pays. */
function priceLayers({ worth }: CatchesNeeded, x: object): readonly Layer[] {
  if (worth === null || worth.until === null) return [];
  return [
    {
      data: { values: [{ catches: worth.until }] },
      mark: { type: "rule", style: "reference", strokeDash: dots },
      encoding: { x },
    },
  ];
}

/** Unlike the tolerance. */
const dots = [2, 2];

interface Layer {
  readonly data: { readonly values: readonly object[] };
  readonly mark: object;
  readonly encoding: object;
}

function line(values: readonly object[], style: string, x: object, y: object): Layer {
  return { data: { values }, mark: { type: "line", style }, encoding: { x, y } };
}
