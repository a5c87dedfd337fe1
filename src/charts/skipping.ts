import type { Skipping } from "../questions/skipping.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { hints } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

/**
 * How the rate error of the next fill is distributed when the drive is left alone, with the tolerance on both sides and
 * the error of the newest fill.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent; null when
 *          there is no distribution to draw
 */
export function skippingChart(result: Skipping, words: Words): ChartSpec | null {
  if (result.distribution === null) return null;
  const say = words.skipping.chart;
  const key = words.charts;
  const { tolerance } = result.options;
  const density = result.density.map(({ rateError, density: height }) => ({
    rateError: rateError * 100,
    height,
  }));
  const within = density.filter(({ rateError }) => Math.abs(rateError) <= tolerance * 100);
  const x = { field: "rateError", type: "quantitative", title: say.error };
  const y = { field: "height", type: "quantitative", axis: null };
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(result),
    }),
    layer: [
      area(density, "next-band", x, y),
      ...(within.length > 0 ? [area(within, "band", x, y)] : []),
      { data: { values: density }, mark: { type: "line", style: "estimate" }, encoding: { x, y } },
      rules(tolerance, x),
      ...todayLayers(result, words, x),
      ...keyLayer([
        ...keyed("next-band", key.skipped),
        ...keyed("band", key.within(tolerance), within.length > 0),
        ...keyed("reference", key.tolerance(tolerance)),
        ...keyed("observation", key.today, result.today !== null),
        ...keyed("interval", key.interval(result.options.level), result.today?.interval != null),
      ]),
    ],
  });
}

function area(values: readonly object[], style: string, x: object, y: object): object {
  return { data: { values }, mark: { type: "area", style }, encoding: { x, y } };
}

function rules(tolerance: number, x: object): object {
  const values = [{ rateError: -tolerance * 100 }, { rateError: tolerance * 100 }];
  return { data: { values }, mark: { type: "rule", style: "reference" }, encoding: { x } };
}

function todayLayers({ today }: Skipping, words: Words, x: object): readonly object[] {
  if (today === null) return [];
  const values = [
    {
      rateError: today.value * 100,
      lower: today.interval?.lower == null ? null : today.interval.lower * 100,
      upper: today.interval?.upper == null ? null : today.interval.upper * 100,
      label: words.format.signedPercent(today.value),
    },
  ];
  const y = { value: { expr: "height - 10" } };
  return [
    ...(today.interval === null
      ? []
      : [
          {
            data: { values },
            mark: { type: "rule", style: "interval" },
            encoding: { x: { ...x, field: "lower" }, x2: { field: "upper" }, y },
          },
        ]),
    {
      data: { values },
      mark: { type: "point", style: "observation" },
      encoding: {
        x,
        y,
        ...hints([{ field: "label", title: words.charts.today }]),
      },
    },
  ];
}
