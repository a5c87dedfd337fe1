import { stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import type { ReadOptions } from "../data/read-catches.ts";
import type { Setup } from "../data/setup.ts";
import { readSetupFile } from "../node.ts";
import type { Words } from "../wording/words.ts";
import type { Io } from "./io.ts";
import { standardInput } from "./sources.ts";

/** Where a command is told to take its setup from: a file, false for none, nothing for the one beside the catches. */
export interface SetupFlags {
  readonly setup?: string | false;
}

/** Name of a setup that is used without being asked for, when it lies in the folder of the catches. */
const setupBeside = "setup.json";

/**
 * The setup that goes with catches: the one asked for, or the one beside them, which is then named on standard
 * error, before it is read. Null: none.
 *
 * @throws DataError when it cannot be used, beside the catches or not
 */
export async function setupFor(
  catches: string | readonly string[],
  { setup }: SetupFlags,
  { command: say }: Words,
  io: Io,
): Promise<Setup | null> {
  if (setup === false) return null;
  if (setup !== undefined) return readSetupFile(setup);
  const beside = besideAll([catches].flat());
  if (beside === null || !(await exists(beside))) return null;
  io.err(say.setupFound(beside));
  return readSetupFile(beside);
}

/** Where a setup would lie that goes with all of these files; null: they lie apart, or come from no folder. */
function besideAll(catches: readonly string[]): string | null {
  const [folder, ...others] = new Set(catches.map((path) => dirname(path)));
  const none = folder === undefined || others.length > 0 || catches.includes(standardInput);
  return none || catches.some((path) => basename(path) === setupBeside)
    ? null
    : join(folder, setupBeside);
}

function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}

export function readOptions(flags: { readonly sheet?: string }): ReadOptions {
  return flags.sheet === undefined ? {} : { sheet: flags.sheet };
}
