import type { poolProblems as english } from "../../errors/en/problems-pool.ts";

const textFound = {
  "utf-16": "Text in UTF-16",
  "carriage-returns": "Zeilen, die nur mit einem Wagenrücklauf enden",
  "mixed-line-ends": "Zeilen, die auf zwei Arten enden",
};

/** What is said of a file that is to be pooled. */
export const poolProblems: typeof english = {
  "pool-ending": {
    found: (f) => (f.ending === null ? "ein Name ohne Endung" : `die Endung „${f.ending}“`),
    expected: "eine Datei mit der Endung .csv, .tsv, .txt oder .parquet",
    remedy: "Speichern Sie die Tabelle als CSV, und geben Sie diese Datei an.",
  },
  "pool-text": {
    found: (f) => textFound[f.found],
    expected: "Text in UTF-8, dessen Zeilen alle gleich enden",
    remedy: "Speichern Sie die Datei als „CSV UTF-8“, und geben Sie diese an.",
  },
  "pool-not-parquet": {
    found: (f) => `keine Parquet-Datei (${f.said})`,
    expected: "eine Parquet-Datei",
    remedy:
      "Schreiben Sie sie mit dem Programm, aus dem sie stammt, noch einmal; Umbenennen allein ändert die Art nicht.",
  },
  "pool-unreadable": {
    found: (f) => `etwas, das die Datenbank nicht lesen kann (${f.said})`,
    expected: "Zeilen, die je eine Probe enthalten",
    remedy: "Suchen Sie den Fehler mit `evencatch check`, das die Datei auf andere Weise liest.",
  },
  "too-few-cells": {
    found: (f) => `${f.cells} Zellen`,
    expected: (f) => `${f.columns}, eine für jede Spalte der Kopfzeile`,
    remedy:
      "Schreiben Sie auch die Trennzeichen leerer Zellen; eine Tabellenkalkulation tut das beim Speichern.",
  },
};
