import type { Analysis, MeterAnswers } from "../analysis/analyse.ts";
import type { ProductAnswers } from "../analysis/products.ts";
import type { Words } from "../wording/words.ts";
import type { Block, ReportDocument, Section } from "./document.ts";
import { acrossFillsSection, nextCatchSection } from "./sections/across-fills.ts";
import { catchesNeededSection } from "./sections/catches-needed.ts";
import { cautionList } from "./sections/cautions.ts";
import { howComputedSection, safetySection } from "./sections/closing.ts";
import { costSection } from "./sections/cost.ts";
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
  /** False when the tolerance is evencatch's default. */
  readonly toleranceGiven: boolean;
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
        description: say.toleranceWords(options.tolerance, meta.toleranceGiven),
      },
      { term: say.version, description: `evencatch ${meta.version}` },
    ],
    blocks: [
      summarySection(analysis, words),
      ...(analysis.products === null ? [] : [productsSection(analysis.products, words)]),
      ...analysis.meters.map((answers) =>
        meterSection(answers, words, `bin-${ids.get(nameOf(answers))}`),
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

function meterSection(answers: MeterAnswers, words: Words, id: string): Section {
  const suspects = answers.outliers.today.standingOut;
  const { acrossFills, catchesNeeded, cost } = answers;
  const grave = answers.cautions.filter(({ severity }) => severity !== "note");
  const notes = answers.cautions.filter(({ severity }) => severity === "note");
  return {
    kind: "section",
    id,
    heading: words.report.bin(answers.bin, answers.product),
    blocks: [
      ...(grave.length === 0 ? [] : [cautionList(grave, words)]),
      part(
        `${id}-now`,
        words.delivery.heading,
        deliverySection(answers.delivery, words, id, suspects),
      ),
      part(
        `${id}-to-set`,
        words.setting.heading,
        folded(`${id}-to-set`, settingSection(answers.setting, words, id), words),
      ),
      part(
        `${id}-enough`,
        words.catchesNeeded.heading,
        catchesNeededSection(catchesNeeded, words, id, cost),
      ),
      part(
        `${id}-curve`,
        words.acrossFills.curve.heading,
        nextCatchSection(acrossFills, words, id),
      ),
      part(`${id}-suspects`, words.outliers.heading, outliersSection(answers.outliers, words, id)),
      part(`${id}-moved`, words.drift.heading, driftSection(answers.drift, words, id)),
      part(
        `${id}-across`,
        words.acrossFills.heading,
        folded(`${id}-across`, acrossFillsSection(acrossFills, words, id), words),
      ),
      part(
        `${id}-skip`,
        words.skipping.heading,
        folded(`${id}-skip`, skippingSection(answers.skipping, words, id), words),
      ),
      part(
        `${id}-money`,
        words.cost.heading,
        folded(`${id}-money`, costSection(cost, words, id), words),
      ),
      part(
        `${id}-practice`,
        words.repeatability.heading,
        folded(`${id}-practice`, repeatabilitySection(answers.repeatability, words, id), words),
      ),
      part(
        `${id}-doubt`,
        words.uncertaintyBudget.heading,
        folded(
          `${id}-doubt`,
          uncertaintyBudgetSection(answers.uncertaintyBudget, words, id),
          words,
        ),
      ),
      ...optionalParts(answers, words, id),
      ...(notes.length === 0
        ? []
        : [
            {
              kind: "details",
              id: `${id}-notes`,
              summary: words.report.notes,
              blocks: [cautionList(notes, words)],
            } as const,
          ]),
    ],
  };
}

/** Parts that only some logs and setups have anything for. */
function optionalParts(
  { fieldCheck, speedLinearity, outlets }: MeterAnswers,
  words: Words,
  id: string,
): readonly Section[] {
  return [
    ...(fieldCheck === null
      ? []
      : [
          part(
            `${id}-field`,
            words.fieldCheck.heading,
            folded(`${id}-field`, fieldCheckSection(fieldCheck, words, id), words),
          ),
        ]),
    ...(speedLinearity === null
      ? []
      : [
          part(
            `${id}-speeds`,
            words.speedLinearity.heading,
            folded(`${id}-speeds`, speedLinearitySection(speedLinearity, words, id), words),
          ),
        ]),
    ...(outlets === null
      ? []
      : [
          part(
            `${id}-outlet`,
            words.outlets.heading,
            folded(`${id}-outlet`, outletsSection(outlets, words, id), words),
          ),
        ]),
  ];
}

function productsSection({ comparison, explaining }: ProductAnswers, words: Words): Section {
  const cautions = [...comparison.cautions, ...explaining.cautions];
  return {
    kind: "section",
    id: "products",
    heading: words.productComparison.heading,
    blocks: [
      ...(cautions.length === 0 ? [] : [cautionList(cautions, words)]),
      ...productComparisonSection(comparison, words, "products"),
      part(
        "products-explained",
        words.explainingVariables.heading,
        explainingVariablesSection(explaining, words, "products"),
      ),
    ],
  };
}

function part(id: string, heading: string, blocks: readonly Block[]): Section {
  return { kind: "section", id, heading, blocks };
}

/** The first sentence stands open; charts and figures are folded away on a screen, never on paper. */
function folded(id: string, [lead, ...rest]: readonly Block[], words: Words): readonly Block[] {
  if (lead === undefined || rest.length === 0) return lead === undefined ? [] : [lead];
  return [lead, { kind: "details", id: `${id}-more`, summary: words.report.more, blocks: rest }];
}
