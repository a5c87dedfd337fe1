import { join } from "node:path";
import { templateFiles } from "../data/template.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import type { Io } from "./io.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";

/** `evencatch template`: an empty catch sheet, a setup to fill in, and what the columns mean. */
export async function templateCommand(
  folder: string,
  flags: ReplaceFlags,
  io: Io,
): Promise<ExitCode> {
  const files = templateFiles();
  const replace = replaceOf(flags);
  await writeSaying({ command: "template", folder, files, inputs: [], replace }, io);
  for (const name of Object.keys(files)) io.out(join(folder, name));
  return exitCodes.fine;
}
