import type { problems as english } from "../../errors/en/problems.ts";
import { fileProblems } from "./problems-file.ts";
import { importProblems } from "./problems-import.ts";
import { optionProblems } from "./problems-option.ts";
import { poolProblems } from "./problems-pool.ts";
import { programProblems } from "./problems-program.ts";
import { setupProblems } from "./problems-setup.ts";
import { tableProblems } from "./problems-table.ts";

const sheet = {
  row: "Zeile",
  column: "Spalte",
  cell: "Zelle",
  rows: "Zeilen",
  theRow: "die Zeile",
  theColumn: "die Spalte",
  theCell: "die Zelle",
};

/** What is said of problems. */
export const problems: typeof english = {
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
      row: "Eintrag",
      column: "Feld",
      cell: "Feld",
      rows: "Einträge",
      theRow: "den Eintrag",
      theColumn: "das Feld",
      theCell: "das Feld",
    },
    line: { ...sheet, column: "bei" },
  },
  nothing: "nichts",
  quoted: (text) => `„${text}“`,
  text: (f) => `${f.where}: gefunden ${f.found}; nötig ${f.expected}. ${f.remedy}`,
  summary: (problems) => (problems === 1 ? "1 Problem" : `${problems} Probleme`),
  more: (problems) => `und ${problems} weitere`,
  andOthers: (found) => `${found} und andere`,
  times: (f) => `${f.rows} (${f.count}-mal)`,
  alike: (rows) =>
    rows === 1
      ? "Dasselbe stimmt in 1 weiteren Zeile nicht."
      : `Dasselbe stimmt in ${rows} weiteren Zeilen nicht.`,
  none: (catches) => `${catches === 1 ? "1 Probe" : `${catches} Proben`}, nichts auszusetzen.`,
  lookAt: "ansehen:",
};
