import type { Analysis, MeterAnswers } from "../../analysis/analyse.ts";
import { catchesNeededChart } from "../../charts/catches-needed.ts";
import type { ChartSpec } from "../../charts/chart-spec.ts";
import { deliveryPerTurnChart } from "../../charts/delivery.ts";
import { driftChart } from "../../charts/drift.ts";
import { type Question, questions } from "../../results/question.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, list, type MaybeBlock, paragraph, section } from "../blocks.ts";
import type { Block, Entry, Section } from "../document.ts";
import { questionId } from "../question-sections.ts";
import { decisionLines } from "../sections/decision.ts";
import { productComparisonSection } from "../sections/product-comparison.ts";
import { belowCard, mostUrgentFirst } from "../sections/summary.ts";

/** What a hand needs: the decision at each bin, a sentence for each answer, three pictures at most. */
export function shortBlocks(
  analysis: Analysis,
  words: Words,
  idOf: (answers: MeterAnswers) => string,
  origin: MaybeBlock,
): readonly MaybeBlock[] {
  const { short } = words.report;
  return [
    productsSection(analysis, words),
    ...mostUrgentFirst(analysis.meters).map((answers) =>
      meterSection(answers, analysis, words, idOf(answers)),
    ),
    section(
      "how-to-read",
      short.heading,
      paragraph(short.confidence),
      analysis.meters.some(isLentTo) ? paragraph(short.lending) : null,
      analysis.meters.some(({ skipping }) => skipping?.distribution != null)
        ? paragraph(words.skipping.noPermission)
        : null,
      paragraph(analysis.trial === undefined ? short.edition : words.trial.bins),
      ...leftOutOf(analysis, words),
    ),
    origin,
  ];
}

/** Catches that a person left out: what a report rests on is told in every edition. */
function leftOutOf({ input }: Analysis, { report }: Words): readonly MaybeBlock[] {
  if (input.leftOut.length === 0) return [];
  const { heading, item } = report.leftOut;
  return [
    paragraph([{ kind: "strong", text: heading }]),
    list(
      input.leftOut.map((row) => item(row.bin, row.fill, row.catch, row.row, row.leftOut ?? "")),
    ),
  ];
}

function isLentTo({ delivery, acrossFills }: MeterAnswers): boolean {
  return delivery.byItself !== null || acrossFills?.byItself != null;
}

function meterSection(
  answers: MeterAnswers,
  analysis: Analysis,
  words: Words,
  id: string,
): Section {
  const lines = decisionLines(answers, analysis, words);
  const { short } = words.report;
  const missing = unanswered(answers, words);
  return section(
    id,
    words.report.bin(answers.bin, answers.product),
    // How sure it is stands on the card, and so do the first reasons.
    paragraph([{ kind: "strong", text: lines.action }], "lead"),
    paragraph(words.delivery.twoLines(answers.delivery)),
    list([...belowCard(lines), lines.doNotSkip]),
    definitions(answers, words),
    ...chartsOf(answers, words, id),
    missing.length === 0 ? null : paragraph(short.unanswered(missing), "small"),
  );
}

/** An answer that is said in one sentence; what the decision has said already is not said again. */
interface ShortAnswer<Q extends Question> {
  /** Whether there is anything to say; where not, what it would take is. */
  readonly isAnswered: (answer: NonNullable<MeterAnswers[Q]>) => boolean;
  readonly sentence: (answer: NonNullable<MeterAnswers[Q]>, words: Words) => string;
  /** Left out without a word where there is nothing to say. */
  readonly silent?: true;
}

/** What is not here stands in the full edition only. */
const shortAnswers: { readonly [Q in Question]?: ShortAnswer<Q> } = {
  setting: {
    isAnswered: ({ target }) => target !== null,
    sentence: (answer, { setting }) => setting.sentence(answer),
  },
  outliers: {
    isAnswered: ({ today, disagree }) => today.standingOut.length > 0 || disagree !== null,
    sentence: (answer, { outliers }) => outliers.sentence(answer),
    silent: true,
  },
  drift: {
    isAnswered: ({ verdict }) => verdict !== "too few fills" && verdict !== "not asked",
    sentence: (answer, { drift }) => drift.sentence(answer),
  },
  acrossFills: {
    isAnswered: ({ nextFill }) => nextFill.interval !== null,
    sentence: (answer, { acrossFills }) => acrossFills.sentence(answer),
  },
  skipping: {
    isAnswered: ({ distribution }) => distribution !== null,
    sentence: (answer, { skipping }) =>
      [skipping.sentence(answer), skipping.law(answer)].filter((one) => one !== null).join(" "),
  },
  cost: {
    isAnswered: ({ cheapest }) => cheapest !== null,
    sentence: (answer, { cost }) => cost.sentence(answer),
  },
  fieldCheck: {
    isAnswered: () => true,
    sentence: (answer, { fieldCheck }) => fieldCheck.sentence(answer),
    silent: true,
  },
};

const inOrder: readonly Question[] = questions.map(({ name }) => name);

/** The sentence that answers a question; null: there is no answer, or the decision has said it. */
function sentenceOf<Q extends Question>(
  question: Q,
  answers: MeterAnswers,
  words: Words,
): string | null {
  const answer: MeterAnswers[Q] = answers[question];
  const short: ShortAnswer<Q> | undefined = shortAnswers[question];
  if (answer === null || short === undefined || !short.isAnswered(answer)) return null;
  return words.report.short.brief(short.sentence(answer, words), answers);
}

function definitions(answers: MeterAnswers, words: Words): Block | null {
  const entries = inOrder.flatMap((question): readonly Entry[] => {
    const description = sentenceOf(question, answers, words);
    return description === null ? [] : [{ term: words[question].heading, description }];
  });
  return entries.length === 0 ? null : { kind: "definitions", entries };
}

/** Questions that this log or setup cannot answer. */
function unanswered(answers: MeterAnswers, words: Words): readonly Question[] {
  return inOrder.filter((question) => {
    const short = shortAnswers[question];
    return (
      short !== undefined && short.silent !== true && sentenceOf(question, answers, words) === null
    );
  });
}

const fewestFillsDrawn = 2;
const fewestPointsDrawn = 2;

/** This fill, where its catches are in question; the fills in order of time; what the next catch buys, where one is due. */
function chartsOf(answers: MeterAnswers, words: Words, id: string): readonly MaybeBlock[] {
  const { decision, delivery, outliers, drift, catchesNeeded } = answers;
  const known = catchesNeeded?.curve.points.filter(({ halfWidth }) => halfWidth !== null) ?? [];
  const standingOut = outliers?.today.standingOut ?? [];
  const inTime = drift !== null && drift.fills.length >= fewestFillsDrawn;
  const looksAtCatches = standingOut.length > 0 || delivery.disagree !== null || !inTime;
  const isSettled = inTime && decision?.action === "set";
  return [
    looksAtCatches
      ? chart(
          `${questionId(id, "delivery")}-per-turn`,
          low(deliveryPerTurnChart(delivery, words, standingOut)),
        )
      : null,
    !inTime ? null : chart(questionId(id, "drift"), low(driftChart(drift, words))),
    catchesNeeded === null || known.length < fewestPointsDrawn || isSettled
      ? null
      : chart(questionId(id, "catchesNeeded"), low(catchesNeededChart(catchesNeeded, words, null))),
  ];
}

/** As low as still tells the points apart: on a phone every picture is a screen less far down. */
const lowHeight = 200;

function low(spec: ChartSpec): ChartSpec {
  return "vconcat" in spec ? spec : { ...spec, height: lowHeight };
}

/** The comparison's answer and its first picture; the rest stands in the full edition. A trial has opened with it. */
function productsSection({ products, trial }: Analysis, words: Words): Section | null {
  if (products === null || trial !== undefined) return null;
  const all = productComparisonSection(products.comparison, words, "products");
  const lead = all.filter(({ kind }) => kind === "paragraph").slice(0, 1);
  const picture = all.filter(({ kind }) => kind === "chart").slice(0, 1);
  return section("products", words.productComparison.heading, ...blocks(...lead, ...picture));
}
