import type { problems as english } from "../../errors/en/problems.ts";
import { fileProblems } from "./problems-file.ts";
import { optionProblems } from "./problems-option.ts";
import { poolProblems } from "./problems-pool.ts";
import { programProblems } from "./problems-program.ts";
import { setupProblems } from "./problems-setup.ts";
import { tableProblems } from "./problems-table.ts";

const sheet = {
  row: "Zeile",
  column: "Spalte",
  cell: "Zelle",
  theRow: "die Zeile",
  theColumn: "die Spalte",
  theCell: "die Zelle",
};

/** What is said of problems. */
export const problems: typeof english = {
  problems: {
    ...fileProblems,
    ...tableProblems,
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
  alike: (rows) =>
    rows === 1
      ? "Dasselbe stimmt in 1 weiteren Zeile nicht."
      : `Dasselbe stimmt in ${rows} weiteren Zeilen nicht.`,
  none: (catches) => `${catches === 1 ? "1 Probe" : `${catches} Proben`}, nichts auszusetzen.`,
  lookAt: "ansehen:",
};
