import type { DriveSetting } from "../questions/setting.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { baseSpec } from "./theme.ts";

/**
 * What each listed step of the drive puts out, as its rate error against the target, with the tolerance on both sides and
 * the ratio needed.
 *
 * @returns a plain Vega-Lite specification, data inline; every number is one of the result's, errors in percent; null
 *          where no steps are listed or no target is known
 */
export function settingChart(result: DriveSetting, words: Words): ChartSpec | null {
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
      ...toleranceLayers(result, words, y),
      ...neededLayer(result, x),
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
        mark: { type: "text", style: "remark", align: "left", dx: 9, dy: -8 },
        encoding: { x, y: y("error"), text: { field: "label" } },
      },
    ],
  };
}

function toleranceLayers(
  { options }: DriveSetting,
  words: Words,
  y: (field: string) => object,
): readonly object[] {
  const limit = options.tolerance * 100;
  const values = [
    { limit, words: words.setting.chart.tolerance(options.tolerance) },
    { limit: -limit, words: "" },
  ];
  return [
    {
      data: { values },
      mark: { type: "rule", style: "reference" },
      encoding: { y: y("limit") },
    },
    {
      data: { values },
      mark: { type: "text", style: "reference-label", align: "left", x: 4, dy: -7 },
      encoding: { y: y("limit"), text: { field: "words" } },
    },
  ];
}

function neededLayer({ ratio }: DriveSetting, x: object): readonly object[] {
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
