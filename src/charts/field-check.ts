import { max } from "simple-statistics";
import type { CheckedField, FieldCheck } from "../questions/field-check.ts";
import type { Estimate } from "../results/estimate.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { hints } from "./hints.ts";
import { keyed, keyLayer, seriesLook } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";

type Kind = "field" | "predicted" | "intended";

const kinds: readonly Kind[] = ["field", "predicted", "intended"];

/**
 * Each field check in order: the rate found, the rate the catches let expect, both with their intervals, and the rate
 * intended.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in the units the words show
 */
export function fieldCheckChart(result: FieldCheck, words: Words): ChartSpec {
  const say = words.fieldCheck;
  const size = max(result.checks.map(({ rate }) => rate.value));
  const values = result.checks.flatMap((check, place) =>
    kinds.flatMap((kind) => pointOf(kind, check, say.named(check, place), size, words)),
  );
  const ranges = values.filter(({ lower, upper }) => lower !== null && upper !== null);
  const order = kinds.map((kind) => say.chart.kinds[kind]);
  const x = {
    field: "check",
    type: "ordinal",
    title: say.chart.check,
    sort: null,
    axis: { labelAngle: 0, labelLimit: 400 },
  };
  const rateTitle = say.chart.rate(words.format.unit("rate", size));
  const y = (field: string) => ({
    field,
    type: "quantitative",
    title: rateTitle,
    scale: { zero: false },
  });
  const xOffset = { field: "kind", type: "nominal", scale: { domain: order } };
  const series = order.flatMap((kind, i) => {
    const ofKind = values.filter((value) => value.kind === kind);
    return ofKind.length === 0 ? [] : [{ kind, ofKind, look: seriesLook(i) }];
  });
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.chart.title(result),
      description: say.chart.description(result),
    }),
    layer: [
      // Without one interval the layer would stretch the axis to infinity.
      ...(ranges.length === 0
        ? []
        : [
            {
              data: { values: ranges },
              mark: { type: "rule", style: "interval" },
              encoding: { x, xOffset, y: y("lower"), y2: { field: "upper" } },
            },
          ]),
      ...series.map(({ ofKind, look: { shape, fill: color } }) => ({
        data: { values: ofKind },
        mark: { type: "point", size: 90, shape, color },
        encoding: {
          x,
          xOffset,
          y: y("rate"),
          ...hints([
            { field: "check", title: say.chart.check },
            { field: "kind", title: say.chart.kind },
            { field: "label", title: rateTitle },
          ]),
        },
      })),
      ...keyLayer([
        ...series.flatMap(({ kind, look }) => keyed(look, kind)),
        ...keyed("interval", words.charts.interval(result.options.level), ranges.length > 0),
      ]),
    ],
  });
}

interface Plotted {
  readonly check: string;
  readonly kind: string;
  readonly rate: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
  readonly label: string;
}

function pointOf(
  kind: Kind,
  check: CheckedField,
  name: string,
  size: number,
  words: Words,
): readonly Plotted[] {
  const { format } = words;
  const estimate = rateOf(kind, check);
  if (estimate === null) return [];
  const shown = (value: number | null | undefined) =>
    value == null ? null : format.convert(value, "rate", size);
  return [
    {
      check: name,
      kind: words.fieldCheck.chart.kinds[kind],
      rate: shown(estimate.value),
      lower: shown(estimate.interval?.lower),
      upper: shown(estimate.interval?.upper),
      label: format.number(estimate.value, "rate", size, estimate.standardError),
    },
  ];
}

function rateOf(
  kind: Kind,
  { rate, predicted, intendedKgPerHa }: CheckedField,
): Pick<Estimate, "value" | "interval" | "standardError"> | null {
  if (kind === "field") return rate;
  if (kind === "predicted") return predicted?.rate ?? null;
  return intendedKgPerHa === null
    ? null
    : { value: intendedKgPerHa, interval: null, standardError: null };
}
