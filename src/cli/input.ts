import { stat } from "node:fs/promises";
import { basename, dirname, isAbsolute, join } from "node:path";
import type { AnalysisOptions } from "../analysis/options.ts";
import type { GivenKeys } from "../data/given-keys.ts";
import type { ReadOptions } from "../data/read-catches.ts";
import type { Setup } from "../data/setup.ts";
import { readSetupFile, readSpreadLibraryFile } from "../node.ts";
import type { Words } from "../wording/words.ts";
import { analysisGiven } from "./flags.ts";
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

/** Where a command is told to borrow from. */
export interface LibraryFlags {
  readonly library?: string;
}

/**
 * The library asked for, or the one that the setup names, which lies beside it, as options of an analysis; none: no options.
 *
 * @throws DataError when it cannot be used
 */
export async function libraryFor(
  flags: LibraryFlags,
  setup: Setup | null,
): Promise<Pick<Partial<AnalysisOptions>, "library" | "libraryFrom">> {
  const path = libraryPath(flags, setup);
  if (path === null) return {};
  // Seldom asked for, and a short answer loads no more than it needs.
  const { libraryRecords } = await import("../analysis/spread-library.ts");
  return {
    library: libraryRecords(await readSpreadLibraryFile(path)),
    libraryFrom: basename(path),
  };
}

function libraryBeside(setup: Setup | null): string | null {
  if (setup?.library == null) return null;
  return isAbsolute(setup.library) ? setup.library : join(dirname(setup.source), setup.library);
}

/** Files of the library and the setup, which are never written over. */
export function inputsOf(flags: LibraryFlags, setup: Setup | null): readonly string[] {
  const path = libraryPath(flags, setup);
  return [...(setup === null ? [] : [setup.source]), ...(path === null ? [] : [path])];
}

/** Where the library lies; null: there is none. */
export function libraryPath({ library }: LibraryFlags, setup: Setup | null): string | null {
  return library ?? libraryBeside(setup);
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

/** How a command is told what an analysis of catches rests on besides them. */
export interface LogFlags extends ReadFlags, SetupFlags, LibraryFlags {}

/** Options of an analysis as the flags say them, and the library that lends to it. */
export async function optionsFor(
  flags: LogFlags,
  setup: Setup | null,
): Promise<Partial<AnalysisOptions>> {
  return { ...analysisGiven(flags), ...(await libraryFor(flags, setup)) };
}
