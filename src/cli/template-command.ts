import { join } from "node:path";
import { templateFiles } from "../data/template.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { type Io, refuseOverwriting, writeFiles } from "./io.ts";

/** `evencatch template`: an empty catch sheet, a setup to fill in, and what the columns mean. */
export async function templateCommand(
  folder: string,
  flags: { readonly force?: boolean },
  io: Io,
): Promise<ExitCode> {
  const files = templateFiles();
  if (!flags.force) await refuseOverwriting(folder, Object.keys(files));
  await writeFiles(folder, files);
  for (const name of Object.keys(files)) io.out(join(folder, name));
  return exitCodes.fine;
}
