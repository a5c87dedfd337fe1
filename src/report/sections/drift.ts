import { driftChart } from "../../charts/drift.ts";
import { driftScoreChart } from "../../charts/drift-scores.ts";
import { noticingChart } from "../../charts/noticing.ts";
import type { Drift, DriftFill } from "../../questions/drift.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, type MaybeBlock, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";
import { smallestError } from "../smallest-error.ts";

/** Fewest fills with a score for which the charts of scores say anything. */
const fewestScores = 3;

/** Whether the meter has moved: the sentence, what to do, the fills in order, how sure that is, and the detail. */
export function driftSection(result: Drift, words: Words, id: string): readonly Block[] {
  const say = words.drift;
  const explaining = list([...say.tests(result), ...say.byName(result)]);
  return blocks(
    paragraph(say.sentence(result), "lead"),
    list(result.nextSteps.map((step) => say.step(step, result))),
    chart(id, driftChart(result, words)),
    list(say.levels(result)),
    paragraph(say.falseAlarms(result)),
    chart(`${id}-noticing`, noticingChart(result, words)),
    paragraph(say.limits(result)),
    details(
      `${id}-detail`,
      say.detail,
      fillTable(result, words, id),
      explaining === null ? null : paragraph(say.explanation),
      explaining,
      scoreChart(result, words, id),
      list(say.settling(result)),
    ),
  );
}

function scoreChart(result: Drift, words: Words, id: string): MaybeBlock {
  if (result.scoreCharts.points.length < fewestScores) return null;
  const drawn = chart(`${id}-scores`, driftScoreChart(result, words));
  return drawn === null ? null : { ...drawn, caption: words.drift.scoreChart.caption };
}

function fillTable(result: Drift, words: Words, id: string) {
  const { format, drift } = words;
  const say = drift.table;
  const size = result.toleranceLines.center;
  const error = smallestError(result.fills.map(({ estimate }) => estimate));
  return table({
    id: `${id}-fills`,
    caption: say.caption,
    rows: result.fills,
    tone: ({ fill, stretch }) =>
      stretch === null || result.differs?.fill === fill ? "attention" : null,
    columns: [
      { heading: say.fill, align: "end", cell: ({ fill }) => format.fill(fill) },
      {
        heading: say.date,
        cell: ({ takenAt }) => (takenAt === null ? "" : format.date(takenAt)),
      },
      { heading: say.catches, align: "end", cell: ({ catches }) => format.count(catches) },
      {
        heading: say.delivery(format.unit("delivery", size)),
        align: "end",
        cell: ({ estimate }) => format.number(estimate.value, "delivery", size, error),
      },
      {
        heading: say.pValue,
        align: "end",
        cell: ({ step }) => (step?.pValue == null ? "" : format.pNumber(step.pValue)),
      },
      {
        heading: say.evidence,
        align: "end",
        cell: ({ step }) =>
          step?.evidence == null || step.limit === null
            ? ""
            : `${format.fixed(step.evidence, 2)} (${format.fixed(step.limit, 2)})`,
      },
      { heading: say.remark, cell: (fill) => remarks(fill, result, words).join("; ") },
    ],
  });
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
