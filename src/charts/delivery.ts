import { max, min } from "simple-statistics";
import type { Delivery } from "../questions/delivery.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";
import { thinned } from "./thinned.ts";

interface Axes {
  readonly x: object;
  readonly y: (field: string, lower?: string) => object;
}

/**
 * Net mass against turns of one fill: catches, the line through zero, its confidence band, and the band for one more
 * catch.
 *
 * @param suspects  catch numbers to mark as doubted
 * @returns         a plain Vega-Lite specification, data named once; every number is one of the result's, in the units
 *                  the words show
 */
export function deliveryChart(
  result: Delivery,
  words: Words,
  suspects: readonly number[] = [],
): ChartSpec {
  const say = words.delivery.chart;
  const { format } = words;
  const { drawn, remark } = drawnPoints(result, words, suspects);
  const longest = max(result.points.map(({ netKg }) => netKg));
  const mass = (kg: number | null) => (kg === null ? null : format.convert(kg, "mass", longest));
  const axes = axesOf(say.turns, say.mass(format.unit("mass", longest)), true);
  const line = result.line.map((place) => ({
    turns: place.turns,
    fitted: mass(place.fittedKg),
    meanLower: mass(place.meanLowerKg),
    meanUpper: mass(place.meanUpperKg),
    nextLower: mass(place.nextLowerKg),
    nextUpper: mass(place.nextUpperKg),
  }));
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(result),
      remark,
    }),
    layer: [
      ...lineLayers(line, axes, result.estimate.interval !== null),
      ...pointLayers(drawn, (point) => mass(point.netKg), axes, words, suspects),
      ...keyOf(result, words, suspects),
    ],
  });
}

/**
 * The same, magnified: what each catch delivered per turn against its turns. A scatter of one percent cannot be seen
 * on an axis that starts at zero.
 */
export function deliveryPerTurnChart(
  result: Delivery,
  words: Words,
  suspects: readonly number[] = [],
): ChartSpec {
  const say = words.delivery.chart;
  const { format } = words;
  const { drawn, remark } = drawnPoints(result, words, suspects);
  const { value, interval } = result.estimate;
  const shown = (delivery: number | null) =>
    delivery === null ? null : format.convert(delivery, "delivery", value);
  const axes = axesOf(say.turns, say.perTurn(format.unit("delivery", value)), false);
  const shortest = min(result.points.map(({ turns }) => turns));
  const line = result.line
    .filter(({ turns }) => turns >= shortest / 2)
    .map((place) => ({
      turns: place.turns,
      fitted: shown(value),
      meanLower: shown(interval?.lower ?? null),
      meanUpper: shown(interval?.upper ?? null),
      nextLower: shown(place.nextLowerPerTurn),
      nextUpper: shown(place.nextUpperPerTurn),
    }));
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.perTurnTitle(result),
      description: say.perTurnDescription(result),
      remark,
    }),
    layer: [
      ...lineLayers(line, axes, interval !== null),
      ...pointLayers(drawn, (point) => shown(point.deliveryKgPerTurn), axes, words, suspects),
      ...keyOf(result, words, suspects),
    ],
  });
}

function keyOf(
  { points, estimate, options }: Delivery,
  { charts: key }: Words,
  suspects: readonly number[],
): readonly object[] {
  const hasBands = estimate.interval !== null;
  return keyLayer([
    ...keyed("observation", key.catch),
    ...keyed(
      "flagged",
      key.standsOut,
      points.some((point) => suspects.includes(point.catch)),
    ),
    ...keyed("estimate", key.ofFill),
    ...keyed("band", key.interval(options.level), hasBands),
    ...keyed("next-band", key.nextCatch(options.level), hasBands),
  ]);
}

function axesOf(xTitle: string, yTitle: string, zero: boolean): Axes {
  const scale = { zero, nice: true };
  return {
    x: { field: "turns", type: "quantitative", title: xTitle, scale },
    y: (field, lower) => ({
      y: { field, type: "quantitative", title: yTitle, scale },
      ...(lower === undefined ? {} : { y2: { field: lower } }),
    }),
  };
}

function lineLayers(values: readonly object[], { x, y }: Axes, hasBands: boolean) {
  const layer = (mark: object, encoding: object) => ({ data: { values }, mark, encoding });
  const bands = [
    layer({ type: "area", style: "next-band" }, { x, ...y("nextUpper", "nextLower") }),
    layer({ type: "area", style: "band" }, { x, ...y("meanUpper", "meanLower") }),
  ];
  return [
    ...(hasBands ? bands : []),
    layer({ type: "line", style: "estimate" }, { x, ...y("fitted") }),
  ];
}

function drawnPoints(result: Delivery, words: Words, suspects: readonly number[]) {
  return thinned(
    result.points,
    "catches",
    ({ deliveryKgPerTurn }) => deliveryKgPerTurn,
    (point) => suspects.includes(point.catch),
    words,
  );
}

function pointLayers(
  shown: Delivery["points"],
  height: (point: Delivery["points"][number]) => number | null,
  { x, y }: Axes,
  words: Words,
  suspects: readonly number[],
): readonly object[] {
  const say = words.delivery.chart;
  const layer = (style: string, points: readonly Delivery["points"][number][]) => ({
    data: {
      values: points.map((point) => ({
        turns: point.turns,
        height: height(point),
        words: say.catch(point),
      })),
    },
    mark: { type: "point", style },
    encoding: { x, ...y("height"), ...sentenceHint("words") },
  });
  const doubted = (point: Delivery["points"][number]) => suspects.includes(point.catch);
  const flagged = shown.filter(doubted);
  return [
    layer(
      "observation",
      shown.filter((point) => !doubted(point)),
    ),
    ...(flagged.length > 0 ? [layer("flagged", flagged)] : []),
  ];
}
