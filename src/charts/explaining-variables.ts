import { max } from "simple-statistics";
import type { ExplainingVariables } from "../questions/explaining-variables.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { hints } from "./hints.ts";
import { keyed, keyLayer, seriesLook } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

/** Both axes, and values as they are shown along them. */
interface Axes {
  readonly titles: { readonly x: string; readonly y: string };
  readonly x: object;
  readonly y: (field: string) => object;
  readonly density: (value: number | null) => number | null;
  readonly delivery: (value: number | null | undefined) => number | null;
  readonly densityWords: (value: number | null) => string;
  readonly deliveryWords: (value: number) => string;
}

/**
 * Delivery per turn of every fill against its bulk density, by product, with the line of equal volume per turn and the
 * band in which a product not tried yet is expected.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in the units the words
 *          show; null when no bulk density is recorded
 */
export function explainingVariablesChart(
  result: ExplainingVariables,
  words: Words,
): ChartSpec | null {
  const fills = result.fills.filter(({ bulkDensityKgPerM3 }) => bulkDensityKgPerM3 !== null);
  if (fills.length === 0) return null;
  const say = words.explainingVariables.chart;
  const key = words.charts;
  const { level } = result.options;
  const axes = axesOf(fills, words);
  const values = fills.map((fill) => ({
    product: fill.product,
    fill: fill.fill,
    density: axes.density(fill.bulkDensityKgPerM3),
    delivery: axes.delivery(fill.deliveryKgPerTurn),
    densityWords: axes.densityWords(fill.bulkDensityKgPerM3),
    deliveryWords: axes.deliveryWords(fill.deliveryKgPerTurn),
  }));
  const products = [...new Set(values.map(({ product }) => product))];
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title,
      description: say.description(result),
      height: 400,
    }),
    layer: [
      ...lineLayers(result, axes),
      ...products.map((product, i) => {
        const { shape, fill: color } = seriesLook(i);
        return {
          data: { values: values.filter((one) => one.product === product) },
          mark: { type: "point", size: 64, shape, color },
          encoding: {
            x: axes.x,
            y: axes.y("delivery"),
            ...hints([
              { field: "product", title: say.product },
              { field: "fill", title: say.fill },
              { field: "densityWords", title: axes.titles.x },
              { field: "deliveryWords", title: axes.titles.y },
            ]),
          },
        };
      }),
      ...predictionLayers(result, axes),
      ...keyLayer([
        ...products.flatMap((product, i) => keyed(seriesLook(i), product)),
        ...keyed("estimate", key.equalVolume, result.densityLine.length > 0),
        ...keyed("next-band", key.newProduct(level), hasBand(result)),
        ...keyed("flagged", key.atDensity, result.prediction !== null),
        ...keyed(
          "next-edge",
          key.interval(level),
          result.prediction !== null && result.prediction.proportional.interval !== null,
        ),
      ]),
    ],
  });
}

function hasBand({ densityLine }: ExplainingVariables): boolean {
  return densityLine.some(({ lowerKgPerTurn }) => lowerKgPerTurn !== null);
}

function axesOf(fills: ExplainingVariables["fills"], { format, explainingVariables }: Words): Axes {
  const say = explainingVariables.chart;
  const heaviest = max(fills.map(({ deliveryKgPerTurn }) => deliveryKgPerTurn));
  const densest = max(fills.map(({ bulkDensityKgPerM3 }) => bulkDensityKgPerM3 ?? 0));
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
    densityWords: (value) => (value === null ? "" : format.number(value, "density", densest)),
    deliveryWords: (value) => format.number(value, "delivery", heaviest),
  };
}

function lineLayers(
  result: ExplainingVariables,
  { x, y, density, delivery }: Axes,
): readonly object[] {
  if (result.densityLine.length === 0) return [];
  const values = result.densityLine.map((place) => ({
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
    ...(hasBand(result) ? [band] : []),
    {
      data: { values },
      mark: { type: "line", style: "estimate" },
      encoding: { x, y: y("fitted") },
    },
  ];
}

function predictionLayers(
  { prediction }: ExplainingVariables,
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
    },
  ];
  const layer = (mark: object, encoding: object) => ({
    data: { values },
    mark,
    encoding: { x, ...encoding },
  });
  const limits = { y: y("lower"), y2: { field: "upper" } };
  return [
    ...(interval === null ? [] : [layer({ type: "rule", style: "next-edge" }, limits)]),
    layer({ type: "point", style: "flagged", aria: false }, { y: y("delivery") }),
  ];
}
