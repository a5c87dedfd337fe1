import { randomBytes } from "node:crypto";
import { open, readFile, realpath, rename, stat, unlink } from "node:fs/promises";
import { setTimeout as wait } from "node:timers/promises";
import { interruptible } from "./interruptible.ts";

/** Somebody else is at the file, or was when something broke off. */
export class LockedError extends Error {
  override readonly name = "LockedError";
  readonly lock: string;

  constructor(lock: string) {
    super(lock);
    this.lock = lock;
  }
}

const patience = { milliseconds: 10_000, every: 25 } as const;

/**
 * Changes a file while nobody else does so: what it holds is read, and what it is to hold is written beside it and renamed over
 * it, so that whoever reads it meanwhile finds the old file or the new one, and of two changes at once neither is lost.
 *
 * A lock that is left over after a machine went off is not broken by guess: its name is told.
 *
 * @param change  the new content of what it is given; null: nothing is changed
 * @throws        LockedError when another holds the file for longer than ten seconds; the error of the file system
 */
export async function changeLocked<T>(
  path: string,
  change: (bytes: Uint8Array) => Promise<{ readonly bytes: Uint8Array | null; readonly result: T }>,
): Promise<T> {
  // A link stays one: the file it leads to is changed.
  const file = await realpath(path);
  const lock = `${file}.lock`;
  const fresh = `${file}.${randomBytes(6).toString("hex")}.tmp`;
  return interruptible(async ({ goOn }) => {
    await take(lock, goOn);
    try {
      goOn();
      const { bytes, result } = await change(new Uint8Array(await readFile(file)));
      if (bytes !== null) {
        await writeWhole(fresh, bytes, (await stat(file)).mode);
        goOn();
        await rename(fresh, file);
      }
      return result;
    } finally {
      for (const left of [fresh, lock]) await unlink(left).catch(() => {});
    }
  });
}

/** Makes the lock, which only one can; waits while another has it. */
async function take(lock: string, goOn: () => void): Promise<void> {
  const until = Date.now() + patience.milliseconds;
  for (;;) {
    goOn();
    try {
      const made = await open(lock, "wx");
      await made.writeFile(`${process.pid}\n`);
      await made.close();
      return;
    } catch (error) {
      const taken = error instanceof Error && "code" in error && error.code === "EEXIST";
      if (!taken) throw error;
      if (Date.now() > until) throw new LockedError(lock);
      await wait(patience.every + Math.random() * patience.every);
    }
  }
}

/** On the disk before it takes the place of the old file, which a power cut would otherwise leave empty. */
async function writeWhole(path: string, bytes: Uint8Array, mode: number): Promise<void> {
  const file = await open(path, "wx", mode & 0o777);
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}
