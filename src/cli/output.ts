import { randomBytes } from "node:crypto";
import { lstat, mkdir, readFile, rmdir, stat } from "node:fs/promises";
import { join, resolve } from "node:path";
import { EvencatchError } from "../errors/errors.ts";
import type { Words } from "../wording/words.ts";
import { journalName, leaveFolder, takeFolder, unfinishedIn } from "./journal.ts";
import {
  entriesOf,
  type Files,
  type Manifest,
  manifestName,
  manifestText,
  parseManifest,
  sha256Of,
  type WritingCommand,
} from "./manifest.ts";
import { between, finish, NotAllPlaced, replaceAll } from "./replace-all.ts";

type Say = Words["command"];
type Obstacle = keyof Say["inTheWay"];

/** Files a command wants to write, and what it must not touch. */
export interface Output {
  readonly command: WritingCommand;
  readonly folder: string;
  readonly files: Files;
  /** Files the command read: never written over, whatever is asked for. */
  readonly inputs: readonly string[];
  /** Also write over files that evencatch did not write, or that were changed since. */
  readonly replace: boolean;
  /** Each file stands by itself: those of the last time stay, though they are not written again. Default: they go. */
  readonly standAlone?: boolean;
}

/** The output cannot be written without losing something, or not at all. Nothing was written. */
export class OutputError extends EvencatchError {
  override readonly name = "OutputError";
  readonly code = "bad-output";
}

/**
 * Writes files into a folder so that nothing of the user's is lost: what evencatch did not write there, or what was
 * changed since, is refused by name unless `replace` is set, and inputs and links are refused always. Files of the last
 * time that are not written again are removed while they are unchanged. A manifest is written last. What an earlier run was
 * cut off from is finished first; two runs at once take turns, in that the second is refused.
 *
 * @param say  what is said of what is in the way
 * @returns names that were not written again but are kept, because somebody changed them
 * @throws  OutputError naming every file in the way, or the folder that cannot be written to
 */
export async function writeOutput(output: Output, say: Say): Promise<readonly string[]> {
  const ending = `.${randomBytes(6).toString("hex")}.tmp`;
  const made = await readyFolder(output.folder, ending, say);
  try {
    return await written(output, ending, say);
  } catch (error) {
    // What is all written out is put in its place by the next run, from the journal.
    if (!(error instanceof Error && error.cause instanceof NotAllPlaced))
      await leaveFolder(resolve(output.folder));
    // A folder that was made for nothing goes again; one that holds anything stays.
    for (const one of [...made].reverse()) await rmdir(one).catch(() => {});
    throw error;
  }
}

/** Makes the folder and takes it for this run, after finishing what an earlier one was cut off from. Returns the folders that were not there. */
async function readyFolder(folder: string, ending: string, say: Say): Promise<readonly string[]> {
  const path = resolve(folder);
  try {
    const first = await mkdir(path, { recursive: true });
    const left = await unfinishedIn(path);
    if (left === "taken") throw taken(folder, say);
    if (left === "torn") await leaveFolder(path);
    else if (left !== null) await finish(path, left);
    await takeFolder(path, ending);
    return first === undefined ? [] : between(first, path);
  } catch (error) {
    if (error instanceof OutputError) throw error;
    throw isTaken(error) ? taken(folder, say) : cannotWrite(folder, error, say);
  }
}

function isTaken(error: unknown): boolean {
  return (
    error instanceof Error &&
    "syscall" in error &&
    "code" in error &&
    error.syscall === "open" &&
    error.code === "EEXIST"
  );
}

function taken(folder: string, say: Say): OutputError {
  return new OutputError(say.beingWritten({ folder, file: journalName }));
}

function cannotWrite(folder: string, error: unknown, say: Say): OutputError {
  const why = error instanceof Error ? error.message : String(error);
  return new OutputError(
    error instanceof NotAllPlaced
      ? say.notAllPlaced({ folder, why })
      : say.cannotWrite({ folder, why }),
    { cause: error },
  );
}

async function written(output: Output, ending: string, say: Say): Promise<readonly string[]> {
  const { command, folder, files } = output;
  const old = await oldManifest(folder);
  const inputs = await identities(output.inputs);
  const refused = await refusals(output, old, inputs, say);
  if (refused.length > 0)
    throw new OutputError([say.nothingWritten(folder), ...refused].join("\n"));

  const { standAlone = false } = output;
  const { stale, kept } = standAlone
    ? { stale: [], kept: [] }
    : await leftOver(output, old, inputs);
  const ofOthers = Object.entries(old).filter(
    ([, entry]) => standAlone || entry.command !== command,
  );
  try {
    const outdated = Object.fromEntries(stale.map((name) => [name, old[name]?.sha256 ?? ""]));
    await replaceAll({ folder: resolve(folder), ending }, files, outdated, {
      [manifestName]: manifestText({
        ...Object.fromEntries(ofOthers),
        ...entriesOf(command, files),
      }),
    });
  } catch (error) {
    throw cannotWrite(folder, error, say);
  }
  return kept;
}

/** What this command wrote the last time and does not write again: unchanged, or changed since. */
async function leftOver(
  { command, folder, files }: Output,
  old: Manifest,
  inputs: ReadonlySet<string>,
) {
  const stale: string[] = [];
  const kept: string[] = [];
  for (const [name, entry] of Object.entries(old)) {
    if (entry.command !== command || files[name] !== undefined) continue;
    const state = await stateOf(folder, name, inputs);
    if (state.is === "file") (state.sha256 === entry.sha256 ? stale : kept).push(name);
  }
  return { stale, kept };
}

async function oldManifest(folder: string): Promise<Manifest> {
  const text = await readFile(join(folder, manifestName), "utf8").catch(() => "");
  return parseManifest(text) ?? {};
}

/** Names a line lists before it says how many more there are. */
const namesShown = 8;

/** A line for each kind of obstacle, with the names in its way. */
async function refusals(
  output: Output,
  old: Manifest,
  inputs: ReadonlySet<string>,
  say: Say,
): Promise<readonly string[]> {
  const found = new Map<Obstacle, Set<string>>();
  for (const [name, content] of Object.entries({ ...output.files, [manifestName]: "" })) {
    const state = await stateOf(output.folder, name, inputs);
    const obstacle = obstacleOf(state, name, sha256Of(content), old, output.replace);
    if (obstacle === null) continue;
    const names = found.get(obstacle) ?? new Set();
    found.set(obstacle, names.add(state.is === "nothing" ? name : state.name));
  }
  return [...found].map(([obstacle, names]) => {
    const more = names.size - namesShown;
    const listed = [...names].slice(0, namesShown).join(", ");
    return say.inTheWay[obstacle]({
      names: more > 0 ? say.andMore({ names: listed, more }) : listed,
      manifest: manifestName,
    });
  });
}

function obstacleOf(
  state: State,
  name: string,
  sha256: string,
  old: Manifest,
  replace: boolean,
): Obstacle | null {
  if (state.is === "nothing") return null;
  if (state.is !== "file") return state.is;
  const before = old[name]?.sha256;
  const ours = name === manifestName ? state.manifest : [sha256, before].includes(state.sha256);
  if (ours || replace) return null;
  return before === undefined ? "not covered" : "changed";
}

type State =
  | { readonly is: "nothing" }
  | { readonly is: "input" | "link" | "no file" | "no folder"; readonly name: string }
  | {
      readonly is: "file";
      readonly name: string;
      readonly sha256: string;
      readonly manifest: boolean;
    };

/** What lies where a file is to be written. Nothing between the folder and the file may be a link: it would lead out. */
async function stateOf(folder: string, name: string, inputs: ReadonlySet<string>): Promise<State> {
  const parts = name.split("/");
  for (let length = 1; length <= parts.length; length++) {
    const part = parts.slice(0, length).join("/");
    const path = join(folder, part);
    const about = await lstat(path, { bigint: true }).catch(() => null);
    if (about === null) return { is: "nothing" };
    if (about.isSymbolicLink()) return { is: "link", name: part };
    const last = length === parts.length;
    if (last && !about.isFile()) return { is: "no file", name };
    if (!last && !about.isDirectory()) return { is: "no folder", name: part };
    if (last && inputs.has(identityOf(about))) return { is: "input", name };
  }
  // What may not be read is certainly not known to be ours.
  const bytes = await readFile(join(folder, name)).catch(() => Buffer.alloc(0));
  return {
    is: "file",
    name,
    sha256: sha256Of(bytes),
    manifest: parseManifest(bytes.toString("utf8")) !== null,
  };
}

/** The files themselves, whatever links and spellings lead to them. */
async function identities(paths: readonly string[]): Promise<ReadonlySet<string>> {
  const about = await Promise.all(
    paths.map((path) => stat(path, { bigint: true }).catch(() => null)),
  );
  return new Set(about.flatMap((found) => (found === null ? [] : [identityOf(found)])));
}

function identityOf({ dev, ino }: { readonly dev: bigint; readonly ino: bigint }): string {
  return `${dev}:${ino}`;
}
