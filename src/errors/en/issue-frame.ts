import type { IssueFrame } from "../issue-text.ts";

const sheet = {
  row: "row",
  column: "column",
  cell: "cell",
  rows: "rows",
  theRow: "the row",
  theColumn: "the column",
  theCell: "the cell",
};

/** What stands around a problem. */
export const issueFrame: IssueFrame = {
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
