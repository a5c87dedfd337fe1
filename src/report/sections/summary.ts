import type { Analysis, MeterAnswers } from "../../analysis/analyse.ts";
import type { Words } from "../../wording/words.ts";
import { section } from "../blocks.ts";
import type { KeyFigure, Section, SpanToTolerance } from "../document.ts";
import { cautionList } from "./cautions.ts";
import { decisionLines } from "./decision.ts";

/** The first page: a card for each bin, and what concerns the file as a whole. */
export function summarySection(analysis: Analysis, words: Words): Section {
  return section(
    "summary",
    words.report.summary,
    {
      kind: "key-figures",
      label: words.report.summary,
      cards: analysis.meters.map((answers) => card(answers, analysis, words)),
    },
    analysis.cautions.length === 0 ? null : cautionList(analysis.cautions, words),
  );
}

function card(answers: MeterAnswers, analysis: Analysis, words: Words): KeyFigure {
  const { bin, product, delivery } = answers;
  const { format, report } = words;
  const { estimate, input, options } = delivery;
  const lines = decisionLines(answers, analysis, words);
  const span = spanOf(delivery, words);
  const scatter = delivery.scatterOfTypicalCatch;
  return {
    title: report.cardTitle(bin),
    subtitle: report.cardSubtitle(product, delivery.fill),
    action: { tone: lines.tone, words: lines.action },
    value: format.number(estimate.value, "delivery", estimate.value, estimate.standardError),
    unit: format.unit("delivery", estimate.value),
    interval: report.cardInterval(options.level, format.estimateInterval(estimate, "delivery")),
    ...(span === null ? {} : { span }),
    reasons: [...(lines.sure === null ? [] : [lines.sure]), ...lines.why],
    facts: [
      { term: report.cardFacts.catches, description: format.count(input.catches) },
      ...(answers.acrossFills === null
        ? []
        : [
            {
              term: report.cardFacts.fills,
              description: format.count(answers.acrossFills.points.length),
            },
          ]),
      ...(scatter === null
        ? []
        : [
            {
              term: report.cardFacts.scatter,
              description: report.cardScatter(scatter.relative, scatter.turns),
            },
          ]),
    ],
  };
}

function spanOf(
  { estimate, halfWidth, options }: MeterAnswers["delivery"],
  words: Words,
): SpanToTolerance | null {
  const { interval, value } = estimate;
  if (interval === null || halfWidth === null) return null;
  const { tolerance } = options;
  return {
    estimate: value,
    lower: interval.lower,
    upper: interval.upper,
    band: { lower: value * (1 - tolerance), upper: value * (1 + tolerance) },
    caption: words.report.cardSpan(halfWidth, tolerance),
  };
}
