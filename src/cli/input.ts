import { stat } from "node:fs/promises";
import { basename, dirname, isAbsolute, join, parse, resolve } from "node:path";
import { InvalidArgumentError } from "commander";
import type { AnalysisOptions } from "../analysis/options.ts";
import { turnsPerHectareBy } from "../analysis/turns-of-area.ts";
import type { GivenKeys } from "../data/given-keys.ts";
import type { ReadOptions } from "../data/read-catches.ts";
import type { TogetherOptions } from "../data/read-together.ts";
import type { Setup } from "../data/setup.ts";
import type { CatchSource } from "../data/source.ts";
import { catchSource } from "../node.ts";
import type { Words } from "../wording/words.ts";
import { analysisGiven } from "./flags.ts";
import type { Io } from "./io.ts";
import { standardInput } from "./sources.ts";

/** Where a command is told to take its setup from: a file, false for none, nothing for the one beside the catches. */
export interface SetupFlags {
  readonly setup?: string | false;
}

/** Name of a setup that is used without being asked for, when it lies in the folder of the catches. */
const setupBeside = "setup.json";

/**
 * The file of the setup that goes with catches: the one asked for, or the one beside them, which is then named on standard
 * error, before it is read. Null: none.
 *
 * @throws DataError when it cannot be opened, beside the catches or not
 */
export async function setupSourceFor(
  catches: string | readonly string[],
  { setup }: SetupFlags,
  { command: say }: Words,
  io: Io,
): Promise<CatchSource | null> {
  if (setup === false) return null;
  if (setup !== undefined) return catchSource(setup);
  const beside = besideAll([catches].flat());
  if (beside === null || !(await exists(beside))) return null;
  io.err(say.setupFound(beside));
  return catchSource(beside);
}

/** @throws DataError when it cannot be used */
export async function setupIn(source: CatchSource | null): Promise<Setup | null> {
  if (source === null) return null;
  // The schema of a setup is large beside the rest of reading, and most catches come without one.
  const { readSetup } = await import("../data/read-setup.ts");
  return readSetup(source);
}

/** The setup in that file. */
export async function setupFor(
  catches: string | readonly string[],
  flags: SetupFlags,
  words: Words,
  io: Io,
): Promise<Setup | null> {
  return setupIn(await setupSourceFor(catches, flags, words, io));
}

/** Where a setup would lie that goes with all of these files; null: they lie apart, or come from no folder. */
function besideAll(catches: readonly string[]): string | null {
  const [folder, ...others] = new Set(catches.map((path) => dirname(path)));
  const none = folder === undefined || others.length > 0 || catches.includes(standardInput);
  return none || catches.some((path) => basename(path) === setupBeside)
    ? null
    : join(folder, setupBeside);
}

/** Where a command is told to borrow from. */
export interface LibraryFlags {
  readonly library?: string;
}

type LibraryOptions = Pick<Partial<AnalysisOptions>, "library" | "libraryFrom">;

/**
 * The library asked for, or the one that the setup names, which lies beside it, as options of an analysis; none: no options.
 *
 * @throws DataError when it cannot be used
 */
export async function libraryFor(
  flags: LibraryFlags,
  setup: Setup | null,
): Promise<LibraryOptions> {
  return libraryIn(await librarySourceFor(flags, setup));
}

/** @throws DataError when it cannot be opened */
export async function librarySourceFor(
  flags: LibraryFlags,
  setup: Setup | null,
): Promise<CatchSource | null> {
  const path = libraryPath(flags, setup);
  return path === null ? null : catchSource(path);
}

/** @throws DataError when it cannot be used */
export async function libraryIn(source: CatchSource | null): Promise<LibraryOptions> {
  if (source === null) return {};
  // Seldom asked for, and a short answer loads no more than it needs.
  const { readSpreadLibrary } = await import("../data/spreads/read.ts");
  const { libraryRecords } = await import("../analysis/spread-library.ts");
  return {
    library: libraryRecords(readSpreadLibrary(source)),
    libraryFrom: basename(source.name),
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
function libraryPath({ library }: LibraryFlags, setup: Setup | null): string | null {
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

/** How one is read; areas become turns by the setup. */
export function readOptions(
  { sheet, key }: ReadFlags,
  path: string,
  setup: Setup | null,
): ReadOptions {
  return {
    turnsPerHectare: turnsPerHectareBy(setup),
    ...(sheet === undefined ? {} : { sheet }),
    ...(key === undefined ? {} : { keys: keysOf(key, path) }),
  };
}

/** How several are read as one: each by the names it lies under. */
export function togetherOptions(
  { sheet, key = {} }: ReadFlags,
  paths: readonly string[],
  { usage }: Words,
  setup: Setup | null,
): TogetherOptions {
  const placed = Object.values(key).some((value) => placeNames.has(value));
  if (placed && paths.includes(standardInput))
    throw new InvalidArgumentError(usage.needed.keyOfStream);
  return {
    turnsPerHectare: turnsPerHectareBy(setup),
    ...(sheet === undefined ? {} : { sheet }),
    keys: (path) => keysOf(key, path),
  };
}

/** What stands for the name of a place, instead of a name. */
const placeNames: ReadonlyMap<string, (path: string) => string> = new Map([
  ["file", (path: string) => parse(path).name],
  ["folder", (path: string) => basename(dirname(resolve(path)))],
]);

function keysOf(key: GivenKeys, path: string): GivenKeys {
  return Object.fromEntries(
    Object.entries(key).map(([name, value]) => [name, placeNames.get(value)?.(path) ?? value]),
  );
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
