import type { Phrases } from "../../errors/issue-text.ts";
import type { Counted, FileProblems } from "../../errors/problems/file.ts";
import { decimal } from "./decimal.ts";

const table = "eine erste Zeile mit den Namen der Spalten und eine Zeile je Probe";
const oldWorkbook = "eine alte .xls-Arbeitsmappe oder eine mit Kennwort";
const plainText = "reiner Text";
const readable = "eine lesbare Datei";
const workbook = "eine .xlsx-Arbeitsmappe";
const asTable = "Speichern Sie die Tabelle als CSV oder .xlsx, und geben Sie diese Datei an.";
const saveWorkbook =
  "Öffnen Sie sie in einer Tabellenkalkulation, und speichern Sie sie als .xlsx ohne Kennwort oder als CSV.";
const writeThemIn = "Tragen Sie die Proben ein, und speichern Sie die Datei.";

const contents = {
  table,
  list: "eine Liste der Proben",
  setup: "Einstellungen in geschweiften Klammern, {}, zwischen denen nichts stehen muss",
  spreads: "eine Bibliothek von Streuungen, wie `evencatch spreads` sie schreibt",
};

const counted: Readonly<Record<Counted, string>> = {
  rows: "Zeilen",
  entries: "Einträge",
  columns: "Spalten",
  cells: "Zellen",
};

const quoted = (names: readonly string[]) => names.map((name) => `„${name}“`).join(", ");

/** What is said of a file that cannot be opened, or is no table or setup at all. */
export const fileProblems: Phrases<FileProblems> = {
  "file-not-found": {
    found: (f) => `keine Datei dieses Namens in ${f.folder}`,
    expected: "eine Datei, die es gibt",
    remedy: "Prüfen Sie Schreibweise und Endung, und ob es der richtige Ordner ist.",
  },
  "is-folder": {
    found: "ein Ordner",
    expected: readable,
    remedy: "Geben Sie den Namen der Datei darin an.",
  },
  "is-device": {
    found: "ein Gerät oder eine Pipe",
    expected: readable,
    remedy: "Speichern Sie die Tabelle in einer Datei, und geben Sie deren Namen an.",
  },
  "may-not-open": {
    found: "eine Datei, die Sie nicht öffnen dürfen",
    expected: readable,
    remedy: "Lassen Sie sich das Recht dazu geben, oder kopieren Sie sie in einen eigenen Ordner.",
  },
  "cannot-open": {
    found: (f) =>
      `eine Datei, die sich nicht öffnen lässt${f.systemCode === null ? "" : ` (${f.systemCode})`}`,
    expected: readable,
    remedy:
      "Prüfen Sie, ob der Name stimmt und ob sich die Datei in dem Programm öffnen lässt, aus dem sie stammt.",
  },
  "ending-unknown": {
    found: (f) => (f.ending === null ? "ein Name ohne Endung" : `die Endung „${f.ending}“`),
    expected: "eine Datei, die auf .csv, .tsv, .txt, .xlsx oder .json endet",
    remedy:
      "Speichern Sie die Tabelle in dem Programm, aus dem sie stammt, als .xlsx oder CSV, und geben Sie diese Datei an; die Datei nur umzubenennen ändert nichts an ihrer Art.",
  },
  "setup-not-json": {
    expected: "eine Setup-Datei, die auf .json endet",
    remedy: "`evencatch template` schreibt eine leere.",
  },
  "spreads-not-json": {
    expected: "eine Bibliothek von Streuungen, die auf .json endet",
    remedy: "`evencatch spreads` schreibt eine.",
  },
  "classes-column-missing": {
    expected: (f) => `eine Spalte namens ${f.name}`,
    remedy: "Eine Tabelle der Klassen hat zwei Spalten, product und class.",
  },
  "classes-product-twice": {
    expected: (f) => `eine Klasse je Produkt; weiter oben steht „${f.first}“`,
    remedy: "Löschen Sie eine der beiden Zeilen.",
  },
  "spreads-too-few": {
    found: (f) =>
      f.bins === 1 ? "1 Tank in der größten Klasse" : `${f.bins} Tanks in der größten Klasse`,
    expected: (f) =>
      `mindestens ${f.least} Tanks in einer Klasse, damit kein einzelner Dosierer erkennbar ist`,
    remedy: "Führen Sie mehr Protokolle zusammen, oder fassen Sie die Klassen weiter.",
  },
  "file-too-large": {
    found: (f) => `eine Datei von ${f.megabytes} MB`,
    expected: (f) => `höchstens ${f.most} MB bei dieser Art von Datei`,
    remedy:
      "Prüfen Sie, ob es die Datei mit den Proben ist; wenn ja, teilen Sie sie nach Saison oder nach Tank auf.",
  },
  "too-many": {
    found: (f) => `${f.count} ${counted[f.what]}`,
    expected: (f) => `höchstens ${f.most} ${counted[f.what]}`,
    remedy: (f) =>
      f.what === "columns"
        ? "Löschen Sie die leeren Spalten und alle, die mit den Proben nichts zu tun haben."
        : "Löschen Sie leere Zeilen und Spalten; sind es wirklich so viele Proben, teilen Sie die Datei nach Saison oder nach Tank auf.",
  },
  "rest-not-read": {
    found: (f) =>
      `${f.rows === 1 ? "1 weitere Zeile" : `${f.rows} weitere Zeilen`} nach so vielen Fehlern`,
    expected: "eine Datei, deren erste Zeilen lesbar sind",
    remedy: "Beheben Sie, was oben genannt ist, und lesen Sie die Datei noch einmal ein.",
  },
  "setup-too-long": {
    found: (f) => `${f.count} ${f.what === "MB" ? "MB" : counted.entries}`,
    expected: (f) => `höchstens ${f.most} ${f.what === "MB" ? "MB" : counted.entries}`,
    remedy:
      "Prüfen Sie, ob es die Datei mit den Einstellungen ist; wenn ja, nehmen Sie heraus, was nicht mehr gebraucht wird.",
  },
  "file-empty": {
    found: "eine leere Datei",
    expected: (f) => contents[f.wanted],
    remedy: "Prüfen Sie, ob die Datei gespeichert wurde und ob es die richtige ist.",
  },
  "zip-archive": {
    found: "ein ZIP-Archiv, wie es auch eine .xlsx-Arbeitsmappe ist",
    expected: plainText,
    remedy:
      "Ist es eine Arbeitsmappe, muss ihr Name auf .xlsx enden; sonst entpacken Sie es, und geben Sie die Tabelle darin an.",
  },
  "old-workbook": {
    found: oldWorkbook,
    expected: plainText,
    remedy: "Speichern Sie sie als .xlsx ohne Kennwort oder als CSV.",
  },
  image: { found: (f) => `ein ${f.format}-Bild`, expected: plainText, remedy: asTable },
  "pdf-document": { found: "ein PDF-Dokument", expected: plainText, remedy: asTable },
  "gzip-archive": {
    found: "ein gzip-Archiv",
    expected: plainText,
    remedy: "Entpacken Sie es, und geben Sie die Tabelle darin an.",
  },
  "utf16-unmarked": {
    found: "allem Anschein nach UTF-16-Text ohne seine Kennung",
    expected: plainText,
    remedy: "Speichern Sie die Datei als UTF-8.",
  },
  "binary-file": {
    found: "eine Datei, die kein Text ist",
    expected: plainText,
    remedy:
      "Geben Sie die Tabelle selbst an, als CSV, .xlsx oder .json gespeichert in dem Programm, das sie anzeigt.",
  },
  "not-utf8": {
    found: "Zeichen, die nicht UTF-8 sind",
    expected: "eine als UTF-8 gespeicherte Datei",
    remedy:
      "Öffnen Sie sie in dem Programm, aus dem sie stammt, und speichern Sie sie als „CSV UTF-8“ (oder als UTF-8-Text) oder als .xlsx.",
  },
  "line-too-long": {
    found: (f) => `eine Zeile von mehr als ${f.most} Zeichen`,
    expected: "Zeilen mit je einer Probe",
    remedy:
      "Prüfen Sie, ob es die Datei mit den Proben ist, als CSV gespeichert, mit einem Zeilenumbruch nach jeder Zeile.",
  },
  "quote-stray": {
    found: "ein Anführungszeichen, das nicht geschlossen wird, oder Text hinter einem schließenden",
    expected: "Anführungszeichen paarweise um eine ganze Zelle",
    remedy:
      'Suchen Sie das Zeichen in dieser Zeile; löschen Sie es, oder schreiben Sie es doppelt (""), wenn es zum Text gehört.',
  },
  "too-many-cells": {
    found: (f) => `${f.cells} Zellen`,
    expected: (f) => `höchstens ${f.columns}, eine je Spalte der Kopfzeile`,
    remedy: (f) =>
      f.comma
        ? "Ein Komma in einer Zahl oder in einem Text macht zwei Zellen daraus: Setzen Sie die Zelle in Anführungszeichen, oder schreiben Sie die Zahl mit Dezimalpunkt."
        : "Setzen Sie einen Text, der das Trennzeichen enthält, in Anführungszeichen.",
  },
  "no-rows": {
    found: "eine Kopfzeile und nichts darunter",
    expected: "eine Zeile je Probe",
    remedy: writeThemIn,
  },
  "all-excluded": {
    found: "jede Probe weggelassen",
    expected: "mindestens eine Probe, die zählt",
    remedy: "Lassen Sie eine gute wieder gelten, oder drehen Sie noch einmal ab.",
  },
  "not-json": {
    found: (f) =>
      f.near === null
        ? "JSON, das abbricht oder einen Schreibfehler hat"
        : `ein Schreibfehler im JSON bei „${f.near}“`,
    expected: "gültiges JSON",
    remedy:
      "Suchen Sie dort nach einem Komma, einem Anführungszeichen oder einer Klammer zu viel oder zu wenig; Kommentare gibt es in JSON nicht.",
  },
  "no-list": {
    found: "keine Liste von Proben",
    expected: 'eine Liste [{"bin": "1", …}, …] oder ein Objekt mit einer solchen unter "catches"',
    remedy: "Schreiben Sie ein Objekt je Probe, mit denselben Namen wie die Spalten eines Blattes.",
  },
  "no-entries": {
    found: "eine leere Liste",
    expected: "ein Eintrag je Probe",
    remedy: writeThemIn,
  },
  "entry-no-object": {
    found: "etwas anderes als ein Objekt",
    expected: 'ein Objekt mit den Namen der Spalten, {"bin": "1", …}',
    remedy: "Schreiben Sie ein Objekt je Probe, oder löschen Sie den Eintrag.",
  },
  "value-no-cell": {
    found: "eine Liste oder ein Objekt",
    expected: "ein Text, eine Zahl, true, false oder null",
    remedy: "Geben Sie jeder Zahl ein eigenes Feld.",
  },
  "not-a-workbook": {
    found: "eine Datei, die keine vollständige .xlsx-Arbeitsmappe ist",
    expected: workbook,
    remedy: saveWorkbook,
  },
  "workbook-damaged": {
    found: "eine Arbeitsmappe, die abbricht oder unterwegs beschädigt wurde",
    expected: "eine vollständige .xlsx-Arbeitsmappe",
    remedy:
      "Kopieren oder schicken Sie sie noch einmal von dort, wo sie gespeichert wurde, oder speichern Sie die Tabelle dort als CSV.",
  },
  "workbook-too-large": {
    found: (f) => `eine Arbeitsmappe, die entpackt ${f.megabytes} MB groß ist`,
    expected: (f) => `höchstens ${f.most} MB`,
    remedy: "Speichern Sie das Blatt mit den Proben allein als CSV, und geben Sie diese Datei an.",
  },
  "workbook-old": { found: oldWorkbook, expected: workbook, remedy: saveWorkbook },
  "sheet-not-found": {
    found: (f) =>
      f.sheet === null ? "eine Arbeitsmappe ohne Blatt" : `kein Blatt mit dem Namen „${f.sheet}“`,
    expected: (f) =>
      f.sheets.length === 0 ? "ein Blatt mit Proben" : `eines der Blätter ${quoted(f.sheets)}`,
    remedy:
      "Geben Sie den Namen des Blattes an, wie er auf seinem Reiter steht, oder keinen für das erste Blatt.",
  },
  "area-without-drive": {
    expected: (f) =>
      `Umdrehungen, oder ein Setup, aus dem die Umdrehungen je Hektar für Tank ${f.bin} (${f.product}) folgen`,
    remedy: (_, at) =>
      `Geben Sie in der Setup-Datei turns_per_hectare an, oder working_width, wheel_circumference und die Übersetzung des Antriebs; oder tragen Sie die Umdrehungen ein, und leeren Sie ${at.theCell}.`,
  },
  "area-disagrees": {
    expected: (f) =>
      `etwa ${decimal(f.turns)}, die Umdrehungen, die nach der Setup-Datei zu ${f.area} ${f.unit} gehören`,
    remedy: (_, at) =>
      `Sehen Sie nach, was von Umdrehungen, Fläche und Antrieb nicht stimmt. Stimmen die Umdrehungen, dann leeren Sie ${at.theCell} der Fläche.`,
  },
  "sheet-empty": {
    found: (f) => `ein leeres Blatt „${f.sheet}“`,
    expected: table,
    remedy: (f) =>
      f.others.length === 0
        ? "Prüfen Sie, ob die Arbeitsmappe gespeichert wurde und ob es die richtige ist."
        : `Die Arbeitsmappe hat noch andere Blätter, ${quoted(f.others)}; nennen Sie das mit den Proben.`,
  },
};
