import { stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import type { GivenKeys } from "../data/given-keys.ts";
import type { ReadOptions } from "../data/read-catches.ts";
import type { Setup } from "../data/setup.ts";
import { readSetupFile } from "../node.ts";
import type { Words } from "../wording/words.ts";
import type { Io } from "./io.ts";

/** Where a command is told to take its setup from: a file, false for none, nothing for the one beside the catches. */
export interface SetupFlags {
  readonly setup?: string | false;
}

/** Name of a setup that is used without being asked for, when it lies in the folder of the catches. */
const setupBeside = "setup.json";

/**
 * The setup that goes with a file of catches: the one asked for, or the one beside them, which is then named on standard
 * error, before it is read. Null: none.
 *
 * @throws DataError when it cannot be used, beside the catches or not
 */
export async function setupFor(
  catches: string,
  { setup }: SetupFlags,
  { command: say }: Words,
  io: Io,
): Promise<Setup | null> {
  if (setup === false) return null;
  if (setup !== undefined) return readSetupFile(setup);
  const beside = join(dirname(catches), setupBeside);
  if (basename(catches) === setupBeside || !(await exists(beside))) return null;
  io.err(say.setupFound(beside));
  return readSetupFile(beside);
}

function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}

/** How a command is told to read its file of catches. */
export interface ReadFlags {
  readonly sheet?: string;
  readonly key?: GivenKeys;
}

export function readOptions({ sheet, key }: ReadFlags): ReadOptions {
  return {
    ...(sheet === undefined ? {} : { sheet }),
    ...(key === undefined ? {} : { keys: key }),
  };
}
