import type { ReadOptions } from "../data/read-catches.ts";
import type { Setup } from "../data/setup.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import type { CatchLog } from "../data/types.ts";
import { DataError } from "../errors/errors.ts";
import { readSetupFile } from "../node.ts";

/** Reads a setup that must fit the catches; null when none is asked for. Throws DataError. */
export async function setupFor(log: CatchLog, path: string | undefined): Promise<Setup | null> {
  if (path === undefined) return null;
  const setup = await readSetupFile(path);
  const issues = checkSetupAgainst(setup, log);
  if (issues.length > 0) throw new DataError(path, issues);
  return setup;
}

export function readOptions(flags: { readonly sheet?: string }): ReadOptions {
  return flags.sheet === undefined ? {} : { sheet: flags.sheet };
}
