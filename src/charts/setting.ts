import type { Setting } from "../questions/setting.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { limitLines } from "./limit-lines.ts";
import { baseSpec } from "./theme.ts";

/**
 * What each listed step of the drive puts out, as its rate error against the target, with the tolerance on both sides and
 * the ratio needed.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, errors in percent; null
 *          where no steps are listed or no target is known
 */
export function settingChart(result: Setting, words: Words): ChartSpec | null {
  const say = words.setting;
  const { format } = words;
  const steps = result.steps.flatMap((step) =>
    step.rateError === null
      ? []
      : [
          {
            setting: step.setting,
            error: step.rateError.value * 100,
            lower: percent(step.rateError.interval?.lower),
            upper: percent(step.rateError.interval?.upper),
            label: say.rateAt(step.rate),
            words: `${say.stepName(step)}: ${format.signedPercent(step.rateError.value)}`,
          },
        ],
  );
  if (steps.length === 0) return null;
  const limit = result.options.tolerance * 100;
  const limits = [
    { limit, words: say.chart.tolerance(result.options.tolerance) },
    { limit: -limit, words: "" },
  ];
  const x = {
    field: "setting",
    type: "quantitative",
    title: say.chart.setting,
    scale: { zero: false, padding: 24 },
  };
  const y = (field: string) => ({ field, type: "quantitative", title: say.chart.error });
  return {
    ...baseSpec({
      language: words.format.language,
      title: say.chart.title(result),
      description: say.chart.description(result),
    }),
    layer: [
      ...limitLines(limits, y),
      ...neededLayers(result, words, x),
      {
        data: { values: steps },
        mark: { type: "rule" },
        encoding: { x, y: y("lower"), y2: { field: "upper" } },
      },
      {
        data: { values: steps },
        mark: { type: "point", style: "observation" },
        encoding: { x, y: y("error"), tooltip: { field: "words", type: "nominal" } },
      },
      {
        data: { values: steps },
        mark: { type: "text", style: "remark", align: "left", dx: 9, dy: 12 },
        encoding: { x, y: y("error"), text: { field: "label" } },
      },
    ],
  };
}

function neededLayers({ ratio }: Setting, words: Words, x: object): readonly object[] {
  if (ratio === null) return [];
  const data = {
    values: [{ needed: ratio.value, words: words.setting.chart.needed(ratio.value) }],
  };
  const at = { ...x, field: "needed" };
  return [
    { data, mark: { type: "rule", style: "estimate" }, encoding: { x: at } },
    {
      data,
      mark: { type: "text", style: "remark", align: "right", dx: -6, y: 8 },
      encoding: { x: at, text: { field: "words" } },
    },
  ];
}

function percent(fraction: number | null | undefined): number | null {
  return fraction == null ? null : fraction * 100;
}
