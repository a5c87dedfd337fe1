import type { Analysis } from "../../analysis/analyse.ts";
import { productEstimatesChart } from "../../charts/product-comparison.ts";
import { productContrastsChart } from "../../charts/product-contrasts.ts";
import { productStandingsChart } from "../../charts/product-standings.ts";
import type { ProductComparison } from "../../questions/product-comparison/result.ts";
import { everyVerdict } from "../../wording/sayings/product-comparison.ts";
import type { Words } from "../../wording/words.ts";
import { chart, list, type MaybeBlock, paragraph, section } from "../blocks.ts";
import type { Section } from "../document.ts";
import { cautionList, cautionSentence } from "./cautions.ts";
import { productFigures } from "./product-comparison.ts";

const id = "trial";

/** What came of a trial in words: every surface takes its lines from here. */
export interface TrialLines {
  /** What was compared, in which blocks. */
  readonly lead: string;
  /** In which order, against what, and how far it is. */
  readonly plan: string;
  /** What its catches are doubted for. */
  readonly toSettle: readonly string[];
  /** Every pair under what it came out as. */
  readonly outcomes: readonly { readonly heading: string; readonly pairs: readonly string[] }[];
  /** Within which margin products are equivalent, and how pairs are judged. */
  readonly ground: readonly string[];
  /** What to read before relying on the comparison. */
  readonly doubts: readonly string[];
}

/** Null where the log is no planned trial. */
export function trialLines({ trial, products }: Analysis, words: Words): TrialLines | null {
  if (trial === undefined || products === null) return null;
  const { comparison } = products;
  const say = words.trial;
  const outcomes = everyVerdict.flatMap((verdict) => {
    const pairs = comparison.contrasts.filter((one) => one.verdict === verdict);
    if (pairs.length === 0) return [];
    return {
      heading: say.outcome(verdict, pairs.length, comparison),
      pairs: pairs.map((pair) => words.productComparison.contrast(pair, comparison)),
    };
  });
  return {
    lead:
      outcomes.length === 0
        ? `${say.sentence(comparison)} ${words.productComparison.sentence(comparison)}`
        : say.sentence(comparison),
    plan: say.plan(trial, comparison),
    toSettle: [...new Set(trial.toSettle.map((found) => cautionSentence(found, words)))],
    outcomes,
    ground: [say.margin(comparison), say.judged(comparison)].filter((line) => line !== null),
    doubts: doubtsAbout(comparison).map((found) => cautionSentence(found, words)),
  };
}

function doubtsAbout({ cautions }: ProductComparison) {
  return cautions.filter(({ severity }) => severity !== "note");
}

/**
 * A planned trial: what was compared in which blocks, what is to be settled first, how every pair came out and within
 * which margin, the pictures, and the figures. Null where the log is none.
 *
 * @param analysis  with the meters that have a chapter; without any, what concerns the file is told here
 */
export function trialSection(analysis: Analysis, words: Words): Section | null {
  const { trial, products } = analysis;
  const lines = trialLines(analysis, words);
  if (lines === null || trial === undefined || products === null) return null;
  const { comparison } = products;
  const ofFile = analysis.meters.length === 0 ? analysis.cautions : [];
  const told = [...doubtsAbout(comparison), ...ofFile];
  return section(
    id,
    words.trial.heading,
    paragraph(lines.lead, "lead"),
    paragraph(lines.plan),
    ...(trial.toSettle.length === 0
      ? []
      : [strong(words.trial.toSettle), cautionList(trial.toSettle, words)]),
    ...lines.outcomes.flatMap(({ heading, pairs }) => [strong(heading), list(pairs)]),
    ...lines.ground.map((line) => paragraph(line)),
    told.length === 0 ? null : cautionList(told, words),
    ...pictures(comparison, words),
    paragraph(words.productComparison.pooled(comparison), "small"),
    paragraph(words.productComparison.scatterSentence(comparison)),
    productFigures(comparison, words, id, words.trial.detail),
  );
}

function strong(text: string): MaybeBlock {
  return paragraph([{ kind: "strong", text }]);
}

/** Products beside one another, then the pairs; lines to be compared by eye only where that tells what the pairs tell. */
function pictures(comparison: ProductComparison, words: Words): readonly MaybeBlock[] {
  const say = words.productComparison.charts.contrasts;
  const standings = productStandingsChart(comparison, words);
  return [
    chart(`${id}-products`, standings ?? productEstimatesChart(comparison, words)),
    paragraph(
      standings === null ? words.trial.ownIntervals : words.trial.overlap(comparison),
      "small",
    ),
    chart(`${id}-contrasts`, productContrastsChart(comparison, words)),
    paragraph(say.lines(comparison), "small"),
  ];
}
