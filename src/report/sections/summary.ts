import type { Analysis, MeterAnswers } from "../../analysis/analyse.ts";
import type { Action } from "../../analysis/decision.ts";
import type { Words } from "../../wording/words.ts";
import { section } from "../blocks.ts";
import type { KeyFigure, Section, SpanToTolerance } from "../document.ts";
import type { Edition } from "../editions/edition.ts";
import { cautionList } from "./cautions.ts";
import { type DecisionLines, decisionLines } from "./decision.ts";

/** The first page: a card for each bin, the most urgent first, and what concerns the file as a whole. */
export function summarySection(analysis: Analysis, words: Words, edition: Edition): Section {
  return section(
    "summary",
    words.report.summary,
    {
      kind: "key-figures",
      label: words.report.summary,
      cards: mostUrgentFirst(analysis.meters).map((answers) =>
        card(answers, analysis, words, edition),
      ),
    },
    analysis.cautions.length === 0 ? null : cautionList(analysis.cautions, words),
  );
}

const urgency: readonly (Action | null)[] = ["look-first", "catch-more", "set", null];

export function mostUrgentFirst(meters: readonly MeterAnswers[]): readonly MeterAnswers[] {
  const place = ({ decision }: MeterAnswers) => urgency.indexOf(decision?.action ?? null);
  return meters.toSorted((a, b) => place(a) - place(b));
}

function card(
  answers: MeterAnswers,
  analysis: Analysis,
  words: Words,
  edition: Edition,
): KeyFigure {
  const { bin, product, delivery } = answers;
  const { format, report } = words;
  const { estimate, input, options } = delivery;
  const lines = decisionLines(answers, analysis, words);
  const span = spanOf(delivery, words);
  const scatter = delivery.scatterOfTypicalCatch;
  const reasons = reasonsOf(lines);
  const inFull = {
    ...(span === null ? {} : { span }),
    reasons,
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
  return {
    title: report.cardTitle(bin),
    subtitle: report.cardSubtitle(product, delivery.fill),
    action: { tone: lines.tone, words: lines.action },
    value: format.number(estimate.value, "delivery", estimate.value, estimate.standardError),
    unit: format.unit("delivery", estimate.value),
    interval: report.cardInterval(options.level, format.estimateInterval(estimate, "delivery")),
    ...(edition === "full" ? inFull : { reasons: reasons.slice(0, mostReasons) }),
  };
}

const mostReasons = 2;

/** Reasons that a card of the short edition has no room for; they stand at their bin. */
export function belowCard(lines: DecisionLines): readonly string[] {
  return reasonsOf(lines).slice(mostReasons);
}

function reasonsOf({ sure, why }: DecisionLines): readonly string[] {
  return sure === null ? why : [sure, ...why];
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
