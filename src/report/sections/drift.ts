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
  const explaining = [...say.tests(result), ...say.byName(result)];
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    { kind: "list", items: result.nextSteps.map((step) => say.step(step, result)) },
    chartBlock(`${id}-drift`, driftChart(result, words)),
    ...listOf(say.levels(result)),
    ...[say.falseAlarms(result), say.limits(result)].flatMap(paragraph),
    {
      kind: "details",
      id: `${id}-drift-detail`,
      summary: say.detail,
      blocks: [
        fillTable(result, words, id),
        ...(explaining.length === 0 ? [] : paragraph(say.explanation)),
        ...listOf(explaining),
        ...scoreBlocks(result, words, id),
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
  return {
    kind: "table",
    id: `${id}-drift-fills`,
    caption: say.caption,
    columns: [
      { heading: say.fill, align: "end" },
      { heading: say.date },
      { heading: say.catches, align: "end" },
      { heading: say.delivery(format.unit("delivery", size)), align: "end" },
      { heading: say.pValue, align: "end" },
      { heading: say.evidence, align: "end" },
      { heading: say.remark },
    ],
    rows: result.fills.map((fill) => fillRow(fill, result, words)),
  };
}

function fillRow(one: DriftFill, result: Drift, words: Words): Row {
  const { format } = words;
  const { estimate, step, takenAt } = one;
  const { value, standardError } = estimate;
  const odd = one.stretch === null || result.differs?.fill === one.fill;
  return {
    cells: [
      format.count(one.fill),
      takenAt === null ? "" : format.date(takenAt),
      format.count(one.catches),
      format.number(value, "delivery", result.toleranceLines.center, standardError),
      step?.pValue == null ? "" : format.pNumber(step.pValue),
      step?.evidence == null || step.limit === null
        ? ""
        : `${format.plain(step.evidence)} (${format.plain(step.limit)})`,
      remarks(one, result, words).join("; "),
    ],
    ...(odd ? { tone: "attention" as const } : {}),
  };
}

function remarks({ fill, stretch, step }: DriftFill, result: Drift, words: Words): string[] {
  const say = words.drift.table;
  const gap = result.input.gaps.find(({ beforeFill }) => beforeFill === fill);
  const begun = stretch === null ? undefined : result.stretches[stretch];
  return [
    step === null ? null : say.outcomes[step.outcome],
    stretch === null ? say.apart : null,
    begun?.from === fill ? say.begins[begun.begins] : null,
    gap === undefined || gap.missingFills === 0 ? null : say.missing(gap.missingFills),
    gap === undefined || gap.missingFills > 0 || gap.days === null ? null : say.pause(gap.days),
  ].flatMap((text) => text ?? []);
}
