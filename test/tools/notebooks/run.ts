import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join, relative, resolve } from "node:path";
import { promisify } from "node:util";
import { readNotebook, type ShownByCell } from "../../../notebooks/support/notebook-file.ts";
import { type JoinedNotebook, joinCells } from "./join.ts";

const run = promisify(execFile);
const support = join(import.meta.dirname, "..", "..", "..", "notebooks", "support");

/**
 * Runs a notebook without Jupyter: its code cells in order, in a process of their own, in the notebook's folder.
 *
 * @returns what each code cell showed
 * @throws  Error with the cell and the line, when a cell throws or prints instead of showing
 */
export async function runNotebook(path: string): Promise<ShownByCell> {
  return withJoined(path, async (module, joined) => {
    const folder = mkdtempSync(join(tmpdir(), "notebook-"));
    const results = join(folder, "shown.json");
    try {
      await executed(module, results);
      return JSON.parse(readFileSync(results, "utf8"));
    } catch (error) {
      throw new Error(inCells(messageOf(error), module, joined));
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
}

async function executed(module: string, results: string): Promise<void> {
  const execute = join(import.meta.dirname, "execute.ts");
  const { stdout } = await run(process.execPath, ["--import", "tsx", execute, module, results], {
    cwd: dirname(module),
    env: { ...process.env, NO_COLOR: "1" },
  }).catch((error: { readonly stderr?: string }) => {
    throw error.stderr ? new Error(error.stderr.trim()) : error;
  });
  if (stdout !== "") {
    throw new Error(`${notebookOf(module)} prints; a cell must show: ${stdout.slice(0, 200)}`);
  }
}

/** Writes the joined module beside the notebook for as long as `use` needs it. */
export async function withJoined<T>(
  path: string,
  use: (module: string, joined: JoinedNotebook) => Promise<T>,
): Promise<T> {
  const folder = dirname(resolve(path));
  const collect = relative(folder, join(support, "collect.ts"));
  const joined = joinCells(readNotebook(path), collect.startsWith(".") ? collect : `./${collect}`);
  const module = join(folder, `${basename(path, ".ipynb")}.${process.pid}.cells.ts`);
  writeFileSync(module, joined.source);
  try {
    return await use(module, joined);
  } finally {
    rmSync(module, { force: true });
  }
}

/** A message of a tool with the lines of the module told as places in the notebook. */
export function inCells(message: string, module: string, { placeOf }: JoinedNotebook): string {
  const name = basename(module).replaceAll(".", "\\.");
  const place = new RegExp(`\\S*${name}[:(](\\d+)(?:[:,]\\d+\\)?)?`, "g");
  return message.replace(
    place,
    (_, line: string) => `${notebookOf(module)}, ${placeOf(Number(line))}`,
  );
}

function notebookOf(module: string): string {
  return `${basename(module).replace(/\.\d+\.cells\.ts$/, "")}.ipynb`;
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
