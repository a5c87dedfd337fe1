import { readdir, stat } from "node:fs/promises";
import { join, resolve } from "node:path";
import { isZip } from "../data/binary-kind.ts";
import { dataIssue } from "../data/issues.ts";
import type { CatchSource } from "../data/source.ts";
import { dataError } from "../errors/data-error.ts";
import type { DataIssue } from "../errors/data-issue.ts";
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
  const ending = isZip(bytes) ? "xlsx" : /^[[{]/.test(start) ? "json" : "csv";
  return { name: `stdin.${ending}`, bytes };
}

const tables = /\.(?:csv|tsv|txt|xlsx)$/i;
/** Files a spreadsheet program keeps beside an open one, and hidden ones. */
const passing = /^(?:~\$|\.)/;

export interface FoundFiles {
  readonly files: readonly string[];
  /** What lies in the folders besides. */
  readonly others: readonly string[];
}

/**
 * The files named, and for a folder the tables in it and below it by name.
 *
 * @param written  what the command itself writes, and all that is called by it, is not among them
 * @throws         DataError for a folder without a table
 */
export async function filesIn(paths: readonly string[], written: string): Promise<FoundFiles> {
  const files: string[] = [];
  const others: string[] = [];
  for (const path of paths) {
    const about = path === standardInput ? null : await stat(path).catch(() => null);
    if (about?.isDirectory()) {
      const all = await filesBelow(path);
      const own = all.filter((file) => !resolve(file).startsWith(resolve(written)));
      const found = own.filter((file) => tables.test(file));
      if (found.length === 0) throw dataError(path, [noTables(path)]);
      files.push(...found);
      others.push(...own.filter((file) => !tables.test(file)));
    } else files.push(path);
  }
  return { files: eachOnce(files), others: eachOnce(others) };
}

async function filesBelow(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const named = entries
    .filter(({ name }) => !passing.test(name))
    .toSorted((one, other) => (one.name < other.name ? -1 : 1));
  const found = await Promise.all(
    named.map(async (entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return filesBelow(path);
      return entry.isFile() ? [path] : [];
    }),
  );
  return found.flat();
}

function noTables(folder: string): DataIssue {
  return dataIssue({ source: folder, rowKind: "row" }, { problem: "no-tables", facts: {} });
}

/** A file that two patterns of a shell name is one file. */
function eachOnce(paths: readonly string[]): readonly string[] {
  const seen = new Map<string, string>();
  for (const path of paths) if (!seen.has(resolve(path))) seen.set(resolve(path), path);
  return [...seen.values()];
}
