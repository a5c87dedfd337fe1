import type { Phrases } from "../../errors/issue-text.ts";
import type { ImportProblems } from "../../errors/problems/import.ts";

const quoted = (names: readonly string[]) => names.map((name) => `„${name}“`).join(", ");

/** What is asked or refused where files are imported, read together or added to. */
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
  "mass-column-open": {
    found: (f) =>
      f.headers.length === 0
        ? "keine Spalte für eine Masse"
        : `keine Spalte für eine Masse unter ${quoted(f.headers)}`,
    expected: "zu wissen, welche Masse jede Probe hat",
    remedy: (f) =>
      f.likely === null
        ? "Schreiben Sie sie in eine eigene Spalte, etwa „net_kg“."
        : `Antworten Sie mit \`--map "${f.likely}=net_${f.unit ?? "kg"}"\`, wenn das die Masse ist, oder mit „gross_${f.unit ?? "kg"}“, wenn der Behälter mitgewogen wurde${f.unit === null ? "; zeigt die Waage g, lb oder oz, steht das anstelle von kg" : ""}.`,
  },
  "catches-side-by-side": {
    found: (f) => `mehrere Massen nebeneinander: ${quoted(f.headers)}`,
    expected: "eine Zeile für jede Probe",
    remedy:
      "Schreiben Sie die Proben untereinander, ihre Massen in eine Spalte, etwa „net_kg“, und lassen Sie Mittelwerte weg.",
  },
  "unit-blank": {
    expected: (f) => `die Einheit der Masse daneben, wie in anderen Zeilen: ${f.units.join(", ")}`,
    remedy: "Schreiben Sie die Einheit in jede Zeile dieser Spalte.",
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
  "decimal-two-ways": {
    expected: "zu wissen, ob das Zeichen vor Nachkommastellen steht oder Tausender trennt",
    remedy:
      "Antworten Sie mit `--decimal comma` oder `--decimal point`, je nachdem, was vor den Nachkommastellen steht.",
  },
  "blank-below": {
    expected: (f, at) => `zu wissen, ob es dasselbe ist wie in ${at.row} ${f.writtenRow}`,
    remedy: (f) =>
      `Wenn ja, antworten Sie mit \`--fill-down ${f.name}\`; wenn nicht, tragen Sie es ein.`,
  },
  "catch-or-mean": {
    expected: (f) =>
      `zu wissen, ob es eine Probe ist, denn es ist ${f.figure === "mean" ? "das Mittel" : "die Summe"} derer darüber`,
    remedy:
      "Ist es daraus berechnet, antworten Sie mit `--aside` und der Nummer der Zeile; ist es eine Probe, füllen Sie ihre leeren Zellen aus.",
  },
  "fill-in-two-places": {
    found: (f) => `eine Füllung, die auch in ${f.first} steht, mit Proben ohne Nummern`,
    expected: "zu wissen, ob es dieselbe Füllung ist",
    remedy: ({ by }) =>
      `Gehört jede${by === "sheet" ? "s Blatt" : " Datei"} zu einer anderen Maschine oder Saison, antworten Sie mit \`--map ${by}=machine\` oder \`--map ${by}=season\`; geht die Füllung von ${by === "sheet" ? "Blatt zu Blatt" : "Datei zu Datei"} weiter, mit \`--map ${by}=-\`; ist ${by === "sheet" ? "ein Blatt" : "eine Datei"} doppelt, lassen Sie ${by === "sheet" ? "eines" : "eine"} weg.`,
  },
  "catch-in-two-places": {
    found: (f) => `eine Probe, die auch in ${f.first} steht`,
    expected: "jede Probe nur einmal",
    remedy: ({ by }) =>
      `Zwei Maschinen oder zwei Saisons? Ist ${by === "--map sheet" ? "das Blatt" : "die Datei"} danach benannt, sagen Sie es, etwa mit \`${by === "--key" ? "--key season=file" : `${by}=season`}\`. Sonst lassen Sie ${by === "--map sheet" ? "eines" : "eine"} davon weg, oder geben Sie ihren Proben eigene Nummern.`,
  },
  "file-copied": {
    found: (f) => `dieselbe Datei wie ${f.first}, Byte für Byte`,
    expected: "jede Datei nur einmal, denn ihre Dosierer zählten sonst doppelt",
    remedy: "Lassen Sie eine der beiden weg.",
  },
  "no-tables": {
    found: "einen Ordner ohne Tabelle",
    expected: "eine Datei darin oder darunter, die auf .csv, .tsv, .txt oder .xlsx endet",
    remedy:
      "Geben Sie einen anderen Ordner an oder die Dateien selbst. Eine ältere .xls speichern Sie zuerst als .xlsx.",
  },
  "not-appendable": {
    found: "eine Datei, an die sich keine Zeilen anfügen lassen",
    expected: "eine Tabelle, die auf .csv, .tsv oder .txt endet",
    remedy: "Speichern Sie sie als CSV, und fügen Sie künftig an diese Datei an.",
  },
};
