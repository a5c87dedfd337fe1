import { join } from "node:path";
import { allCautions } from "../analysis/all-cautions.ts";
import { type Analysis, analyse } from "../analysis/analyse.ts";
import { tidyTables } from "../analysis/tidy-tables.ts";
import { type LeaveOutKey, leaveOut } from "../data/leave-out.ts";
import type { CatchLog } from "../data/types.ts";
import { readCatchesFile } from "../node.ts";
import { chaptersOf } from "../report/chapters.ts";
import type { Edition } from "../report/editions/edition.ts";
import { reportFiles } from "../report/files.ts";
import { attentionLines } from "../report/sections/fleet.ts";
import { tableFiles } from "../report/table-files.ts";
import type { Severity } from "../results/caution.ts";
import { version } from "../version.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { answerTable, decisionText, groundText } from "./answer-table.ts";
import { chartRuntime } from "./chart-runtime.ts";
import { type ExitCode, exitCodeOf } from "./exit-codes.ts";
import { analysisGiven } from "./flags.ts";
import { readOptions, type SetupFlags, setupFor } from "./input.ts";
import type { Io } from "./io.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";

/** Flags that set no option of the analysis. */
export interface ReportFlags extends ReplaceFlags, SetupFlags {
  readonly out: string;
  readonly tables?: boolean;
  readonly sheet?: string;
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
export async function reportCommand(path: string, flags: ReportFlags, io: Io): Promise<ExitCode> {
  const words = await wordsFor(flags.language, flags.units);
  const read = await readCatchesFile(path, readOptions(flags));
  const log = withoutLeftOut(read, flags.leaveOut ?? [], words);
  const setup = await setupFor(path, flags, words, io);
  const analysis = analyse(log, setup, analysisGiven(flags));
  const bins = flags.bin ?? [];

  const files = await reportFiles(
    analysis,
    {
      title: setup?.title ?? null,
      setupSource: setup?.source ?? null,
      version,
      edition: flags.edition,
      bins,
    },
    words,
    flags.interactive ? await chartRuntime() : null,
  );
  await writeSaying(
    {
      command: "report",
      folder: flags.out,
      files: { ...files, ...(flags.tables ? tableFiles(tidyTables(log, analysis, setup)) : {}) },
      inputs: [path, ...(setup === null ? [] : [setup.source])],
      replace: replaceOf(flags),
    },
    words,
    io,
  );

  io.out(flags.json ? (files["report.json"] ?? "") : answers(analysis, bins, words));
  io.err(words.command.report(join(flags.out, "report.html")));
  return exitCodeOf(allCautions(analysis), flags.failOn);
}

function withoutLeftOut(log: CatchLog, keys: readonly LeaveOutKey[], words: Words): CatchLog {
  return keys.length === 0 ? log : leaveOut(log, keys, words.report.leftOut.byCommand);
}

/** Of a fleet only those that have a chapter are answered one by one; all are in the table. */
function answers(analysis: Analysis, bins: readonly string[], words: Words): string {
  const { fleet } = analysis;
  const chapters = chaptersOf(analysis, bins);
  const together =
    fleet === undefined
      ? []
      : [
          words.fleet.counts(fleet),
          ...attentionLines(fleet, analysis, words).map((line) => `  ${line}`),
          words.fleet.falseDiscoveries(fleet),
          words.fleet.chapters(chapters.length, fleet),
          "",
        ];
  const decisions = chapters.map((one) => decisionText(one, analysis, words));
  return [
    ...together,
    answerTable(analysis, words),
    "",
    ...decisions,
    "",
    groundText(analysis, words),
  ].join("\n");
}
