import type { AcrossFillsAnswer } from "../questions/across-fills.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";

/**
 * The next-catch curve: how well a fill's delivery is known after 0, 1, 2, … catches of it, against the tolerance.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, in percent
 */
export function nextCatchChart(result: AcrossFillsAnswer, words: Words): ChartSpec {
  const { curve } = result;
  const { format } = words;
  const say = words.acrossFills.curve;
  const points = curve.points.flatMap(({ catches, halfWidth, chanceOffTolerance, basis }) =>
    halfWidth === null
      ? []
      : [
          {
            catches,
            halfWidth: halfWidth * 100,
            label: format.plusMinus(halfWidth),
            chance: chanceOffTolerance === null ? null : format.percent(chanceOffTolerance),
            basis: say.basis[basis],
          },
        ],
  );
  const x = {
    field: "catches",
    type: "quantitative",
    title: say.catches,
    scale: { domain: [-0.3, curve.points.length - 0.7], nice: false },
    // Vega thins given values to tickCount, so it must be told all of them.
    axis: {
      values: curve.points.map(({ catches }) => catches),
      tickCount: curve.points.length,
      format: "d",
    },
  };
  const y = (field: string) => ({
    field,
    type: "quantitative",
    title: say.halfWidth,
    scale: { zero: true },
  });
  // The answers people ask for; a label at every point runs together on a phone.
  const labelled = [0, 1, curve.catchesForTolerance, 4];
  const tolerance = [
    { tolerance: curve.tolerance * 100, words: say.tolerance, end: curve.points.length - 1 },
  ];
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.title(result),
      description: say.description(result),
    }),
    layer: [
      {
        data: { values: tolerance },
        mark: { type: "rule", style: "reference" },
        encoding: { y: y("tolerance") },
      },
      {
        data: { values: tolerance },
        mark: { type: "text", style: "reference-label", align: "right", dy: -7 },
        encoding: { x: { ...x, field: "end" }, y: y("tolerance"), text: { field: "words" } },
      },
      {
        data: { values: points.filter(({ catches }) => catches > 0) },
        mark: { type: "line", style: "estimate" },
        encoding: { x, y: y("halfWidth") },
      },
      {
        data: { values: points },
        mark: { type: "point", style: "observation" },
        encoding: {
          x,
          y: y("halfWidth"),
          tooltip: [
            { field: "catches", type: "quantitative", title: say.columns.catches },
            { field: "label", type: "nominal", title: say.columns.halfWidth },
            { field: "chance", type: "nominal", title: say.columns.chance },
            { field: "basis", type: "nominal", title: say.columns.basis },
          ],
        },
      },
      {
        data: { values: points.filter(({ catches }) => labelled.includes(catches)) },
        mark: { type: "text", style: "remark", dy: -13, dx: 4, align: "left" },
        encoding: { x, y: y("halfWidth"), text: { field: "label" } },
      },
    ],
  };
}
