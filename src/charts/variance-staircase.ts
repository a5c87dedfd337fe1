import type { UncertaintyBudget } from "../questions/uncertainty-budget.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec, chartStyles } from "./theme.ts";

const heightPerStep = 66;
const barThickness = 14;
/** Pixels by which the words of a step stand above its bar. */
const wordsAbove = 18;

/**
 * How the variance of the rate builds up from the scale to the field, a step a stage, and what half of each would buy, in
 * percent and in money: where the next effort belongs when the value is kept for the next fill.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in percent; null where the
 *          catch scatter is unknown
 */
export function varianceStaircaseChart(result: UncertaintyBudget, words: Words): ChartSpec | null {
  const { staircase } = result;
  if (staircase === null) return null;
  const say = words.uncertaintyBudget.staircase;
  const { charts: key } = words;
  const row = (place: string, from: number, to: number, lines: readonly string[]) => ({
    place,
    from: 100 * from,
    to: 100 * to,
    lines,
    words: lines.join("; "),
  });
  const steps = staircase.steps.map(({ stage, from, to, ...step }) =>
    row(stage, from, to, say.step({ stage, from, to, ...step }, result)),
  );
  const total = [row("total", 0, 1, say.total(staircase, result))];
  const rows = [...steps, ...total];
  const y = {
    field: "place",
    type: "nominal",
    title: null,
    axis: null,
    scale: { domain: rows.map(({ place }) => place) },
  };
  const x = (field: string) => ({
    field,
    type: "quantitative",
    title: say.share,
    scale: { domain: [0, 100], nice: false },
    axis: { values: [0, 20, 40, 60, 80, 100] },
  });
  const bars = (values: readonly object[], mark: object) => ({
    data: { values },
    mark: { type: "bar", size: barThickness, yOffset: wordsAbove, ...mark },
    encoding: { x: x("from"), x2: { field: "to" }, y, ...sentenceHint("words") },
  });
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(result, staircase),
      height: heightPerStep * rows.length,
    }),
    layer: [
      bars(
        steps.filter(({ from, to }) => to > from),
        {},
      ),
      bars(total, { style: "band" }),
      {
        data: { values: rows.map(({ place, lines }) => ({ place, lines })) },
        // Above its bar, in two lines: beside names and bars a phone has no room for words.
        mark: { type: "text", style: "remark", align: "left", dy: -wordsAbove },
        encoding: { x: { value: 0 }, y, text: { field: "lines" } },
      },
      ...keyLayer([
        ...keyed({ shape: "square", fill: chartStyles.estimate.color }, key.stage),
        ...keyed("band", key.allTogether),
      ]),
    ],
  });
}
