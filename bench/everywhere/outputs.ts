import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdir, readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { filesIn, inFolder } from "../../test/support/command.ts";

const run = promisify(execFile);

/** What the same command may not depend on. */
export interface Place {
  readonly node: string;
  readonly timeZone: string;
  readonly locale: string;
}

/** Places as far apart as there are: the dates that begin first, last, and by a half hour; decimal commas, letters that sort or grow otherwise. */
export const places: readonly Omit<Place, "node">[] = [
  { timeZone: "UTC", locale: "C" },
  { timeZone: "Pacific/Kiritimati", locale: "de_DE.UTF-8" },
  { timeZone: "Pacific/Pago_Pago", locale: "tr_TR.UTF-8" },
  { timeZone: "America/St_Johns", locale: "fr_CA.UTF-8" },
  { timeZone: "Asia/Kathmandu", locale: "ar_EG.UTF-8" },
];

/** What is asked of a log: everything that is written, with everything that can be. */
export interface Asked {
  readonly name: string;
  readonly args: readonly string[];
}

/**
 * Runs commands somewhere, each twice into one folder.
 *
 * @param main  what Node is given before the command
 * @returns     by name of the file, or of the command for what it printed, the SHA-256 of what is there
 */
export async function outputsOf(
  { node, timeZone, locale }: Place,
  main: readonly string[],
  asked: readonly Asked[],
): Promise<ReadonlyMap<string, string>> {
  const env = { ...process.env, TZ: timeZone, LC_ALL: locale, LANG: locale, LANGUAGE: locale };
  const found = new Map<string, string>();
  for (const { name, args } of asked)
    await inFolder(async (folder) => {
      const out = join(folder, "out");
      await mkdir(out);
      const said = async () =>
        (
          await run(node, [...main, ...args, "--out", "out"], {
            cwd: folder,
            env,
            maxBuffer: 2 ** 26,
          })
        ).stdout;
      const [first, second] = [await said(), await said()];
      if (first !== second) throw new Error(`${name} says something else the second time`);
      found.set(name, sha256(first));
      for (const file of await filesIn(out)) {
        const path = join(out, file);
        if ((await stat(path)).isFile()) found.set(`${name}/${file}`, sha256(await readFile(path)));
      }
    });
  return found;
}

const sha256 = (content: string | Buffer) => createHash("sha256").update(content).digest("hex");

/** Names of what is not the same in both, or only in one. */
export function differing(
  one: ReadonlyMap<string, string>,
  other: ReadonlyMap<string, string>,
): readonly string[] {
  const names = new Set([...one.keys(), ...other.keys()]);
  return [...names].filter((name) => one.get(name) !== other.get(name)).toSorted();
}
