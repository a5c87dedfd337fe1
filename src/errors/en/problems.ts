import type { ProblemTemplates } from "../issue-text.ts";
import { fileProblems } from "./problems-file.ts";
import { importProblems } from "./problems-import.ts";
import { optionProblems } from "./problems-option.ts";
import { poolProblems } from "./problems-pool.ts";
import { programProblems } from "./problems-program.ts";
import { setupProblems } from "./problems-setup.ts";
import { tableProblems } from "./problems-table.ts";

const sheet = {
  row: "row",
  column: "column",
  cell: "cell",
  rows: "rows",
  theRow: "the row",
  theColumn: "the column",
  theCell: "the cell",
};

/** What is said of problems: here and not with the other words, since an error must be able to say what it is about. */
export const problems: ProblemTemplates = {
  problems: {
    ...fileProblems,
    ...tableProblems,
    ...importProblems,
    ...poolProblems,
    ...programProblems,
    ...setupProblems,
  },
  options: optionProblems,
  nouns: {
    row: sheet,
    entry: {
      row: "entry",
      column: "field",
      cell: "field",
      rows: "entries",
      theRow: "the entry",
      theColumn: "the field",
      theCell: "the field",
    },
    line: { ...sheet, row: "line", rows: "lines", column: "at" },
  },
  nothing: "nothing",
  quoted: (text) => `"${text}"`,
  text: (f) => `${f.where}: found ${f.found}; needed ${f.expected}. ${f.remedy}`,
  summary: (problems) => (problems === 1 ? "1 problem" : `${problems} problems`),
  more: (problems) => `and ${problems} more`,
  andOthers: (found) => `${found} and others`,
  times: (f) => `${f.rows} (${f.count} times)`,
  alike: (rows) =>
    rows === 1 ? "The same is wrong in 1 more row." : `The same is wrong in ${rows} more rows.`,
  none: (catches) => `${catches === 1 ? "1 catch" : `${catches} catches`}, nothing wrong.`,
  lookAt: "look at",
};
