import { max } from "simple-statistics";
import type { Drift } from "../questions/drift.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer, uprightShape } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec, chartStyles, lineRoles } from "./theme.ts";

/**
 * How surely a lasting shift would be noticed, by its size and by the fills that show it: operating characteristic curves,
 * with a shift as large as the tolerance marked.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent; null where the
 *          chances are not known
 */
export function noticingChart(result: Drift, words: Words): ChartSpec | null {
  const { noticing, options } = result;
  if (noticing === null) return null;
  const say = words.drift.noticing;
  const { charts: key } = words;
  const curves = noticing.curves.map(({ fillsSince, points }, place) => ({
    fillsSince,
    style: lineRoles[place % lineRoles.length] ?? lineRoles[0],
    values: points.map(({ shift, chance }) => ({
      shift: 100 * shift,
      chance: 100 * chance,
      words: say.point({ shift, chance, fillsSince }),
    })),
  }));
  const furthest = max(curves.flatMap(({ values }) => values.map(({ shift }) => shift)));
  const tolerance = 100 * options.tolerance;
  const isShown = tolerance <= furthest;
  const x = (field: string) => ({
    field,
    type: "quantitative",
    title: say.shift,
    scale: { domainMin: 0, nice: false },
  });
  const y = {
    field: "chance",
    type: "quantitative",
    title: say.chance(noticing.bound),
    scale: { domain: [0, 100], nice: false },
    axis: { values: [0, 20, 40, 60, 80, 100] },
  };
  const upright = { shape: uprightShape, stroke: chartStyles.reference.color, dash: dots };
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(noticing),
    }),
    layer: [
      ...(isShown
        ? [
            {
              data: { values: [{ tolerance }] },
              mark: { type: "rule", style: "reference", strokeDash: dots },
              encoding: { x: x("tolerance") },
            },
          ]
        : []),
      ...curves.map(({ values, style }) => ({
        data: { values },
        mark: { type: "line", style, point: false },
        encoding: { x: x("shift"), y, ...sentenceHint("words") },
      })),
      ...keyLayer([
        ...curves.flatMap(({ fillsSince, style }) => keyed(style, key.afterFills(fillsSince))),
        ...keyed(upright, key.tolerance(options.tolerance), isShown),
      ]),
    ],
  });
}

const dots = [2, 3];
