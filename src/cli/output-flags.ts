import type { Words } from "../wording/words.ts";
import type { Io } from "./io.ts";
import { type Output, writeOutput } from "./output.ts";

/** How a command is told that it may write over what is not its own. */
export interface ReplaceFlags {
  readonly replace?: boolean;
  /** The older name. */
  readonly force?: boolean;
}

export function replaceOf({ replace, force }: ReplaceFlags): boolean {
  return replace === true || force === true;
}

/** Writes what a command has to write, and names what is left of an earlier time. */
export async function writeSaying(output: Output, { command: say }: Words, io: Io): Promise<void> {
  const kept = await writeOutput(output, say);
  if (kept.length > 0) io.err(say.kept({ folder: output.folder, names: kept.join(", ") }));
}
