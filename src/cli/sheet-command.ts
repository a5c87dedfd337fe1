import { join } from "node:path";
import { analyse } from "../analysis/analyse.ts";
import { readCatchesFile, readSetupFile } from "../node.ts";
import { catchSheetFiles, emptyCatchSheet, sheetFiles } from "../report/sheets.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { inputsOf, type LogFlags, optionsFor, readOptions, setupFor } from "./input.ts";
import type { Io } from "./io.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";

/** Flags that set no option of the analysis. */
export interface SheetFlags extends ReplaceFlags, LogFlags {
  readonly out: string;
  readonly units: UnitSystem;
  readonly language: string;
}

/** `evencatch sheet`: sheets to print, one for the cab where there are catches, and one to fill in at the drill. */
export async function sheetCommand(
  path: string | undefined,
  flags: SheetFlags,
  io: Io,
): Promise<ExitCode> {
  const words = await wordsFor(flags.language, flags.units);
  const { files, inputs } =
    path === undefined ? await blank(flags, words) : await ofLog(path, flags, words, io);
  const replace = replaceOf(flags);
  await writeSaying({ command: "sheet", folder: flags.out, files, inputs, replace }, words, io);
  for (const name of Object.keys(files)) io.out(join(flags.out, name));
  return exitCodes.fine;
}

async function blank({ setup: given }: SheetFlags, words: Words) {
  const setup = typeof given === "string" ? await readSetupFile(given) : null;
  const bins = (setup?.bins ?? []).map(({ bin, product }) => ({ bin, product: product ?? "" }));
  const content = emptyCatchSheet(bins, setup?.title ?? null, words);
  return {
    files: catchSheetFiles(content, words),
    inputs: setup === null ? [] : [setup.source],
  };
}

async function ofLog(path: string, flags: SheetFlags, words: Words, io: Io) {
  const setup = await setupFor(path, flags, words, io);
  const log = await readCatchesFile(path, readOptions(flags, path, setup));
  const analysis = analyse(log, setup, await optionsFor(flags, setup));
  return {
    files: sheetFiles(analysis, log, setup?.title ?? null, words),
    inputs: [path, ...inputsOf(flags, setup)],
  };
}
