import type { TidyTables } from "../analysis/tables/tidy-tables.ts";
import { rowsToCsv } from "../data/write-csv.ts";
import { rowsToLatex, rowsToMarkdown } from "./plain-tables.ts";

/** Tidy tables as texts by file name, each as CSV and JSON with every digit, and as Markdown and LaTeX for a paper. */
export function tableFiles(tables: TidyTables): Readonly<Record<string, string>> {
  const files = Object.entries(tables)
    .filter(([, rows]) => rows.length > 0)
    .flatMap(([name, rows]) => [
      [`tables/${name}.csv`, rowsToCsv(rows)],
      [`tables/${name}.json`, `${JSON.stringify(rows, null, 2)}\n`],
      [`tables/${name}.md`, rowsToMarkdown(rows)],
      [`tables/${name}.tex`, rowsToLatex(rows)],
    ]);
  return Object.fromEntries(files);
}
