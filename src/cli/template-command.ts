import { join } from "node:path";
import { catchSheetFiles, emptyCatchSheet } from "../report/sheets.ts";
import { templateFiles } from "../report/template.ts";
import { wordsFor } from "../wording/languages.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import type { Io } from "./io.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";

export interface TemplateFlags extends ReplaceFlags {
  readonly language: string;
}

/** `evencatch template`: an empty catch sheet to type into and one to print, a setup to fill in, and what the columns mean. */
export async function templateCommand(
  folder: string,
  flags: TemplateFlags,
  io: Io,
): Promise<ExitCode> {
  const words = await wordsFor(flags.language, "metric");
  const files = {
    ...templateFiles(words),
    ...catchSheetFiles(emptyCatchSheet([], null, words), words),
  };
  const replace = replaceOf(flags);
  await writeSaying({ command: "template", folder, files, inputs: [], replace }, words, io);
  for (const name of Object.keys(files)) io.out(join(folder, name));
  return exitCodes.fine;
}
