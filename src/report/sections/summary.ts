import type { Analysis, MeterAnswers } from "../../analysis/analyse.ts";
import type { Verdict } from "../../analysis/verdict.ts";
import type { Words } from "../../wording/words.ts";
import type { KeyFigure, Section, Span, Tone } from "../document.ts";
import { cautionList } from "./cautions.ts";

const tones: Readonly<Record<Verdict["code"], Tone>> = {
  "check-first": "problem",
  moved: "problem",
  "known-well-enough": "fine",
  "not-yet": "attention",
  unknown: "attention",
};

/** The first page: a card for each bin, and what concerns the file as a whole. */
export function summarySection(analysis: Analysis, words: Words): Section {
  return {
    kind: "section",
    id: "summary",
    heading: words.report.summary,
    blocks: [
      {
        kind: "key-figures",
        label: words.report.summary,
        cards: analysis.meters.map((answers) => card(answers, words)),
      },
      ...(analysis.cautions.length === 0 ? [] : [cautionList(analysis.cautions, words)]),
    ],
  };
}

function card(answers: MeterAnswers, words: Words): KeyFigure {
  const { bin, product, verdict, delivery, acrossFills } = answers;
  const toSet = words.setting.brief(answers.setting);
  const { format, report } = words;
  const { estimate, input, options } = delivery;
  const interval = format.estimateInterval(estimate, "delivery");
  const span = spanOf(delivery, words);
  const scatter = delivery.scatterOfTypicalCatch;
  return {
    title: report.cardTitle(bin),
    subtitle: report.cardSubtitle(product, delivery.fill),
    value: format.number(estimate.value, "delivery", estimate.value, estimate.standardError),
    unit: format.unit("delivery", estimate.value),
    interval: report.cardInterval(options.level, interval),
    ...(span === null ? {} : { span }),
    verdict: { tone: tones[verdict.code], words: report.verdict(verdict) },
    nextStep: report.nextStep(verdict),
    facts: [
      ...(toSet === null ? [] : [{ term: report.cardFacts.toSet, description: toSet }]),
      { term: report.cardFacts.catches, description: format.count(input.catches) },
      { term: report.cardFacts.fills, description: format.count(acrossFills.fills) },
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

function spanOf({ estimate, options }: MeterAnswers["delivery"], words: Words): Span | null {
  const { interval, value } = estimate;
  if (interval === null) return null;
  const { tolerance } = options;
  const halfWidth = ((interval.upper ?? value) - value) / value;
  return {
    estimate: value,
    lower: interval.lower,
    upper: interval.upper,
    band: { lower: value * (1 - tolerance), upper: value * (1 + tolerance) },
    caption: words.report.cardSpan(halfWidth, tolerance),
  };
}
