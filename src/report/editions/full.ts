import type { Analysis, MeterAnswers } from "../../analysis/analyse.ts";
import type { ProductAnswers } from "../../analysis/products.ts";
import type { Words } from "../../wording/words.ts";
import { details, type MaybeBlock, paragraph, section } from "../blocks.ts";
import type { Section } from "../document.ts";
import { questionSections } from "../question-sections.ts";
import { cautionList } from "../sections/cautions.ts";
import { howComputedSection, safetySection } from "../sections/closing.ts";
import { decisionLines } from "../sections/decision.ts";
import { explainingVariablesSection } from "../sections/explaining-variables.ts";
import { methodsSection } from "../sections/methods.ts";
import { productComparisonSection } from "../sections/product-comparison.ts";

/** Every answer in full, bin by bin; what is less often asked is folded away on a screen. */
export function fullBlocks(
  analysis: Analysis,
  words: Words,
  idOf: (answers: MeterAnswers) => string,
  origin: MaybeBlock,
  version: string,
): readonly MaybeBlock[] {
  return [
    analysis.products === null ? null : productsSection(analysis.products, analysis.trial, words),
    ...analysis.meters.map((answers) => meterSection(answers, analysis, words, idOf(answers))),
    howComputedSection(analysis, words),
    methodsSection(analysis, words, version),
    origin,
    safetySection(words),
  ];
}

function meterSection(
  answers: MeterAnswers,
  analysis: Analysis,
  words: Words,
  id: string,
): Section {
  const lines = decisionLines(answers, analysis, words);
  const grave = answers.cautions.filter(({ severity }) => severity !== "note");
  const notes = answers.cautions.filter(({ severity }) => severity === "note");
  return section(
    id,
    words.report.bin(answers.bin, answers.product),
    paragraph(
      [{ kind: "strong", text: lines.action }, lines.sure === null ? "" : ` ${lines.sure}`],
      "lead",
    ),
    grave.length === 0 ? null : cautionList(grave, words),
    ...questionSections(answers, words, id),
    notes.length === 0
      ? null
      : details(`${id}--notes`, words.report.notes, cautionList(notes, words)),
  );
}

/** A trial has opened with how its products compare: then only what explains it is left. */
function productsSection(
  { comparison, explaining }: ProductAnswers,
  trial: Analysis["trial"],
  words: Words,
): Section {
  const cautions = [...comparison.cautions, ...explaining.cautions];
  return section(
    "products",
    words.productComparison.heading,
    cautions.length === 0 ? null : cautionList(cautions, words),
    ...(trial === undefined ? productComparisonSection(comparison, words, "products") : []),
    section(
      "products-explaining-variables",
      words.explainingVariables.heading,
      ...explainingVariablesSection(explaining, words, "products-explaining-variables"),
    ),
  );
}
