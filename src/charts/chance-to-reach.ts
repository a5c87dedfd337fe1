import type { CatchesNeeded } from "../questions/catches-needed.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

const fewestDrawn = 2;
/** In percent; words say 100 from here on. */
const certain = 99.5;
/** More catches than this are not counted one by one on an axis. */
const mostTicks = 20;

/**
 * How likely so many catches are to reach the tolerance: the chance against their number, with the chance that is asked for.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent; null with fewer
 *          than two numbers of catches whose chance is known, and where the catches made are enough as it is
 */
export function chanceToReachChart(result: CatchesNeeded, words: Words): ChartSpec | null {
  const say = words.catchesNeeded.reach;
  const { assurance } = result.options;
  const values = result.curve.points.flatMap(({ catches, chance }) =>
    chance === null
      ? []
      : [{ catches, chance: 100 * chance, words: say.point({ catches, chance }) }],
  );
  if (values.length < fewestDrawn || values.every(({ chance }) => chance >= certain)) return null;
  const x = {
    field: "catches",
    type: "quantitative",
    title: words.catchesNeeded.chart.catches,
    scale: { zero: false, nice: false, padding: 12 },
    axis: {
      format: "d",
      // With fewer ticks than values every other value is left out.
      ...(values.length > mostTicks
        ? {}
        : { values: values.map(({ catches }) => catches), tickCount: values.length }),
    },
  };
  const y = (field: string) => ({
    field,
    type: "quantitative",
    title: say.chance,
    scale: { domain: [0, 100], nice: false },
    axis: { values: [0, 20, 40, 60, 80, 100] },
  });
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(result),
    }),
    layer: [
      {
        data: { values: [{ assurance: 100 * assurance }] },
        mark: { type: "rule", style: "reference" },
        encoding: { y: y("assurance") },
      },
      {
        data: { values },
        mark: { type: "line", style: "estimate" },
        encoding: { x, y: y("chance") },
      },
      {
        data: { values },
        mark: { type: "point", style: "observation" },
        encoding: { x, y: y("chance"), ...sentenceHint("words") },
      },
      ...keyLayer([
        ...keyed("estimate", words.charts.reaches(result.options.tolerance)),
        ...keyed("reference", words.charts.asked(assurance)),
      ]),
    ],
  });
}
