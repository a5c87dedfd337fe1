import type { Setting } from "../questions/setting.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { limitLines } from "./limit-lines.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

/**
 * What each listed step of the drive puts out, as its rate error against the target, with the tolerance on both sides and
 * the ratio needed.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, errors in percent; null
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
  const key = words.charts;
  const x = {
    field: "setting",
    type: "quantitative",
    title: say.chart.setting,
    scale: { zero: false, padding: 24 },
  };
  const y = (field: string) => ({ field, type: "quantitative", title: say.chart.error });
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.chart.title(result),
      description: say.chart.description(result),
    }),
    layer: [
      ...limitLines([-limit, limit], y),
      ...neededLayers(result, x),
      {
        data: { values: steps },
        mark: { type: "rule", style: "interval" },
        encoding: { x, y: y("lower"), y2: { field: "upper" } },
      },
      {
        data: { values: steps },
        mark: { type: "point", style: "observation" },
        encoding: { x, y: y("error"), ...sentenceHint("words") },
      },
      {
        data: { values: steps },
        mark: { type: "text", style: "remark", align: "left", dx: 9, dy: 12 },
        encoding: { x, y: y("error"), text: { field: "label" } },
      },
      ...keyLayer([
        ...keyed("observation", key.step),
        ...keyed("interval", key.interval(result.options.level)),
        ...(result.ratio === null
          ? []
          : keyed("estimate", key.needed(say.chart.ratio(result.ratio.value)))),
        ...keyed("reference", key.tolerance(result.options.tolerance)),
      ]),
    ],
  });
}

function neededLayers({ ratio }: Setting, x: object): readonly object[] {
  if (ratio === null) return [];
  return [
    {
      data: { values: [{ needed: ratio.value }] },
      mark: { type: "rule", style: "estimate" },
      encoding: { x: { ...x, field: "needed" } },
    },
  ];
}

function percent(fraction: number | null | undefined): number | null {
  return fraction == null ? null : fraction * 100;
}
