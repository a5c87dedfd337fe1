// Runs the notebooks and stores anew what no longer holds: refresh.ts [--all] [notebook …]
import { readdirSync } from "node:fs";
import { basename, join } from "node:path";
import {
  readNotebook,
  withOutputs,
  writeNotebook,
} from "../../../notebooks/support/notebook-file.ts";
import { staleOutputs } from "./compare.ts";
import { missingLanguages, reasonOf, withoutSkipped } from "./languages.ts";
import { runNotebook } from "./run.ts";

const folder = join(import.meta.dirname, "..", "..", "..", "notebooks");
const given = process.argv.slice(2);
const named = given.filter((argument) => argument !== "--all");
const paths = named.length > 0 ? named : allNotebooks();

for (const path of paths) {
  await refresh(path).catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  });
}

async function refresh(path: string): Promise<void> {
  const notebook = readNotebook(path);
  const missing = missingLanguages(notebook);
  const shown = withoutSkipped(notebook, await runNotebook(path), missing);
  const stale = staleOutputs(notebook, shown);
  if (given.includes("--all") || stale.length > 0) {
    writeNotebook(path, withOutputs(notebook, shown));
  }
  const kept = missing.length === 0 ? [] : [reasonOf(missing)];
  console.log([`${basename(path)}: ${stale.length} stale`, ...stale, ...kept].join("\n  "));
}

function allNotebooks(): string[] {
  const names = readdirSync(folder).filter((name) => name.endsWith(".ipynb"));
  return names.sort().map((name) => join(folder, name));
}
