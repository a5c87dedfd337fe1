import type {
  CatchJudgement,
  FamilyJudgement,
  Influence,
  Outliers,
} from "../questions/outliers.ts";
import type { Words } from "../wording/words.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { hints, sentenceHint } from "./hints.ts";
import { keyed, keyLayer } from "./key.ts";
import { withNamedData } from "./named-data.ts";
import { baseSpec } from "./theme.ts";
import { thinned } from "./thinned.ts";

/** Distances are drawn nearly in proportion up to this many standard errors; a slipped decimal mark stays on the page. */
const nearlyLinear = 6;
const rowHeight = 26;
const frameHeight = 110;

/**
 * How far every catch lies from what the others of its fill predict, in standard errors, with the limits of its fill and
 * of the whole log.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's; null when no catch could
 *          be judged
 */
export function residualsChart(result: Outliers, words: Words): ChartSpec | null {
  const say = words.outliers.chart;
  const all = result.catches.filter(({ statistic }) => statistic !== null);
  if (all.length === 0) return null;
  const { drawn: judged, remark } = thinned(
    all,
    "catches",
    ({ statistic }) => statistic,
    ({ family }) => family !== null,
    words,
  );
  const axes = {
    x: {
      x: { field: "fill", type: "ordinal", title: say.fill, axis: { labelAngle: 0 } },
      xOffset: { field: "catch", type: "ordinal" },
    },
    y: {
      type: "quantitative",
      title: words.charts.logScaleFarOut(say.statistic),
      scale: { type: "symlog", constant: nearlyLinear },
    },
  };
  const flagged = judged.filter(({ family }) => family !== null);
  const key = words.charts;
  const unflagged = judged.filter(({ family }) => family === null);
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.residualTitle(result),
      description: say.residualDescription(result),
      remark,
    }),
    layer: [
      limitLayer("next-band", judged, ({ inLog }) => inLog, axes),
      limitLayer("band", judged, ({ inFill }) => inFill, axes),
      residualLayer("observation", unflagged, axes, words),
      ...(flagged.length > 0 ? [residualLayer("flagged", flagged, axes, words)] : []),
      ...keyLayer([
        ...keyed("observation", key.catch),
        ...keyed("flagged", key.standsOut, flagged.length > 0),
        ...keyed("band", key.limitOfFill),
        ...keyed("next-band", key.limitOfLog),
      ]),
    ],
  });
}

interface ResidualAxes {
  readonly x: object;
  readonly y: object;
}

function limitLayer(
  style: string,
  judged: readonly CatchJudgement[],
  family: (one: CatchJudgement) => FamilyJudgement | null,
  { x, y }: ResidualAxes,
): object {
  const values = judged.flatMap((one) => {
    const limit = family(one)?.criticalValue;
    if (limit === undefined) return [];
    return [{ fill: one.fill, catch: one.catch, lower: -limit, upper: limit }];
  });
  return {
    data: { values },
    mark: { type: "bar", style, aria: false },
    encoding: { ...x, y: { ...y, field: "lower" }, y2: { field: "upper" } },
  };
}

function residualLayer(
  style: string,
  shown: readonly CatchJudgement[],
  { x, y }: ResidualAxes,
  words: Words,
): object {
  const values = shown.map((one) => ({
    fill: one.fill,
    catch: one.catch,
    statistic: one.statistic,
    words: words.outliers.chart.point(one),
  }));
  return {
    data: { values },
    mark: { type: "point", style },
    encoding: {
      ...x,
      y: { ...y, field: "statistic" },
      ...sentenceHint("words"),
    },
  };
}

/**
 * The delivery of the newest fill with all its catches, and without each of them in turn.
 *
 * @returns a plain Vega-Lite specification, data named once; every number is one of the result's, in the units the words
 *          show; null when the fill has one catch
 */
export function influenceChart(result: Outliers, words: Words): ChartSpec | null {
  const [first] = result.influence;
  if (first === undefined) return null;
  const say = words.outliers.chart;
  const key = words.charts;
  const size = first.now.value;
  const shown = (value: number | null | undefined) =>
    value == null ? null : words.format.convert(value, "delivery", size);
  const rowOf = (label: string, { value, interval, standardError }: Influence["now"]) => ({
    label,
    said: words.format.number(value, "delivery", size, standardError),
    delivery: shown(value),
    lower: shown(interval?.lower),
    upper: shown(interval?.upper),
  });
  const whole = rowOf(say.all, first.now);
  const rows = result.influence.map((one) => ({
    ...rowOf(say.without(one.catch), one.without),
    stands: result.today.standingOut.includes(one.catch),
  }));
  return withNamedData({
    ...baseSpec({
      marks: words.format.marks,
      title: say.influenceTitle(result),
      description: say.influenceDescription(result),
      remark: influencesShown(result, words),
      height: frameHeight + rowHeight * (rows.length + 1),
    }),
    layer: [
      ...influenceLayers(whole, rows, say, say.delivery(words.format.unit("delivery", size))),
      ...keyLayer([
        ...keyed("observation", key.ofFill),
        ...keyed(
          "flagged",
          key.withoutStandingOut,
          rows.some(({ stands }) => stands),
        ),
        ...keyed("interval", key.interval(result.options.level)),
        ...keyed("estimate", key.allCatches),
      ]),
    ],
  });
}

/** The sentence that says that only the catches that change most are shown; null: all are. */
export function influencesShown({ influence, today }: Outliers, words: Words): string | null {
  const { format, frame } = words;
  return influence.length < today.catches && influence.length > 0
    ? frame.thinned.influences(format.count(influence.length), format.count(today.catches))
    : null;
}

interface InfluenceRow {
  readonly label: string;
  readonly said: string;
  readonly delivery: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
  readonly stands?: boolean;
}

function influenceLayers(
  whole: InfluenceRow,
  rows: readonly InfluenceRow[],
  say: Words["outliers"]["chart"],
  title: string,
): readonly object[] {
  const all = [whole, ...rows];
  const y = { field: "label", type: "nominal", title: null, sort: all.map(({ label }) => label) };
  const x = (field: string) => ({ field, type: "quantitative", title, scale: { zero: false } });
  const layer = (values: readonly InfluenceRow[], mark: object, encoding: object) => ({
    data: { values },
    mark,
    encoding,
  });
  const point = (style: string, values: readonly InfluenceRow[]) =>
    layer(values, { type: "point", style }, { y, x: x("delivery"), ...said });
  const said = hints([
    { field: "label", title: say.catches },
    { field: "said", title },
  ]);
  const flagged = rows.filter(({ stands }) => stands);
  return [
    layer([whole], { type: "rule", style: "estimate" }, { x: x("delivery") }),
    layer(
      all.filter(({ lower }) => lower !== null),
      { type: "rule", style: "interval" },
      { y, x: x("lower"), x2: { field: "upper" } },
    ),
    point(
      "observation",
      all.filter(({ stands }) => !stands),
    ),
    ...(flagged.length > 0 ? [point("flagged", flagged)] : []),
  ];
}
