import type { ExplainingVariables } from "../questions/explaining-variables.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";

/** Both axes, and values as they are shown along them. */
interface Axes {
  readonly titles: { readonly x: string; readonly y: string };
  readonly x: object;
  readonly y: (field: string) => object;
  readonly density: (value: number | null) => number | null;
  readonly delivery: (value: number | null | undefined) => number | null;
}

/**
 * Delivery per turn of every fill against its bulk density, by product, with the line of equal volume per turn and the
 * band in which a product not tried yet is expected.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, in the units the words
 *          show; null when no bulk density is recorded
 */
export function explainingVariablesChart(
  result: ExplainingVariables,
  words: Words,
): ChartSpec | null {
  const fills = result.fills.filter(({ bulkDensityKgPerM3 }) => bulkDensityKgPerM3 !== null);
  if (fills.length === 0) return null;
  const say = words.explainingVariables.chart;
  const axes = axesOf(fills, words);
  const values = fills.map((fill) => ({
    product: fill.product,
    fill: fill.fill,
    density: axes.density(fill.bulkDensityKgPerM3),
    delivery: axes.delivery(fill.deliveryKgPerTurn),
  }));
  const product = { field: "product", type: "nominal", title: say.product };
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title,
      description: say.description(result),
      height: 400,
    }),
    layer: [
      ...lineLayers(result, axes),
      {
        data: { values },
        mark: { type: "point", filled: true, size: 64 },
        encoding: {
          x: axes.x,
          y: axes.y("delivery"),
          color: product,
          shape: product,
          tooltip: [
            product,
            { field: "fill", type: "quantitative", title: say.fill },
            { field: "density", type: "quantitative", title: axes.titles.x },
            { field: "delivery", type: "quantitative", title: axes.titles.y },
          ],
        },
      },
      ...predictionLayers(result, words, axes),
    ],
  };
}

function axesOf(fills: ExplainingVariables["fills"], { format, explainingVariables }: Words): Axes {
  const say = explainingVariables.chart;
  const heaviest = Math.max(...fills.map(({ deliveryKgPerTurn }) => deliveryKgPerTurn));
  const densest = Math.max(...fills.map(({ bulkDensityKgPerM3 }) => bulkDensityKgPerM3 ?? 0));
  const titles = {
    x: say.density(format.unit("density", densest)),
    y: say.delivery(format.unit("delivery", heaviest)),
  };
  return {
    titles,
    x: {
      field: "density",
      type: "quantitative",
      title: titles.x,
      scale: { zero: false, nice: false },
    },
    y: (field) => ({
      field,
      type: "quantitative",
      title: titles.y,
      scale: { zero: false },
    }),
    density: (value) => (value === null ? null : format.convert(value, "density", densest)),
    delivery: (value) => (value == null ? null : format.convert(value, "delivery", heaviest)),
  };
}

function lineLayers(
  { densityLine }: ExplainingVariables,
  { x, y, density, delivery }: Axes,
): readonly object[] {
  if (densityLine.length === 0) return [];
  const values = densityLine.map((place) => ({
    density: density(place.densityKgPerM3),
    fitted: delivery(place.fittedKgPerTurn),
    lower: delivery(place.lowerKgPerTurn),
    upper: delivery(place.upperKgPerTurn),
  }));
  const band = {
    data: { values },
    mark: { type: "area", style: "next-band" },
    encoding: { x, y: y("lower"), y2: { field: "upper" } },
  };
  return [
    ...(values.some(({ lower }) => lower !== null) ? [band] : []),
    {
      data: { values },
      mark: { type: "line", style: "estimate" },
      encoding: { x, y: y("fitted") },
    },
  ];
}

function predictionLayers(
  { prediction }: ExplainingVariables,
  words: Words,
  { x, y, density, delivery }: Axes,
): readonly object[] {
  if (prediction === null) return [];
  const { value, interval } = prediction.proportional;
  const values = [
    {
      density: density(prediction.densityKgPerM3),
      delivery: delivery(value),
      lower: delivery(interval?.lower),
      upper: delivery(interval?.upper),
      label: words.explainingVariables.chart.predicted,
    },
  ];
  const layer = (mark: object, encoding: object) => ({
    data: { values },
    mark,
    encoding: { x, ...encoding },
  });
  const limits = { y: y("lower"), y2: { field: "upper" } };
  const at = { y: y("delivery") };
  return [
    ...(interval === null ? [] : [layer({ type: "rule", style: "next-edge" }, limits)]),
    layer({ type: "point", style: "flagged" }, at),
    layer(
      { type: "text", style: "remark", align: "left", dx: 10, dy: 14 },
      { ...at, text: { field: "label" } },
    ),
  ];
}
