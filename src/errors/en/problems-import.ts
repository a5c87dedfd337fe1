import type { Phrases } from "../issue-text.ts";
import type { ImportProblems } from "../problems/import.ts";

const quoted = (names: readonly string[]) => names.map((name) => `"${name}"`).join(", ");

/** What is asked or refused where files are imported, read together or added to. */
export const importProblems: Phrases<ImportProblems> = {
  "header-not-found": {
    found: "no row that names columns",
    expected: "a row with a name for turns and for a mass",
    remedy: "Say what your names mean, such as `--map Revs=turns --map Weight=net_kg`.",
  },
  "columns-alike": {
    found: (f) => `${quoted(f.headers)}, which all may be ${f.name}`,
    expected: "to know which one is meant",
    remedy: (f) => `Answer with \`--map "${f.headers[0]}=${f.name}"\`, or another of them.`,
  },
  "weight-kind": {
    expected: "to know whether the container was weighed with it",
    remedy: (f) =>
      `Answer with \`--map "${f.header}=net_${f.unit ?? "kg"}"\` where it was not, else with gross_${f.unit ?? "kg"}${f.unit === null ? "; g, lb or oz stand in place of kg where the scale shows them" : ""}.`,
  },
  "mass-column-open": {
    found: (f) =>
      f.headers.length === 0
        ? "no column for a mass"
        : `no column for a mass among ${quoted(f.headers)}`,
    expected: "to know the mass of each catch",
    remedy: (f) =>
      f.likely === null
        ? "Write it into a column of its own, such as net_kg."
        : `Answer with \`--map "${f.likely}=net_${f.unit ?? "kg"}"\` where that is the mass, or with gross_${f.unit ?? "kg"} where the container was weighed with it${f.unit === null ? "; g, lb or oz stand in place of kg where the scale shows them" : ""}.`,
  },
  "catches-side-by-side": {
    found: (f) => `several masses beside one another: ${quoted(f.headers)}`,
    expected: "a row for each catch",
    remedy:
      "Write the catches one below another, their masses in one column such as net_kg, and leave out means.",
  },
  "unit-blank": {
    expected: (f) => `the unit of the mass beside it, as in other rows: ${f.units.join(", ")}`,
    remedy: "Write the unit into every row of this column.",
  },
  "mass-unit-open": {
    expected: "to know its unit",
    remedy: (f) =>
      `Answer with \`--map "${f.header}=${f.kind}_kg"\`, or with g, lb or oz in place of kg.`,
  },
  "column-open": {
    found: (f) =>
      f.headers.length === 0 ? "no column for it" : `no column for it among ${quoted(f.headers)}`,
    expected: (f) => `to know the ${f.name} of each catch`,
    remedy: (f) =>
      `Answer with \`--map "Header=${f.name}"\`, or with \`--set ${f.name}=…\` where it is the same for all${f.sheets ? `, or with \`--map sheet=${f.name}\` where the name of the sheet says it` : ""}.`,
  },
  "dates-two-ways": {
    expected: "to know whether the day or the month stands first",
    remedy:
      "Answer with `--dates dmy` or `--dates mdy`. Until then the catches are read without these dates.",
  },
  "decimal-two-ways": {
    expected: "to know whether its mark stands before decimals or between thousands",
    remedy: "Answer with `--decimal comma` or `--decimal point`, whichever stands before decimals.",
  },
  "blank-below": {
    expected: (f, at) => `to know whether it is the same as in ${at.row} ${f.writtenRow}`,
    remedy: (f) => `If so, answer with \`--fill-down ${f.name}\`; if not, fill ${f.name} in.`,
  },
  "catch-or-mean": {
    expected: (f) =>
      `to know whether it is a catch, since it is the ${f.figure === "mean" ? "mean" : "sum"} of those above it`,
    remedy: (_, at) =>
      `If it is worked out from them, answer with \`--aside\` and the number of its ${at.row}; if it is a catch, fill in its blank cells.`,
  },
  "fill-in-two-places": {
    found: (f) => `a fill that stands in ${f.first} too, with catches that have no numbers`,
    expected: "to know whether it is the same fill",
    remedy: ({ by }) =>
      `If each ${by} is of another machine or season, answer with \`--map ${by}=machine\` or \`--map ${by}=season\`; if the fill goes on from ${by} to ${by}, with \`--map ${by}=-\`; if a ${by} is there twice, leave one out.`,
  },
  "catch-in-two-places": {
    found: (f) => `a catch that stands in ${f.first} too`,
    expected: "each catch once",
    remedy: ({ by }) =>
      `Two machines, or two seasons? If the ${by === "--map sheet" ? "sheet" : "file"} is named by it, say so, such as \`${by === "--key" ? "--key season=file" : `${by}=season`}\`. Otherwise leave one of them out, or give its catches numbers of their own.`,
  },
  "file-copied": {
    found: (f) => `the same file as ${f.first}, byte for byte`,
    expected: "each log once, since its meters would count twice",
    remedy: "Leave one of the two out.",
  },
  "no-tables": {
    found: "a folder without a table",
    expected: "a file that ends in .csv, .tsv, .txt or .xlsx, in it or below it",
    remedy: "Give another folder, or the files themselves. An older .xls is saved as .xlsx first.",
  },
  "not-appendable": {
    found: "a file that rows cannot be added to",
    expected: "a table that ends in .csv, .tsv or .txt",
    remedy: "Save it as CSV, and add to that file from now on.",
  },
};
