import type { Analysis, MeterAnswers } from "../analysis/analyse.ts";
import type { ProductAnswers } from "../analysis/products.ts";
import type { Words } from "../wording/words.ts";
import { blocks, details, paragraph, section } from "./blocks.ts";
import type { Block, ReportDocument, Section } from "./document.ts";
import { acrossFillsSection } from "./sections/across-fills.ts";
import { catchesNeededSection } from "./sections/catches-needed.ts";
import { cautionList } from "./sections/cautions.ts";
import { howComputedSection, safetySection } from "./sections/closing.ts";
import { costSection } from "./sections/cost.ts";
import { decisionLines } from "./sections/decision.ts";
import { deliverySection } from "./sections/delivery.ts";
import { driftSection } from "./sections/drift.ts";
import { explainingVariablesSection } from "./sections/explaining-variables.ts";
import { fieldCheckSection } from "./sections/field-check.ts";
import { outletsSection } from "./sections/outlets.ts";
import { outliersSection } from "./sections/outliers.ts";
import { productComparisonSection } from "./sections/product-comparison.ts";
import { repeatabilitySection } from "./sections/repeatability.ts";
import { settingSection } from "./sections/setting.ts";
import { skippingSection } from "./sections/skipping.ts";
import { speedLinearitySection } from "./sections/speed-linearity.ts";
import { summarySection } from "./sections/summary.ts";
import { uncertaintyBudgetSection } from "./sections/uncertainty-budget.ts";
import { slugs } from "./slug.ts";

/** What a report says of itself beyond the answers. */
export interface ReportMeta {
  /** Title the person gave; null: the usual one. */
  readonly title: string | null;
  /** Where the setup came from; null: none was given. */
  readonly setupSource: string | null;
  /** Version of evencatch. */
  readonly version: string;
}

/**
 * The report of an analysis as a tree, for `renderHtml` and `renderMarkdown`.
 *
 * Holds no date of its own, so that the same catches give the same bytes.
 */
export function reportDocument(analysis: Analysis, meta: ReportMeta, words: Words): ReportDocument {
  const ids = slugs(analysis.meters.map(nameOf));
  const { format, report } = words;
  const { input, options } = analysis;
  const say = report.meta;
  return {
    title: report.title(meta.title),
    subtitle: report.subtitle(
      new Set(analysis.meters.map(({ bin }) => bin)).size,
      input.fills,
      input.catches,
    ),
    language: format.language,
    words: words.frame,
    meta: [
      { term: say.source, description: analysis.source },
      { term: say.setup, description: meta.setupSource ?? say.none },
      ...(input.period === null
        ? []
        : [
            {
              term: say.period,
              description: say.periodWords(input.period.first, input.period.last),
            },
          ]),
      { term: say.level, description: format.percent(options.level, 0) },
      {
        term: say.tolerance,
        description: say.toleranceWords(options.tolerance, analysis.toleranceFrom),
      },
      { term: say.version, description: `evencatch ${meta.version}` },
    ],
    blocks: [
      summarySection(analysis, words),
      ...(analysis.products === null ? [] : [productsSection(analysis.products, words)]),
      ...analysis.meters.map((answers) =>
        meterSection(answers, analysis, words, `bin-${ids.get(nameOf(answers))}`),
      ),
      howComputedSection(analysis, words),
      safetySection(words),
    ],
    footer: report.safety.deferral,
  };
}

function nameOf({ bin, product }: MeterAnswers): string {
  return `${bin} ${product}`;
}

function meterSection(
  answers: MeterAnswers,
  analysis: Analysis,
  words: Words,
  id: string,
): Section {
  const { delivery, setting, catchesNeeded, cost, outliers, drift } = answers;
  const lines = decisionLines(answers, analysis, words);
  const grave = answers.cautions.filter(({ severity }) => severity !== "note");
  const notes = answers.cautions.filter(({ severity }) => severity === "note");
  const open = partsOf(words, id, false);
  const closed = partsOf(words, id, true);
  return section(
    id,
    words.report.bin(answers.bin, answers.product),
    paragraph(
      [{ kind: "strong", text: lines.action }, lines.sure === null ? "" : ` ${lines.sure}`],
      "lead",
    ),
    grave.length === 0 ? null : cautionList(grave, words),
    open("now", words.delivery.heading, delivery, (answer) =>
      deliverySection(answer, words, id, outliers?.today.standingOut ?? []),
    ),
    closed("to-set", words.setting.heading, setting, (answer) => settingSection(answer, words, id)),
    open("enough", words.catchesNeeded.heading, catchesNeeded, (answer) =>
      catchesNeededSection(answer, words, id, cost),
    ),
    open("suspects", words.outliers.heading, outliers, (answer) =>
      outliersSection(answer, words, id),
    ),
    open("moved", words.drift.heading, drift, (answer) => driftSection(answer, words, id)),
    closed("across", words.acrossFills.heading, answers.acrossFills, (answer) =>
      acrossFillsSection(answer, words, id),
    ),
    closed("skip", words.skipping.heading, answers.skipping, (answer) =>
      skippingSection(answer, words, id),
    ),
    closed("money", words.cost.heading, cost, (answer) => costSection(answer, words, id)),
    closed("practice", words.repeatability.heading, answers.repeatability, (answer) =>
      repeatabilitySection(answer, words, id),
    ),
    closed("doubt", words.uncertaintyBudget.heading, answers.uncertaintyBudget, (answer) =>
      uncertaintyBudgetSection(answer, words, id),
    ),
    ...optionalParts(answers, words, id),
    notes.length === 0
      ? null
      : details(`${id}-notes`, words.report.notes, cautionList(notes, words)),
  );
}

/** Parts of a bin's section, open or folded; one whose answer could not be computed says so. */
function partsOf(words: Words, id: string, isFolded: boolean) {
  return <T>(
    name: string,
    heading: string,
    answer: T | null,
    blocksOf: (answer: T) => readonly Block[],
  ): Section => {
    const partId = `${id}-${name}`;
    if (answer === null) return section(partId, heading, paragraph(words.report.notComputed));
    const blocks = blocksOf(answer);
    return section(partId, heading, ...(isFolded ? folded(partId, blocks, words) : blocks));
  };
}

/** Parts that only some logs and setups have anything for. */
function optionalParts(
  { fieldCheck, speedLinearity, outlets }: MeterAnswers,
  words: Words,
  id: string,
): readonly Section[] {
  const closed = partsOf(words, id, true);
  return [
    ...(fieldCheck === null
      ? []
      : [
          closed("field", words.fieldCheck.heading, fieldCheck, (answer) =>
            fieldCheckSection(answer, words, id),
          ),
        ]),
    ...(speedLinearity === null
      ? []
      : [
          closed("speeds", words.speedLinearity.heading, speedLinearity, (answer) =>
            speedLinearitySection(answer, words, id),
          ),
        ]),
    ...(outlets === null
      ? []
      : [
          closed("outlet", words.outlets.heading, outlets, (answer) =>
            outletsSection(answer, words, id),
          ),
        ]),
  ];
}

function productsSection({ comparison, explaining }: ProductAnswers, words: Words): Section {
  const cautions = [...comparison.cautions, ...explaining.cautions];
  return section(
    "products",
    words.productComparison.heading,
    cautions.length === 0 ? null : cautionList(cautions, words),
    ...productComparisonSection(comparison, words, "products"),
    section(
      "products-explained",
      words.explainingVariables.heading,
      ...explainingVariablesSection(explaining, words, "products"),
    ),
  );
}

/** The first sentence stands open; charts and figures are folded away on a screen, never on paper. */
function folded(id: string, [lead, ...rest]: readonly Block[], words: Words): readonly Block[] {
  return blocks(lead ?? null, details(`${id}-more`, words.report.more, ...rest));
}
