import type { AcrossFills, FillPoint } from "../questions/across-fills.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { hints } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";
import { thinned } from "./thinned.ts";

/**
 * Every fill in order as a point with its interval, against the band in which the next fill is expected and the mean it
 * rests on; fills of an earlier level, and those that stood apart, are marked.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in the units the words
 *          show
 */
export function acrossFillsChart(result: AcrossFills, words: Words): ChartSpec {
  const say = words.acrossFills.fills;
  const { format } = words;
  const size = result.mean.value;
  const shown = (value: number | null) =>
    value === null ? null : format.convert(value, "delivery", size);
  const deliveryTitle = say.delivery(format.unit("delivery", size));
  const { drawn, remark } = thinned(
    result.points,
    "fills",
    ({ estimate }) => estimate.value,
    ({ stands }) => stands === "apart",
    words,
  );
  const fills = drawn.map(({ fill, catches, estimate, stands }) => ({
    role: roles[stands],
    fill,
    catches,
    delivery: shown(estimate.value),
    said: format.number(estimate.value, "delivery", size, estimate.standardError),
    lower: shown(estimate.interval?.lower ?? null),
    upper: shown(estimate.interval?.upper ?? null),
  }));
  const next = result.nextFill.interval;
  const key = words.charts;
  const has = (role: string) => fills.some((one) => one.role === role);
  const y = { type: "quantitative", title: deliveryTitle, scale: { zero: false } };
  const x = { field: "fill", type: "ordinal", title: say.fill, axis: { labelAngle: 0 } };
  const band = {
    values: [{ lower: shown(next?.lower ?? null), upper: shown(next?.upper ?? null) }],
  };
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.title(result),
      description: say.description(result),
      remark,
    }),
    layer: [
      ...(next === null
        ? []
        : [
            {
              data: band,
              mark: { type: "rect", style: "next-band" },
              encoding: { y: { ...y, field: "lower" }, y2: { field: "upper" } },
            },
          ]),
      {
        data: { values: [{ mean: shown(result.mean.value) }] },
        mark: { type: "rule", style: "estimate" },
        encoding: { y: { ...y, field: "mean" } },
      },
      {
        data: { values: fills },
        mark: { type: "rule", style: "interval" },
        encoding: { x, y: { ...y, field: "lower" }, y2: { field: "upper" } },
      },
      ...Object.values(roles).flatMap((role) => {
        const values = fills.filter((one) => one.role === role);
        // A layer without data would make the drawing complain.
        return values.length === 0 ? [] : [pointsOf(values, role)];
      }),
      ...keyLayer([
        ...keyed("observation", key.fill, has("observation")),
        ...keyed("earlier", key.earlier, has("earlier")),
        ...keyed("flagged", key.apart, has("flagged")),
        ...keyed("interval", key.interval(result.options.level)),
        ...keyed("estimate", key.meanOfFills),
        ...keyed("next-band", key.nextFill(result.options.level), next !== null),
      ]),
    ],
  });

  function pointsOf(values: readonly object[], role: string) {
    return {
      data: { values },
      mark: { type: "point", style: role },
      encoding: {
        x,
        y: { ...y, field: "delivery" },
        ...hints([
          { field: "fill", title: say.fill },
          { field: "said", title: deliveryTitle },
          { field: "catches", title: say.catches },
        ]),
      },
    };
  }
}

const roles: Readonly<Record<FillPoint["stands"], string>> = {
  "in force": "observation",
  "earlier level": "earlier",
  apart: "flagged",
};
