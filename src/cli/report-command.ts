import { join } from "node:path";
import { allCautions } from "../analysis/all-cautions.ts";
import { type Analysis, analyse } from "../analysis/analyse.ts";
import type { ColumnNames } from "../analysis/tables/table-names.ts";
import { tidyTables } from "../analysis/tables/tidy-tables.ts";
import { type LeaveOutKey, leaveOut } from "../data/leave-out.ts";
import { readCatchesTogether } from "../data/read-together.ts";
import type { Setup } from "../data/setup.ts";
import type { CatchLog } from "../data/types.ts";
import type { DecimalMark } from "../data/write-csv.ts";
import { chaptersOf } from "../report/chapters.ts";
import { chartPictures } from "../report/chart-pictures.ts";
import type { Edition } from "../report/editions/edition.ts";
import { reportFiles } from "../report/files.ts";
import { type ReportMeta, reportDocument } from "../report/report.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import { attentionLines } from "../report/sections/fleet.ts";
import { tableFiles } from "../report/tables/table-files.ts";
import type { TableFormat } from "../report/tables/table-formats.ts";
import type { Caution, Severity } from "../results/caution.ts";
import { known } from "../results/options.ts";
import { version } from "../version.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { answerTable } from "./answer-table.ts";
import type { ChartFormat } from "./arguments.ts";
import { chartPng } from "./chart-png.ts";
import { chartRuntime } from "./chart-runtime.ts";
import { decisionText, groundText } from "./decision-text.ts";
import { type ExitCode, exitCodeOf } from "./exit-codes.ts";
import { analysisGiven } from "./flags.ts";
import {
  inputsOf,
  type LogFlags,
  libraryIn,
  librarySourceFor,
  setupIn,
  setupSourceFor,
  togetherOptions,
} from "./input.ts";
import type { Io } from "./io.ts";
import type { Files } from "./manifest.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";
import { provenanceOf } from "./provenance.ts";
import { sourcesOf } from "./sources.ts";
import { trialText } from "./trial-text.ts";

/** Flags that set no option of the analysis. */
export interface ReportFlags extends ReplaceFlags, LogFlags {
  readonly out: string;
  readonly tables?: readonly TableFormat[];
  readonly tableDecimal?: DecimalMark;
  readonly tableNames?: ColumnNames;
  readonly charts?: readonly ChartFormat[];
  readonly leaveOut?: readonly LeaveOutKey[];
  readonly bin?: readonly string[];
  readonly units: UnitSystem;
  readonly language: string;
  readonly edition: Edition;
  readonly interactive?: boolean;
  readonly json?: boolean;
  readonly failOn?: Severity;
}

/** `evencatch report`: table and sentences on stdout, the report's files in a folder. */
export async function reportCommand(
  paths: readonly string[],
  flags: ReportFlags,
  io: Io,
): Promise<ExitCode> {
  const words = await wordsFor(flags.language, flags.units);
  const sources = await sourcesOf(paths, io);
  const setupSource = await setupSourceFor(paths, flags, words, io);
  const setup = await setupIn(setupSource);
  const reading = togetherOptions(flags, paths, words, setup);
  const read = await readCatchesTogether(sources, reading);
  const log = withoutLeftOut(read, flags.leaveOut ?? [], words);
  const librarySource = await librarySourceFor(flags, setup);
  const options = { ...analysisGiven(flags), ...(await libraryIn(librarySource)) };
  const begun = performance.now();
  const analysis = analyse(log, setup, options);
  // For who asks where the time goes: bench/start.ts reads it.
  performance.measure("analysis", { start: begun });
  const bins = flags.bin ?? [];

  const meta = {
    title: setup?.title ?? null,
    setupSource: setup?.source ?? null,
    version,
    edition: flags.edition,
    bins,
    inputs: await provenanceOf({
      catches: sources,
      sheet: flags.sheet,
      setup: setupSource,
      library: librarySource,
    }),
  };
  const runtime = flags.interactive ? await chartRuntime() : null;
  const files = await reportFiles(analysis, meta, words, runtime);
  const pictures = await picturesOf(flags.charts ?? [], analysis, meta, words);
  const tables = await tablesAsked(flags, { log, analysis, setup }, meta, words);
  await writeSaying(
    {
      command: "report",
      folder: flags.out,
      files: {
        ...files,
        ...pictures,
        ...tables,
      },
      inputs: [...paths, ...inputsOf(flags, setup)],
      replace: replaceOf(flags),
    },
    words,
    io,
  );

  io.out(flags.json ? (files["report.json"] ?? "") : answers(analysis, meta, words));
  io.err(words.command.report(join(flags.out, "report.html")));
  return exitCodeOf(allCautions(analysis), flags.failOn);
}

/** Tidy tables, where any flag asks for them. */
async function tablesAsked(
  { tables: formats, tableDecimal: decimal, tableNames: names }: ReportFlags,
  { log, analysis, setup }: { log: CatchLog; analysis: Analysis; setup: Setup | null },
  { title, inputs }: ReportMeta,
  words: Words,
): Promise<Files> {
  if (formats === undefined && decimal === undefined && names === undefined) return {};
  const say = (found: Caution) => cautionSentence(found, words);
  const about = {
    title: words.report.title(title),
    version,
    sources: [...(inputs?.catches ?? []), inputs?.setup, inputs?.library].flatMap(
      (file) => file?.name ?? [],
    ),
  };
  return tableFiles(
    tidyTables(log, analysis, setup, { say }),
    about,
    words,
    known({ formats, decimal, names }),
  );
}

/** Every chart drawn in every format asked for, beside its specification. */
async function picturesOf(
  formats: readonly ChartFormat[],
  analysis: Analysis,
  meta: ReportMeta,
  words: Words,
): Promise<Files> {
  if (formats.length === 0) return {};
  const pictures: Record<string, string | Uint8Array> = {};
  for (const { name, svg } of await chartPictures(reportDocument(analysis, meta, words))) {
    if (formats.includes("svg")) pictures[`${name}.svg`] = svg;
    if (formats.includes("png")) pictures[`${name}.png`] = await chartPng(svg);
  }
  return pictures;
}

function withoutLeftOut(log: CatchLog, keys: readonly LeaveOutKey[], words: Words): CatchLog {
  return keys.length === 0 ? log : leaveOut(log, keys, words.report.leftOut.byCommand);
}

/** Of a fleet or a trial only those that have a chapter are answered one by one; of a fleet all are in the table. */
function answers(
  analysis: Analysis,
  { bins, edition }: Pick<ReportFlags, "edition"> & { readonly bins: readonly string[] },
  words: Words,
): string {
  const trial = trialText(analysis, words);
  const { fleet } = analysis;
  const chapters = chaptersOf(analysis, bins, edition);
  const together =
    fleet === undefined
      ? []
      : [
          words.fleet.counts(fleet),
          ...attentionLines(fleet, analysis, words).map((line) => `  ${line}`),
          words.fleet.falseDiscoveries(fleet),
          ...fleet.factors.compared.filter(({ differ }) => differ).map(words.fleet.factor),
          words.fleet.chapters(chapters.length, fleet),
          "",
        ];
  if (trial !== null && chapters.length === 0)
    return [trial, "", words.trial.bins, "", groundText(analysis, words)].join("\n");
  const decisions = chapters.map((one) => decisionText(one, analysis, words));
  return [
    ...(trial === null ? [] : [trial, ""]),
    ...together,
    answerTable(analysis, words),
    "",
    ...decisions,
    "",
    groundText(analysis, words),
  ].join("\n");
}
