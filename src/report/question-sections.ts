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
  readonly anchor: string;
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
    anchor: "now",
    shown: "open",
    blocks: (answer, words, id, { outliers }) =>
      deliverySection(answer, words, id, outliers?.today.standingOut),
  },
  setting: { anchor: "to-set", shown: "folded", blocks: settingSection },
  catchesNeeded: {
    anchor: "enough",
    shown: "open",
    blocks: (answer, words, id, { cost }) => catchesNeededSection(answer, words, id, cost),
  },
  outliers: { anchor: "suspects", shown: "open", blocks: outliersSection },
  drift: { anchor: "moved", shown: "open", blocks: driftSection },
  acrossFills: { anchor: "across", shown: "folded", blocks: acrossFillsSection },
  skipping: { anchor: "skip", shown: "folded", blocks: skippingSection },
  cost: { anchor: "money", shown: "folded", blocks: costSection },
  repeatability: { anchor: "practice", shown: "folded", blocks: repeatabilitySection },
  uncertaintyBudget: { anchor: "doubt", shown: "folded", blocks: uncertaintyBudgetSection },
  fieldCheck: { anchor: "field", shown: "folded", optional: true, blocks: fieldCheckSection },
  speedLinearity: {
    anchor: "speeds",
    shown: "folded",
    optional: true,
    blocks: speedLinearitySection,
  },
  outlets: { anchor: "outlet", shown: "folded", optional: true, blocks: outletsSection },
};

/** The answers about one bin and product, question by question. */
export function questionSections(
  answers: MeterAnswers,
  words: Words,
  id: string,
): readonly (Section | null)[] {
  return questions.map(({ name }) => questionSection(name, answers, words, id));
}

function questionSection<Q extends Question>(
  question: Q,
  answers: MeterAnswers,
  words: Words,
  id: string,
): Section | null {
  const { anchor, shown, optional = false, blocks: blocksOf } = sections[question];
  const answer = answers[question];
  const { heading } = words[question];
  const ownId = `${id}-${anchor}`;
  if (answer === null)
    return optional ? null : section(ownId, heading, paragraph(words.report.notComputed));
  const [lead = null, ...rest] = blocksOf(answer, words, id, answers);
  return shown === "open"
    ? section(ownId, heading, lead, ...rest)
    : section(ownId, heading, lead, details(`${ownId}-more`, words.report.more, ...rest));
}
