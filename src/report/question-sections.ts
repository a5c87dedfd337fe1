import type { MeterAnswers } from "../analysis/analyse.ts";
import { type Question, questions } from "../results/question.ts";
import type { Words } from "../wording/words.ts";
import { details, paragraph, section } from "./blocks.ts";
import type { Block, Section } from "./document.ts";
import { acrossFillsSection } from "./sections/across-fills.ts";
import { catchesNeededSection } from "./sections/catches-needed.ts";
import { costSection } from "./sections/cost.ts";
import { deliverySection } from "./sections/delivery.ts";
import { driftSection } from "./sections/drift.ts";
import { fieldCheckSection } from "./sections/field-check.ts";
import { outletsSection } from "./sections/outlets.ts";
import { outliersSection } from "./sections/outliers.ts";
import { repeatabilitySection } from "./sections/repeatability.ts";
import { settingSection } from "./sections/setting.ts";
import { skippingSection } from "./sections/skipping.ts";
import { speedLinearitySection } from "./sections/speed-linearity.ts";
import { uncertaintyBudgetSection } from "./sections/uncertainty-budget.ts";

interface QuestionSection<Q extends Question> {
  /** open: all of it; folded: its first sentence, and the rest folded away on a screen, never on paper. */
  readonly shown: "open" | "folded";
  /** Only some logs and setups have anything for it: without an answer it is left out. */
  readonly optional?: true;
  readonly blocks: (
    answer: NonNullable<MeterAnswers[Q]>,
    words: Words,
    id: string,
    answers: MeterAnswers,
  ) => readonly Block[];
}

const sections: { readonly [Q in Question]: QuestionSection<Q> } = {
  delivery: {
    shown: "open",
    blocks: (answer, words, id, { outliers }) =>
      deliverySection(answer, words, id, outliers?.today.standingOut),
  },
  setting: { shown: "folded", blocks: settingSection },
  catchesNeeded: {
    shown: "open",
    blocks: (answer, words, id, { cost, decision }) =>
      catchesNeededSection(answer, words, id, cost, decision?.action),
  },
  outliers: { shown: "open", blocks: outliersSection },
  drift: { shown: "open", blocks: driftSection },
  acrossFills: { shown: "folded", blocks: acrossFillsSection },
  skipping: { shown: "folded", blocks: skippingSection },
  cost: {
    shown: "folded",
    blocks: (answer, words, id, { catchesNeeded, decision }) =>
      costSection(answer, words, id, catchesNeeded, decision?.action),
  },
  repeatability: { shown: "folded", blocks: repeatabilitySection },
  uncertaintyBudget: { shown: "folded", blocks: uncertaintyBudgetSection },
  fieldCheck: { shown: "folded", optional: true, blocks: fieldCheckSection },
  speedLinearity: { shown: "folded", optional: true, blocks: speedLinearitySection },
  outlets: { shown: "folded", optional: true, blocks: outletsSection },
};

/**
 * The answers about one bin and product, question by question.
 *
 * @param id  of the section about the two, with which the ids of these begin; two hyphens follow, which no slug of a name
 *            holds, so that the cost of "wheat" is never the bin's product "wheat cost"
 */
export function questionSections(
  answers: MeterAnswers,
  words: Words,
  id: string,
): readonly (Section | null)[] {
  return questions.map(({ name }) => questionSection(name, answers, words, questionId(id, name)));
}

function questionSection<Q extends Question>(
  question: Q,
  answers: MeterAnswers,
  words: Words,
  id: string,
): Section | null {
  const { shown, optional = false, blocks: blocksOf } = sections[question];
  const answer = answers[question];
  const { heading } = words[question];
  if (answer === null)
    return optional ? null : section(id, heading, paragraph(words.report.notComputed));
  const [lead = null, ...rest] = blocksOf(answer, words, id, answers);
  return shown === "open"
    ? section(id, heading, lead, ...rest)
    : section(id, heading, lead, details(`${id}-more`, words.report.more, ...rest));
}

/** Id of a question's section under the bin's, with which its charts' names begin. */
export function questionId(id: string, question: Question): string {
  return `${id}--${hyphenated(question)}`;
}

function hyphenated(question: Question): string {
  return question.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}
