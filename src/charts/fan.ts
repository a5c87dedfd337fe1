import type { AcrossFills } from "../questions/across-fills.ts";
import type { Delivery } from "../questions/delivery.ts";
import type { Drift } from "../questions/drift.ts";
import type { Interval } from "../results/estimate.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { sentenceHint } from "./hints.ts";
import { keyed, keyLayer, uprightShape } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec, type ChartRole, chartStyles } from "./theme.ts";

/** Narrowest band first, as in the results; the narrower a band, the thicker its bar. */
const bands = [
  { style: "fan-narrow", size: 26 },
  { style: "fan-middle", size: 18 },
  { style: "fan-wide", size: 10 },
] as const satisfies readonly { readonly style: ChartRole; readonly size: number }[];

const heightPerRow = 74;
/** Pixels by which the words of a row stand above its bars. */
const wordsAbove = 24;

interface Row {
  readonly name: string;
  readonly value: number;
  readonly fan: readonly Interval[];
  readonly words: string;
}

/**
 * Where the next fill and one more catch of this fill will lie: each as a fan of three bands, half of the cases in the
 * innermost, against what the drive's setting bears.
 *
 * @param delivery  of the newest fill; null: the next fill alone
 * @param drift     for the tolerance about the level in force; null: without
 * @returns         a plain Vega-Lite specification, data named once; every number is one of the results', in the units the
 *                  words show; null where neither has a band
 */
export function fanChart(
  result: AcrossFills,
  words: Words,
  delivery: Delivery | null = null,
  drift: Pick<Drift, "toleranceLines" | "options"> | null = null,
): ChartSpec | null {
  const { format, charts: key } = words;
  const say = words.acrossFills.fan;
  const size = result.mean.value;
  const shown = (value: number | null) =>
    value === null ? null : format.convert(value, "delivery", size);
  const rows = rowsOf(result, delivery, words);
  if (rows.length === 0) return null;
  const y = { field: "name", type: "nominal", title: null, sort: null, axis: null };
  const x = (field: string) => ({
    field,
    type: "quantitative",
    title: say.delivery(format.unit("delivery", size)),
    scale: { zero: false },
    axis: { tickCount: 5 },
  });
  const lines = drift === null ? [] : [drift.toleranceLines.lower, drift.toleranceLines.upper];
  const center = { shape: uprightShape, stroke: chartStyles.estimate.color };
  const limit = { shape: uprightShape, stroke: chartStyles.reference.color };
  return withNamedData({
    ...baseSpec({
      marks: format.marks,
      title: say.title(result),
      description: say.description(rows.map((row) => row.words)),
      height: heightPerRow * rows.length,
    }),
    layer: [
      ...[...bands.entries()].reverse().map(([place, { style, size }]) => ({
        data: {
          values: rows.flatMap(({ name, fan, words }) => {
            const { lower = null, upper = null } = fan[place] ?? {};
            return [{ name, words, lower: shown(lower), upper: shown(upper) }];
          }),
        },
        mark: { type: "bar", style, size },
        encoding: { x: x("lower"), x2: { field: "upper" }, y, ...sentenceHint("words") },
      })),
      {
        data: { values: rows.map(({ name, value }) => ({ name, value: shown(value) })) },
        mark: { type: "tick", style: "estimate", thickness: 2, size: 34 },
        encoding: { x: x("value"), y },
      },
      {
        data: { values: rows.map(({ name }) => ({ name })) },
        mark: { type: "text", style: "remark", align: "left", dy: -wordsAbove },
        encoding: { x: { value: 0 }, y, text: { field: "name" } },
      },
      ...(lines.length === 0
        ? []
        : [
            {
              data: {
                values: rows.flatMap(({ name }) =>
                  lines.map((limit) => ({ name, limit: shown(limit) })),
                ),
              },
              // Beside the bars only: a line all the way would run through the words above them.
              mark: { type: "tick", style: "reference", thickness: 2, size: 34 },
              encoding: { x: x("limit"), y },
            },
          ]),
      ...keyLayer([
        ...keyed(center, key.expected),
        ...[...bands.entries()].flatMap(([place, { style }]) => {
          const level = rows[0]?.fan[place]?.level;
          return level === undefined ? [] : keyed(style, key.ofCases(level));
        }),
        ...(drift === null ? [] : keyed(limit, key.tolerance(drift.options.tolerance))),
      ]),
    ],
  });
}

function rowsOf(result: AcrossFills, delivery: Delivery | null, words: Words): readonly Row[] {
  const say = words.acrossFills.fan;
  const row = (
    name: string,
    value: number,
    fan: readonly Interval[],
    inFull = name,
  ): readonly Row[] => {
    const [widest] = fan.slice(-1);
    return widest === undefined
      ? []
      : [{ name, value, fan, words: say.row(inFull, widest, result.mean.value) }];
  };
  return [
    ...row(say.nextFill, result.nextFill.value, result.fan),
    ...(delivery === null
      ? []
      : row(
          say.nextCatch(delivery),
          delivery.estimate.value,
          delivery.nextCatch.fan,
          say.nextCatchInFull(delivery),
        )),
  ];
}
