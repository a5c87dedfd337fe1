import { spawn } from "node:child_process";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { filesIn } from "./command.ts";
import { filesOfVersion } from "./versions.ts";

const here = fileURLToPath(new URL(".", import.meta.url));

/** The program that writes, as one file that Node starts at once. */
export async function bundledWriter(folder: string): Promise<string> {
  const outfile = join(folder, "writing.mjs");
  await build({
    entryPoints: [join(here, "writing.ts")],
    bundle: true,
    platform: "node",
    format: "esm",
    outfile,
    logLevel: "error",
  });
  return outfile;
}

export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly err: string;
}

/** Runs a program of Node's with a fault at the n-th change of the file system, such as kill:3. */
export function runWithFault(
  program: string,
  args: readonly string[],
  fault: string,
): Promise<Ended> {
  return new Promise((resolve) => {
    const child = spawn(
      process.execPath,
      ["--require", join(here, "faulty-fs.cjs"), program, ...args],
      {
        env: { ...process.env, FAULT: fault },
        stdio: ["ignore", "ignore", "pipe"],
      },
    );
    let err = "";
    child.stderr.on("data", (text) => {
      err += text;
    });
    child.on("close", (code, signal) => resolve({ code, signal, err }));
  });
}

/** How many changes a run makes that nothing happens to. */
export async function changesOf(program: string, args: readonly string[]): Promise<number> {
  const { err } = await runWithFault(program, args, "count:0");
  return Number(/changes (\d+)/.exec(err)?.[1]);
}

/** What stands in a folder: a version in which every file is whole, in its place or written out beside it; null: neither. */
export async function standing(folder: string): Promise<"nothing" | "1" | "2" | null> {
  const names = await filesIn(folder);
  const contents = new Map<string, string>();
  for (const name of names)
    contents.set(name, await readFile(join(folder, name), "utf8").catch(() => ""));
  const holds = (version: string, besides: boolean) =>
    Object.entries(filesOfVersion(version)).every(
      ([name, text]) =>
        contents.get(name) === text ||
        (besides && names.some((one) => one.startsWith(`${name}.`) && contents.get(one) === text)),
    );
  if (holds("1", false)) return "1";
  if (holds("2", true)) return "2";
  return Object.keys(filesOfVersion("2")).some((name) => contents.has(name)) ? null : "nothing";
}
