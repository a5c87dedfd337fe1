import { basename, dirname } from "node:path";
import { importCatches } from "../data/import/import-catches.ts";
import type { ImportOptions } from "../data/import/result.ts";
import { rowsToCsv } from "../data/write-csv.ts";
import { importedJson, importedMarkdown } from "../report/imported.ts";
import { wordsFor } from "../wording/languages.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import type { Io } from "./io.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";
import { importGiven } from "./own-sheet-flags.ts";
import { filesIn, sourcesOf } from "./sources.ts";

export interface ImportFlags extends ReplaceFlags {
  readonly out: string;
  readonly language: string;
  readonly json?: boolean;
}

/** `evencatch import`: one clean file of catches from sheets as people keep them, and what was assumed beside it. */
export async function importCommand(
  paths: readonly string[],
  flags: ImportFlags,
  io: Io,
): Promise<ExitCode> {
  const words = await wordsFor(flags.language, "metric");
  const { imported: say, problems } = words;
  const { files, others } = await filesIn(paths, flags.out);
  if (others.length > 0) io.err(say.notRead(others));
  const options: ImportOptions = importGiven({ ...flags });
  const result = await importCatches(await sourcesOf(files, io), options);
  const json = importedJson(result, words);
  for (const text of problems.grouped(result.asked)) io.err(text);
  if (result.log === null) {
    if (flags.json) io.out(json.trimEnd());
    io.err(io.errColors.red(say.notYet({ questions: problems.grouped(result.asked).length })));
    return exitCodes.badInput;
  }
  const name = basename(flags.out);
  const told = `${name}.assumed.md`;
  await writeSaying(
    {
      command: "import",
      folder: dirname(flags.out),
      files: {
        [name]: rowsToCsv(result.catches),
        [told]: importedMarkdown(result, words),
        [`${name}.assumed.json`]: json,
      },
      inputs: files,
      replace: replaceOf(flags),
      standAlone: true,
    },
    words,
    io,
  );
  io.out(flags.json ? json.trimEnd() : flags.out);
  io.err(say.summary(result, flags.out));
  io.err(say.listed(`${flags.out}.assumed.md`));
  return exitCodes.fine;
}
