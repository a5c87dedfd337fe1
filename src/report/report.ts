import type { Analysis, MeterAnswers } from "../analysis/analyse.ts";
import type { Words } from "../wording/words.ts";
import { blocks } from "./blocks.ts";
import { chaptersOf } from "./chapters.ts";
import type { Entry, ReportDocument } from "./document.ts";
import type { Edition } from "./editions/edition.ts";
import { fullBlocks } from "./editions/full.ts";
import { shortBlocks } from "./editions/short.ts";
import { baseName, provenance, type ReportInputs } from "./provenance.ts";
import { fleetSection } from "./sections/fleet.ts";
import { safetyStrip } from "./sections/safety-strip.ts";
import { summarySection } from "./sections/summary.ts";
import { trialSection } from "./sections/trial.ts";
import { slugs } from "./slug.ts";

/** What a report says of itself beyond the answers. */
export interface ReportMeta {
  /** Title the person gave; null: the usual one. */
  readonly title: string | null;
  /** Where the setup came from; null: none was given. */
  readonly setupSource: string | null;
  /** Version of evencatch. */
  readonly version: string;
  /** Files it was made from, with their SHA-256; null or left out: not told. */
  readonly inputs?: ReportInputs | null;
  /** Default "short". */
  readonly edition?: Edition;
  /** Bins that have a chapter in the report of a fleet or a trial though they would have none. Default none. */
  readonly bins?: readonly string[];
}

/**
 * The report of an analysis as a tree, for `renderHtml` and `renderMarkdown`.
 *
 * Holds no date of its own, so that the same catches give the same bytes. From ten meters on it opens with all of them
 * together, and has chapters only of those that need attention or are asked for; that of a trial opens with what came of it.
 *
 * @throws OptionError for a bin asked for that the catches do not name
 */
export function reportDocument(analysis: Analysis, meta: ReportMeta, words: Words): ReportDocument {
  const ids = slugs(analysis.meters.map(nameOf));
  const idOf = (answers: MeterAnswers) => `bin-${ids.get(nameOf(answers))}`;
  const { format, report } = words;
  const { edition = "short", bins = [] } = meta;
  const { fleet } = analysis;
  const chapters = chaptersOf(analysis, bins, edition);
  const shown = { ...analysis, meters: chapters };
  // Then what concerns the file as a whole stands with the trial.
  const openedByTrial = analysis.trial !== undefined && chapters.length === 0;
  return {
    title: report.title(meta.title),
    subtitle: report.subtitle(
      new Set(analysis.meters.map(({ bin }) => bin)).size,
      analysis.input.fills,
      analysis.input.catches,
    ),
    language: format.language,
    words: words.frame,
    meta: edition === "short" ? shortMeta(analysis, meta, words) : fullMeta(analysis, meta, words),
    blocks: blocks(
      safetyStrip(words),
      trialSection(shown, words),
      fleet === undefined ? null : fleetSection(fleet, analysis, words, idOf, chapters),
      openedByTrial ? null : summarySection(shown, words, edition),
      ...(edition === "short" ? shortBlocks : fullBlocks)(
        shown,
        words,
        idOf,
        provenance(analysis, meta, words),
        meta.version,
      ),
    ),
    footer: report.safety.deferral,
    hasContents: edition === "full",
  };
}

function nameOf({ bin, product }: MeterAnswers): string {
  return `${bin} ${product}`;
}

/** What was read, and what everything was held against. */
function shortMeta(
  { source, options, toleranceFrom, scaleDivision }: Analysis,
  { setupSource }: ReportMeta,
  { format, report }: Words,
): readonly Entry[] {
  const say = report.meta;
  return [
    { term: say.source, description: baseName(source) },
    ...(setupSource === null ? [] : [{ term: say.setup, description: baseName(setupSource) }]),
    { term: say.level, description: format.percent(options.level, 0) },
    {
      term: say.tolerance,
      description: say.toleranceWords(options.tolerance, toleranceFrom),
    },
    { term: say.division, description: say.divisionWords(options, scaleDivision) },
  ];
}

function fullMeta(analysis: Analysis, meta: ReportMeta, words: Words): readonly Entry[] {
  const { format, report } = words;
  const { input, options } = analysis;
  const say = report.meta;
  return [
    { term: say.source, description: baseName(analysis.source) },
    {
      term: say.setup,
      description: meta.setupSource === null ? say.none : baseName(meta.setupSource),
    },
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
  ];
}
