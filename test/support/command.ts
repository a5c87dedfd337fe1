import { execFile } from "node:child_process";
import { mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createColors } from "picocolors";
import { run } from "../../src/cli/run.ts";

export const demo = (path: string) => new URL(`../../data-demo/${path}`, import.meta.url).pathname;

/** Runs the command inside this process and collects what it says. */
export async function command(...args: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const plain = createColors(false);
  const code = await run(args, {
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    outColors: plain,
    errColors: plain,
  });
  return { code, out: out.join("\n"), err: err.join("\n") };
}

/** Runs the command as a process of its own, as a shell does. */
export function processOf(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const main = new URL("../../src/cli/main.ts", import.meta.url).pathname;
  return new Promise((resolve) => {
    execFile(process.execPath, ["--import", "tsx", main, ...args], (error, out, err) =>
      resolve({ code: typeof error?.code === "number" ? error.code : 0, out, err }),
    );
  });
}

/** A folder of its own for one test, gone afterwards. */
export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), "evencatch-"));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true });
  }
}

export async function fileWith(folder: string, name: string, text: string): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
}

export async function filesIn(folder: string): Promise<readonly string[]> {
  return (await readdir(folder, { recursive: true })).sort();
}
