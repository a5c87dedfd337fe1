import type { Fleet, FleetStanding } from "../analysis/fleet.ts";
import type { Funnel, FunnelPoint } from "../questions/fleet/result.ts";
import type { SpreadKind } from "../wording/sayings/fleet.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { type CaterpillarRow, caterpillar, drawnOf, meterKeys, rowsToDraw } from "./fleet-rows.ts";
import { hints } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

/**
 * Caterpillar plot of what meters deliver of one product: each in percent of the level of the others, with the interval of its
 * mean. Of more than sixty those are drawn that are unlike the others, and the outermost, which its description says.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent; null where the
 *          product has no level
 */
export function fleetDeliveryChart(
  { meters, options }: Fleet,
  product: string,
  words: Words,
): ChartSpec | null {
  const all = meters.flatMap((standing): readonly CaterpillarRow[] => {
    const { delivery } = standing;
    if (delivery === null || standing.product !== product) return [];
    const { ratio, unlike } = delivery;
    return [{ standing, value: ratio.value, interval: ratio.interval, unlike: unlike !== null }];
  });
  if (all.length === 0) return null;
  const rows = rowsToDraw(all);
  const say = words.fleet;
  return caterpillar(
    {
      title: say.ratio.title(product),
      description: say.ratio.description(drawnOf(rows, all), product),
      axis: say.chart.ratio,
      rows,
      nameOf: ({ bin }) => bin,
      line: 1,
      level: options.level,
      logarithmic: false,
    },
    words,
  );
}

/**
 * Caterpillar plot of how much the catches of each meter scatter, or how much its fills differ, with a tick at the middle of
 * the others. Logarithmic, because intervals of a standard deviation are about as wide up as down in ratio.
 *
 * @param product  meters of this product alone; null: of all
 * @returns        as `fleetDeliveryChart`; null where no meter can tell
 */
export function fleetSpreadChart(
  { meters, options }: Fleet,
  kind: SpreadKind,
  product: string | null,
  words: Words,
): ChartSpec | null {
  const all = meters.flatMap((standing): readonly CaterpillarRow[] => {
    const own = standing[kind];
    if (own === null || (product !== null && standing.product !== product)) return [];
    const { relative, interval, typical, unlike } = own;
    return [{ standing, value: relative, interval, typical, unlike: unlike !== null }];
  });
  if (all.length === 0) return null;
  const rows = rowsToDraw(all);
  const say = words.fleet.spread;
  return caterpillar(
    {
      title: say.title(kind, product),
      description: say.description(kind, drawnOf(rows, all)),
      axis: say.axis(kind, options.turns),
      rows,
      nameOf: product === null ? words.fleet.brief : ({ bin }: FleetStanding) => bin,
      line: null,
      level: options.level,
      logarithmic: true,
    },
    words,
  );
}

const funnelHeight = 380;

/**
 * Every meter's delivery, in percent of the level of the others with its product, over the turns it was caught with, between
 * the limits within which 95 % and 99.8 % of meters lie that are alike.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent; null where there
 *          are no limits
 */
export function fleetFunnelChart(fleet: Fleet, words: Words): ChartSpec | null {
  const { funnel, meters } = fleet;
  if (funnel === null) return null;
  const say = words.fleet;
  const x = {
    field: "turns",
    type: "quantitative",
    title: say.chart.turns,
    scale: { type: "log", nice: false, padding: 14 },
    axis: { format: "~g", tickCount: 6 },
  };
  const y = (field: string) => ({
    field,
    type: "quantitative",
    title: say.chart.ratio,
    scale: { zero: false },
  });
  const points = meters.flatMap(({ bin, product, turns, delivery }) =>
    delivery === null
      ? []
      : [
          {
            bin,
            product,
            turns,
            ratio: 100 * delivery.ratio.value,
            turnsSaid: words.format.plain(turns),
            said: words.format.percent(delivery.ratio.value),
            unlike: delivery.unlike !== null,
          },
        ],
  );
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.funnel.title,
      description: say.funnel.description(fleet, funnel),
      height: funnelHeight,
    }),
    layer: [
      {
        data: { values: [{ ratio: 100 }] },
        mark: { type: "rule", style: "estimate" },
        encoding: { y: y("ratio") },
      },
      ...limitLayers(funnel, x, y),
      ...[false, true].flatMap((unlike) => {
        const values = points.filter((one) => one.unlike === unlike);
        // A layer without data would make the drawing complain.
        return values.length === 0
          ? []
          : [
              {
                data: { values },
                mark: { type: "point", style: unlike ? "flagged" : "observation" },
                encoding: {
                  x,
                  y: y("ratio"),
                  ...hints([
                    { field: "bin", title: say.chart.bin },
                    { field: "product", title: say.table.product },
                    { field: "turnsSaid", title: say.chart.turns },
                    { field: "said", title: say.chart.ratio },
                  ]),
                },
              },
            ];
      }),
      ...keyLayer([
        ...meterKeys(points, say.chart),
        ...keyed("estimate", say.chart.level),
        ...keyed(limits.inner.style, say.chart.limits.inner),
        ...keyed(limits.outer.style, say.chart.limits.outer),
      ]),
    ],
  });
}

/** How the pairs of lines are drawn, and where they lie. */
const limits = {
  inner: {
    style: "next-edge",
    ends: ({ lower95, upper95 }: FunnelPoint) => ({ lower: 100 * lower95, upper: 100 * upper95 }),
  },
  outer: {
    style: "reference",
    ends: ({ lower998, upper998 }: FunnelPoint) => ({
      lower: 100 * lower998,
      upper: 100 * upper998,
    }),
  },
} as const;

function limitLayers(
  { points }: Funnel,
  x: object,
  y: (field: string) => object,
): readonly object[] {
  return Object.values(limits).flatMap(({ style, ends }) => {
    const values = points.map((point) => ({ turns: point.turns, ...ends(point) }));
    return ["lower", "upper"].map((end) => ({
      data: { values },
      mark: { type: "line", style },
      encoding: { x, y: y(end) },
    }));
  });
}
