import { execFile } from "node:child_process";
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { promisify } from "node:util";
import { compiler, root } from "../../support/compiler.ts";
import type { Line } from "./question.ts";

const run = promisify(execFile);

/** A copy of src that may be changed, for as long as `use` needs it; inside the repository, so that packages are found. */
export async function withCopy<T>(use: (source: string) => Promise<T>): Promise<T> {
  await mkdir(join(root, ".cache"), { recursive: true });
  const folder = await mkdtemp(join(root, ".cache", "copy-"));
  try {
    await cp(join(root, "src"), join(folder, "src"), { recursive: true });
    return await use(join(folder, "src"));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

export async function addFiles(
  source: string,
  files: Readonly<Record<string, string>>,
): Promise<void> {
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(source, path)), { recursive: true });
    await writeFile(join(source, path), text);
  }
}

/** @throws Error where no line of the file holds what the new one is to stand before */
export async function addLines(source: string, lines: readonly Line[]): Promise<void> {
  for (const { file, before, text } of lines) {
    const path = join(source, file);
    const old = (await readFile(path, "utf8")).split("\n");
    const at = old.findIndex((each) => each.includes(before));
    if (at < 0) throw new Error(`${file} has no line with ${before}`);
    await writeFile(path, [...old.slice(0, at), text, ...old.slice(at)].join("\n"));
  }
}

/** Files in which the compiler finds something wrong, each once. */
export async function filesWithErrors(source: string): Promise<readonly string[]> {
  const config = join(source, "..", "tsconfig.json");
  await writeFile(
    config,
    JSON.stringify({ extends: join(root, "tsconfig.json"), include: ["src"] }),
  );
  const said = await run(process.execPath, [compiler, "-p", config, "--pretty", "false"]).then(
    () => "",
    ({ stdout }: { readonly stdout: string }) => stdout,
  );
  const files = [...said.matchAll(/^(\S+?)\(\d+,\d+\): error/gm)].map(([, file = ""]) => file);
  return [...new Set(files.map((file) => file.replace(/^.*?\bsrc\//, "")))].sort();
}
