import { readdir, stat } from "node:fs/promises";
import { join, resolve } from "node:path";
import type { CatchSource } from "../data/source.ts";
import { catchSource } from "../node.ts";
import type { Io } from "./io.ts";

/** How a command is told to read standard input. */
export const standardInput = "-";

/** Files in memory, in the order they are named; `-` is standard input, once. */
export async function sourcesOf(paths: readonly string[], io: Io): Promise<readonly CatchSource[]> {
  const sources: CatchSource[] = [];
  for (const path of eachOnce(paths))
    sources.push(path === standardInput ? await fromStandardInput(io) : await catchSource(path));
  return sources;
}

/** Standard input under a name that tells its format: a workbook, a list, else a table. */
async function fromStandardInput(io: Io): Promise<CatchSource> {
  const bytes = (await io.stdin?.()) ?? new Uint8Array();
  const start = new TextDecoder().decode(bytes.subarray(0, 64)).trimStart();
  const ending = start.startsWith("PK\u0003\u0004") ? "xlsx" : /^[[{]/.test(start) ? "json" : "csv";
  return { name: `stdin.${ending}`, bytes };
}

const tables = /\.(?:csv|tsv|txt|xlsx)$/i;
/** Files a spreadsheet program keeps beside an open one, and hidden ones. */
const passing = /^(?:~\$|\.)/;

/** The files named, and for a folder the tables in it and below it by name, but none that the command itself writes. */
export async function filesIn(
  paths: readonly string[],
  written: string,
): Promise<readonly string[]> {
  const found: string[] = [];
  for (const path of paths) {
    const about = path === standardInput ? null : await stat(path).catch(() => null);
    if (about?.isDirectory()) found.push(...(await tablesIn(path, resolve(written))));
    else found.push(path);
  }
  return eachOnce(found);
}

/** A file that two patterns of a shell name is one file. */
function eachOnce(paths: readonly string[]): readonly string[] {
  const seen = new Map<string, string>();
  for (const path of paths) if (!seen.has(resolve(path))) seen.set(resolve(path), path);
  return [...seen.values()];
}

async function tablesIn(folder: string, written: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const named = entries
    .filter(({ name }) => !passing.test(name))
    .toSorted((one, other) => (one.name < other.name ? -1 : 1));
  const found = await Promise.all(
    named.map(async (entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return tablesIn(path, written);
      return entry.isFile() && tables.test(entry.name) && resolve(path) !== written ? [path] : [];
    }),
  );
  return found.flat();
}
