import type { Analysis, MeterAnswers } from "../analysis/analyse.ts";
import type { ProductAnswers } from "../analysis/products.ts";
import type { Words } from "../wording/words.ts";
import { details, paragraph, section } from "./blocks.ts";
import type { ReportDocument, Section } from "./document.ts";
import { questionSections } from "./question-sections.ts";
import { cautionList } from "./sections/cautions.ts";
import { howComputedSection, safetySection } from "./sections/closing.ts";
import { decisionLines } from "./sections/decision.ts";
import { explainingVariablesSection } from "./sections/explaining-variables.ts";
import { productComparisonSection } from "./sections/product-comparison.ts";
import { summarySection } from "./sections/summary.ts";
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
      {
        term: say.division,
        description: say.divisionWords(options, analysis.scaleDivision),
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

function productsSection({ comparison, explaining }: ProductAnswers, words: Words): Section {
  const cautions = [...comparison.cautions, ...explaining.cautions];
  return section(
    "products",
    words.productComparison.heading,
    cautions.length === 0 ? null : cautionList(cautions, words),
    ...productComparisonSection(comparison, words, "products"),
    section(
      "products-explaining-variables",
      words.explainingVariables.heading,
      ...explainingVariablesSection(explaining, words, "products-explaining-variables"),
    ),
  );
}
