import type { Phrases } from "../../errors/issue-text.ts";
import type { ImportProblems } from "../../errors/problems/import.ts";

const quoted = (names: readonly string[]) => names.map((name) => `„${name}“`).join(", ");

/** What is asked of a file of somebody's own. */
export const importProblems: Phrases<ImportProblems> = {
  "header-not-found": {
    found: "keine Zeile, die Spalten benennt",
    expected: "eine Zeile mit einem Namen für die Umdrehungen und für eine Masse",
    remedy: "Sagen Sie, was Ihre Namen bedeuten, etwa `--map Revs=turns --map Weight=net_kg`.",
  },
  "columns-alike": {
    found: (f) => `${quoted(f.headers)}, die alle „${f.name}“ sein können`,
    expected: "zu wissen, welche gemeint ist",
    remedy: (f) =>
      `Antworten Sie mit \`--map "${f.headers[0]}=${f.name}"\` oder mit einem der anderen Namen.`,
  },
  "weight-kind": {
    expected: "zu wissen, ob der Behälter mitgewogen wurde",
    remedy: (f) =>
      `Antworten Sie mit \`--map "${f.header}=net_${f.unit ?? "kg"}"\`, wenn nicht, sonst mit „gross_${f.unit ?? "kg"}“${f.unit === null ? "; zeigt die Waage g, lb oder oz, steht das anstelle von kg" : ""}.`,
  },
  "mass-unit-open": {
    expected: "zu wissen, in welcher Einheit",
    remedy: (f) =>
      `Antworten Sie mit \`--map "${f.header}=${f.kind}_kg"\`, oder mit g, lb oder oz anstelle von kg.`,
  },
  "column-open": {
    found: (f) =>
      f.headers.length === 0
        ? "keine Spalte dafür"
        : `keine Spalte dafür unter ${quoted(f.headers)}`,
    expected: (f) => `zu wissen, was bei jeder Probe „${f.name}“ ist`,
    remedy: (f) =>
      `Antworten Sie mit \`--map "Header=${f.name}"\`, oder mit \`--set ${f.name}=…\`, wenn es bei allen dasselbe ist${f.sheets ? `, oder mit \`--map sheet=${f.name}\`, wenn der Name des Blattes es sagt` : ""}.`,
  },
  "dates-two-ways": {
    expected: "zu wissen, ob Tag oder Monat zuerst steht",
    remedy:
      "Antworten Sie mit `--dates dmy` oder `--dates mdy`. Bis dahin werden die Proben ohne diese Daten gelesen.",
  },
  "blank-below": {
    expected: (f, at) => `zu wissen, ob es dasselbe ist wie in ${at.row} ${f.writtenRow}`,
    remedy: (f) =>
      `Wenn ja, antworten Sie mit \`--fill-down ${f.name}\`; wenn nicht, tragen Sie es ein.`,
  },
};
