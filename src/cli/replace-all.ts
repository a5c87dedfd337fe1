import { randomBytes } from "node:crypto";
import { unlinkSync } from "node:fs";
import { mkdir, rename, rmdir, unlink, writeFile } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import type { Files } from "./manifest.ts";

/**
 * Puts files into a folder all or none: each is written beside its place under a name of its own, and only when every one
 * is there are they renamed, outdated ones removed, and the closing files renamed last. When that fails or is interrupted,
 * old files are whole and nothing unfinished is left behind.
 *
 * @throws the error of the file system
 */
export async function replaceAll(
  into: string,
  files: Files,
  outdated: readonly string[],
  closing: Files,
): Promise<void> {
  const folder = resolve(into);
  const ending = `.${randomBytes(6).toString("hex")}.tmp`;
  const unfinished = new Set<string>();
  const folders = new Set<string>();
  const write = async (written: Files) => {
    for (const [name, content] of Object.entries(written)) {
      const path = join(folder, name);
      const made = await mkdir(dirname(path), { recursive: true });
      if (made !== undefined) for (const one of between(made, dirname(path))) folders.add(one);
      unfinished.add(path + ending);
      await writeFile(path + ending, content, { flag: "wx" });
    }
  };
  const settle = async (written: Files) => {
    for (const name of Object.keys(written)) {
      const path = join(folder, name);
      await rename(path + ending, path);
      unfinished.delete(path + ending);
    }
  };
  await uninterrupted(unfinished, async () => {
    try {
      await write({ ...files, ...closing });
      await settle(files);
      await remove(folder, outdated);
      await settle(closing);
    } catch (error) {
      for (const path of unfinished) await unlink(path).catch(() => {});
      // Deepest first; a folder that holds anything stays.
      for (const made of [...folders].reverse()) await rmdir(made).catch(() => {});
      throw error;
    }
  });
}

/** Removes files, and folders below the given one that hold nothing any more. */
async function remove(folder: string, names: readonly string[]): Promise<void> {
  for (const name of names) {
    await unlink(join(folder, name));
    for (let below = dirname(name); below !== "."; below = dirname(below)) {
      const emptied = await rmdir(join(folder, below)).then(
        () => true,
        () => false,
      );
      if (!emptied) break;
    }
  }
}

/** The folders from the first to the last, each inside the one before. */
function between(first: string, last: string): readonly string[] {
  return last.length <= first.length ? [first] : [...between(first, dirname(last)), last];
}

const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/** Does the work; a signal that ends the process takes what is unfinished with it. */
async function uninterrupted(unfinished: ReadonlySet<string>, work: () => Promise<void>) {
  const leave = (signal: NodeJS.Signals) => {
    for (const path of unfinished) {
      try {
        unlinkSync(path);
      } catch {
        // Not written yet, or renamed already.
      }
    }
    for (const one of signals) process.off(one, leave);
    process.kill(process.pid, signal);
  };
  for (const signal of signals) process.on(signal, leave);
  try {
    await work();
  } finally {
    for (const signal of signals) process.off(signal, leave);
  }
}
