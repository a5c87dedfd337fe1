import type { UncertaintyBudget } from "../questions/uncertainty-budget.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

const heightPerSource = 58;
const heightOfFrame = 60;
const barThickness = 14;
/** Pixels by which the words of a source stand above its bar. */
const wordsAbove = 18;

/**
 * How much each source adds to the variance of the applied rate, the largest on top: what to improve first.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent; null where the
 *          catch scatter is unknown
 */
export function uncertaintyBudgetChart(result: UncertaintyBudget, words: Words): ChartSpec | null {
  if (result.lines.length === 0) return null;
  const say = words.uncertaintyBudget;
  const values = result.lines.map((line) => ({
    source: say.source(line.source),
    share: line.share * 100,
    words: `${say.source(line.source)}: ${say.chart.label(line)}`,
    lines: [say.source(line.source), say.chart.label(line)],
  }));
  const y = { field: "source", type: "nominal", title: null, sort: null, axis: null };
  const x = {
    field: "share",
    type: "quantitative",
    title: say.chart.share,
    scale: { domain: [0, 100], nice: false },
    axis: { values: [0, 20, 40, 60, 80, 100] },
  };
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.chart.title(result),
      description: say.chart.description(result),
      height: heightOfFrame + heightPerSource * values.length,
    }),
    layer: [
      {
        data: { values },
        mark: { type: "bar", size: barThickness, yOffset: wordsAbove },
        encoding: { x, y, ...sentenceHint("words") },
      },
      {
        data: { values },
        // Above its bar, in two lines: beside names and bars a phone has no room for words.
        mark: { type: "text", style: "remark", align: "left", dy: -wordsAbove },
        encoding: { x: { value: 0 }, y, text: { field: "lines" } },
      },
    ],
  });
}
