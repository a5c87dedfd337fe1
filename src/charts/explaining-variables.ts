import type { ExplainingVariables } from "../questions/explaining-variables.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";

/**
 * Delivery per turn of every fill against its bulk density, by product, with the line of equal volume per turn and the
 * band in which a product not tried yet is expected.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, in the units the words
 *          show; null when no bulk density is recorded
 */
export function densityChart(result: ExplainingVariables, words: Words): ChartSpec | null {
  const fills = result.fills.filter(({ bulkDensityKgPerM3 }) => bulkDensityKgPerM3 !== null);
  if (fills.length === 0) return null;
  const say = words.explainingVariables.chart;
  const { format } = words;
  const sizes = {
    delivery: Math.max(...fills.map(({ deliveryKgPerTurn }) => deliveryKgPerTurn)),
    density: Math.max(...fills.map(({ bulkDensityKgPerM3 }) => bulkDensityKgPerM3 ?? 0)),
  };
  const delivery = (value: number | null | undefined) =>
    value == null ? null : format.convert(value, "delivery", sizes.delivery);
  const density = (value: number | null) =>
    value === null ? null : format.convert(value, "density", sizes.density);
  const titles = {
    x: say.density(format.unit("density", sizes.density)),
    y: say.delivery(format.unit("delivery", sizes.delivery)),
  };
  const x = {
    field: "density",
    type: "quantitative",
    title: titles.x,
    scale: { zero: false, nice: false },
  };
  const y = (field: string) => ({
    field,
    type: "quantitative",
    title: titles.y,
    scale: { zero: false },
  });
  const line = result.densityLine.map((place) => ({
    density: density(place.densityKgPerM3),
    fitted: delivery(place.fittedKgPerTurn),
    lower: delivery(place.lowerKgPerTurn),
    upper: delivery(place.upperKgPerTurn),
  }));
  const points = fills.map((fill) => ({
    product: fill.product,
    fill: fill.fill,
    density: density(fill.bulkDensityKgPerM3),
    delivery: delivery(fill.deliveryKgPerTurn),
  }));
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title,
      description: say.description(result),
      height: 400,
    }),
    layer: [
      ...lineLayers(line, x, y),
      {
        data: { values: points },
        mark: { type: "point", filled: true, size: 64 },
        encoding: {
          x,
          y: y("delivery"),
          color: { field: "product", type: "nominal", title: say.product },
          shape: { field: "product", type: "nominal", title: say.product },
          tooltip: [
            { field: "product", type: "nominal", title: say.product },
            { field: "fill", type: "quantitative", title: say.fill },
            { field: "density", type: "quantitative", title: titles.x },
            { field: "delivery", type: "quantitative", title: titles.y },
          ],
        },
      },
      ...predictedLayers(result, words, { delivery, density }, x, y),
    ],
  };
}

function lineLayers(
  line: readonly { readonly lower: number | null }[],
  x: object,
  y: (field: string) => object,
): readonly object[] {
  if (line.length === 0) return [];
  const band = line.some(({ lower }) => lower !== null);
  return [
    ...(band
      ? [
          {
            data: { values: line },
            mark: { type: "area", style: "next-band" },
            encoding: { x, y: y("lower"), y2: { field: "upper" } },
          },
        ]
      : []),
    {
      data: { values: line },
      mark: { type: "line", style: "estimate" },
      encoding: { x, y: y("fitted") },
    },
  ];
}

function predictedLayers(
  { prediction }: ExplainingVariables,
  words: Words,
  shown: {
    readonly delivery: (value: number | null | undefined) => number | null;
    readonly density: (value: number | null) => number | null;
  },
  x: object,
  y: (field: string) => object,
): readonly object[] {
  if (prediction === null) return [];
  const { densityKgPerM3, proportional } = prediction;
  const values = [
    {
      density: shown.density(densityKgPerM3),
      delivery: shown.delivery(proportional.value),
      lower: shown.delivery(proportional.interval?.lower),
      upper: shown.delivery(proportional.interval?.upper),
      label: words.explainingVariables.chart.predicted,
    },
  ];
  return [
    ...(proportional.interval === null
      ? []
      : [
          {
            data: { values },
            mark: { type: "rule", style: "next-edge" },
            encoding: { x, y: y("lower"), y2: { field: "upper" } },
          },
        ]),
    {
      data: { values },
      mark: { type: "point", style: "flagged" },
      encoding: { x, y: y("delivery") },
    },
    {
      data: { values },
      mark: { type: "text", style: "remark", align: "left", dx: 10, dy: 14 },
      encoding: { x, y: y("delivery"), text: { field: "label" } },
    },
  ];
}
