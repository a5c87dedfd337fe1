import { lstat, mkdir, readFile, rename, rmdir, unlink, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { interruptible } from "./interruptible.ts";
import {
  type Journal,
  journalName,
  journalOf,
  leaveFolder,
  type Move,
  rewriteJournal,
} from "./journal.ts";
import { type Files, sha256Of } from "./manifest.ts";

/** Every file was written, but not all could be put in their places; the next run into the folder does it. */
export class NotAllPlaced extends Error {}

/**
 * Puts files into a folder all or none. Each is written beside its place under a name of its own; only when every one is
 * there are they renamed, outdated ones removed, and the closing files renamed last. A journal lies in the folder
 * meanwhile: whatever cuts a run off, the old files are whole, or the new ones are and `finish` puts the rest in place.
 *
 * @param into      a folder that is taken for this run, and what follows the names of files until they are in their places
 * @param outdated  files to remove, with the SHA-256 they must still have
 * @throws          the error of the file system; NotAllPlaced
 */
export async function replaceAll(
  { folder, ending }: { readonly folder: string; readonly ending: string },
  files: Files,
  outdated: Readonly<Record<string, string>>,
  closing: Files,
): Promise<void> {
  const all = { ...files, ...closing };
  const begun = journalOf({ ending, moves: {}, writing: Object.keys(all), outdated: {} });
  const written = new Set([join(folder, journalName + ending)]);
  const folders = new Set<string>();
  const takeBack = async () => {
    for (const path of written) await unlink(path).catch(() => {});
    // Deepest first; a folder that holds anything stays.
    for (const made of [...folders].reverse()) await rmdir(made).catch(() => {});
    await leaveFolder(folder);
  };
  await interruptible(async ({ goOn, fromHereOn }) => {
    let journal: Journal;
    try {
      goOn();
      await rewriteJournal(folder, begun);
      for (const [name, content] of Object.entries(all)) {
        const path = join(folder, name);
        const made = await mkdir(dirname(path), { recursive: true });
        if (made !== undefined) for (const one of between(made, dirname(path))) folders.add(one);
        written.add(path + ending);
        await writeFile(path + ending, content, { flag: "wx" });
        goOn();
      }
      journal = { ...begun, writing: [], moves: await movesOf(folder, all), outdated };
      goOn();
      await rewriteJournal(folder, journal);
    } catch (error) {
      await takeBack();
      throw error;
    }
    fromHereOn();
    try {
      await finish(folder, journal);
    } catch (error) {
      throw new NotAllPlaced(error instanceof Error ? error.message : String(error));
    }
  });
}

/**
 * Does what is left of a run: puts its files in their places where every one had been written, else takes them away. A file
 * that somebody changed meanwhile stays as it is.
 */
export async function finish(folder: string, journal: Journal): Promise<void> {
  const { ending, writing, moves, outdated } = journal;
  for (const name of writing) await unlink(join(folder, name + ending)).catch(() => {});
  const names = Object.entries(moves);
  // The last one closes; what goes must be gone before.
  for (const [name, move] of names.slice(0, -1)) await place(folder, name, ending, move);
  for (const [name, sha256] of Object.entries(outdated))
    if ((await sha256At(join(folder, name))) === sha256) await remove(folder, name);
  for (const [name, move] of names.slice(-1)) await place(folder, name, ending, move);
  await unlink(join(folder, journalName + ending)).catch(() => {});
  await leaveFolder(folder);
}

async function place(folder: string, name: string, ending: string, move: Move): Promise<void> {
  const path = join(folder, name);
  if ((await sha256At(path + ending)) !== move.after) return;
  const now = await sha256At(path);
  if (now === move.before) await rename(path + ending, path);
  else await unlink(path + ending);
}

async function movesOf(folder: string, files: Files): Promise<Readonly<Record<string, Move>>> {
  const moves: Record<string, Move> = {};
  for (const [name, content] of Object.entries(files))
    moves[name] = { before: await sha256At(join(folder, name)), after: sha256Of(content) };
  return moves;
}

/** Null where no file lies; a link is none of ours. */
async function sha256At(path: string): Promise<string | null> {
  const about = await lstat(path).catch(() => null);
  if (about === null) return null;
  return about.isFile() ? sha256Of(await readFile(path)) : "no file";
}

/** Removes a file, and folders below the given one that hold nothing any more. */
async function remove(folder: string, name: string): Promise<void> {
  await unlink(join(folder, name));
  for (let below = dirname(name); below !== "."; below = dirname(below)) {
    const emptied = await rmdir(join(folder, below)).then(
      () => true,
      () => false,
    );
    if (!emptied) break;
  }
}

/** The folders from the first to the last, each inside the one before. */
export function between(first: string, last: string): readonly string[] {
  return last.length <= first.length ? [first] : [...between(first, dirname(last)), last];
}
