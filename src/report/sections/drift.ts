import { driftChart } from "../../charts/drift.ts";
import { driftScoreChart } from "../../charts/drift-scores.ts";
import type { Drift, DriftFill } from "../../questions/drift.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Row } from "../document.ts";
import { chartBlock } from "./chart-block.ts";
import { paragraph } from "./paragraph.ts";

/** Fewest fills with a score for which the charts of scores say anything. */
const fewestScores = 3;

/** Whether the meter has moved: the sentence, what to do, the fills in order, how sure that is, and the detail. */
export function driftSection(result: Drift, words: Words, id: string): readonly Block[] {
  const say = words.drift;
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    { kind: "list", items: result.nextSteps.map((step) => say.step(step, result)) },
    chartBlock(`${id}-drift`, driftChart(result, words)),
    ...[say.power(result), say.falseAlarms(result), say.limits(result)].flatMap(paragraph),
    {
      kind: "details",
      id: `${id}-drift-detail`,
      summary: say.detail,
      blocks: [
        ...listOf(say.tests(result)),
        fillTable(result, words, id),
        ...scoreBlocks(result, words, id),
        ...listOf(say.byName(result)),
        ...listOf(say.settling(result)),
      ],
    },
  ];
}

function listOf(items: readonly string[]): readonly Block[] {
  return items.length === 0 ? [] : [{ kind: "list", items }];
}

function scoreBlocks(result: Drift, words: Words, id: string): readonly Block[] {
  if (result.scoreCharts.points.length < fewestScores) return [];
  const chart = chartBlock(`${id}-drift-scores`, driftScoreChart(result, words));
  return [{ ...chart, caption: words.drift.scoreChart.caption }];
}

function fillTable(result: Drift, words: Words, id: string): Block {
  const { format, drift } = words;
  const say = drift.table;
  const size = result.toleranceLines.center;
  const unit = format.unit("delivery", size);
  return {
    kind: "table",
    id: `${id}-drift-fills`,
    caption: say.caption,
    columns: [
      { heading: say.fill, align: "end" },
      { heading: say.date },
      { heading: say.catches, align: "end" },
      { heading: say.delivery(unit), align: "end" },
      { heading: say.expected(unit), align: "end" },
      { heading: say.pValue, align: "end" },
      { heading: say.remark },
    ],
    rows: result.fills.map((fill) => fillRow(fill, result, words)),
  };
}

function fillRow(one: DriftFill, result: Drift, words: Words): Row {
  const { format, drift } = words;
  const size = result.toleranceLines.center;
  const { estimate, asItCame, takenAt } = one;
  const number = (value: number) => format.number(value, "delivery", size, estimate.standardError);
  const band = asItCame?.interval;
  return {
    cells: [
      format.count(one.fill),
      takenAt === null ? "" : format.date(takenAt),
      format.count(one.catches),
      number(estimate.value),
      band?.lower == null || band.upper === null
        ? drift.table.notKnown
        : `${number(band.lower)} – ${number(band.upper)}`,
      asItCame === null ? "" : format.pNumber(asItCame.pValue),
      remarks(one, result, words).join("; "),
    ],
    ...(asItCame?.outside ? { tone: "attention" as const } : {}),
  };
}

function remarks({ fill, judged, asItCame }: DriftFill, result: Drift, words: Words): string[] {
  const say = words.drift.table;
  const gap = result.input.gaps.find(({ beforeFill }) => beforeFill === fill);
  return [
    asItCame?.outside ? say.outside : null,
    judged ? null : say.notJudged,
    gap === undefined || gap.missingFills === 0 ? null : say.missing(gap.missingFills),
    gap === undefined || gap.missingFills > 0 || gap.days === null ? null : say.pause(gap.days),
  ].flatMap((text) => text ?? []);
}
