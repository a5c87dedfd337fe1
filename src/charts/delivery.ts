import type { Delivery } from "../questions/delivery.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";

/**
 * Net mass against turns of one fill: catches, the line through zero, its confidence band, and the band for one more
 * catch.
 *
 * @param suspects  catch numbers to mark as doubted
 * @returns         a plain Vega-Lite specification, data inline; every number is one of the result's, in the units
 *                  the words show
 */
export function deliveryChart(
  result: Delivery,
  words: Words,
  suspects: readonly number[] = [],
): ChartSpec {
  const say = words.delivery.chart;
  const { format } = words;
  const longest = Math.max(...result.points.map(({ netKg }) => netKg));
  const mass = (kg: number | null) => (kg === null ? null : format.convert(kg, "mass", longest));
  const massTitle = say.mass(format.unit("mass", longest));
  const line = result.line.map((place) => ({
    turns: place.turns,
    fitted: mass(place.fittedKg),
    meanLower: mass(place.meanLowerKg),
    meanUpper: mass(place.meanUpperKg),
    nextLower: mass(place.nextLowerKg),
    nextUpper: mass(place.nextUpperKg),
  }));
  const catches = result.points.map((point) => ({
    catch: point.catch,
    turns: point.turns,
    net: mass(point.netKg),
    suspect: suspects.includes(point.catch),
  }));
  const x = { field: "turns", type: "quantitative", title: say.turns, scale: { zero: true } };
  const y = (field: string, lower?: string) => ({
    y: { field, type: "quantitative", title: massTitle, scale: { zero: true } },
    ...(lower === undefined ? {} : { y2: { field: lower } }),
  });
  const hasBands = result.estimate.interval !== null;
  return {
    ...baseSpec({ title: say.title(result), description: say.description(result) }),
    layer: [
      ...(hasBands
        ? [
            band(line, "next-band", { x, ...y("nextUpper", "nextLower") }),
            band(line, "band", { x, ...y("meanUpper", "meanLower") }),
          ]
        : []),
      {
        data: { values: line },
        mark: { type: "line", style: "estimate" },
        encoding: { x, ...y("fitted") },
      },
      ...pointLayers(catches, x, y("net"), [
        { field: "catch", type: "quantitative", title: say.catch },
        { field: "turns", type: "quantitative", title: say.turns },
        { field: "net", type: "quantitative", title: massTitle },
      ]),
    ],
  };
}

function band(values: readonly object[], style: string, encoding: object) {
  return { data: { values }, mark: { type: "area", style }, encoding };
}

function pointLayers(
  catches: readonly { readonly suspect: boolean }[],
  x: object,
  y: object,
  tooltip: readonly object[],
): readonly object[] {
  const layer = (values: readonly object[], style: string) => ({
    data: { values },
    mark: { type: "point", style },
    encoding: { x, ...y, tooltip },
  });
  const suspects = catches.filter(({ suspect }) => suspect);
  return [
    layer(
      catches.filter(({ suspect }) => !suspect),
      "observation",
    ),
    ...(suspects.length > 0 ? [layer(suspects, "flagged")] : []),
  ];
}
