import type { imported as english } from "../en/imported.ts";

const quoted = (texts: readonly string[]) => texts.map((text) => `„${text}“`).join(", ");
const orders = { dmy: "der Tag", mdy: "der Monat", ymd: "das Jahr" };

const whyKept = {
  unread: "lässt sich nicht als Uhrzeit lesen",
  second: "steht bei einem Datum, das schon eine Uhrzeit hat",
  "no-day": "steht bei keinem Datum",
};

/** What is told of an import: beside the clean file, and when it is made. */
export const imported: typeof english = {
  assumed: {
    "header-below": (f) => `Zeile ${f.header} benennt die Spalten; darüber stehen Überschriften.`,
    "two-line-head": (f) => `Die Zeilen ${f.first} und ${f.second} benennen die Spalten gemeinsam.`,
    "header-anew": (f) =>
      `Zeile ${f.header} benennt die Spalten anders; die Zeilen darunter werden danach gelesen.`,
    "unit-column": (f) => `„${f.header}“ nennt die Einheit von „${f.column}“, Zeile für Zeile.`,
    "column-read": (f) => `„${f.header}“ wird als ${f.column} gelesen.`,
    "column-kept": (f) => `„${f.header}“ kennt evencatch nicht; die Spalte bleibt, wie sie ist.`,
    "column-left-out": (f) => `„${f.header}“ bleibt weg, wie von Ihnen gesagt.`,
    "filled-merged": (f) => `„${f.column}“: Verbundene Zellen gelten für alle ihre Zeilen.`,
    "filled-down": (f) => `${f.column}: Eine leere Zelle bedeutet dasselbe wie die darüber.`,
    "ditto-read": (f) =>
      `„${f.column}“: Ein Wiederholungszeichen bedeutet dasselbe wie die Zelle darüber.`,
    "taken-from-title": (f) => `${f.column} ist „${f.value}“, wie die Überschrift sagt.`,
    "set-for-all": (f) =>
      `${f.column} ist „${f.value}“, wo die Datei nichts angibt, wie von Ihnen gesagt.`,
    "catches-numbered": () => "Die Proben sind in der Folge ihrer Zeilen nummeriert.",
    "fill-goes-on": (f) =>
      `Füllung ${f.fill} aus Tank ${f.bin} kommt nach einer anderen noch einmal: Ihre Proben werden weitergezählt, als dieselbe Füllung.`,
    "fills-numbered": (f) =>
      `Die Füllungen sind in der Folge nummeriert, in der ihre Namen vorkommen: ${quoted(f.names)}.`,
    "number-in-text": (f) => `„${f.column}“: Von einem Text zählt die Zahl darin.`,
    "unit-in-cells": (f) => `„${f.column}“: Die Einheit ${f.unit} steht in den Zellen.`,
    "unit-written-once": (f) =>
      `„${f.column}“: Die Einheit ${f.unit} steht in einigen Zellen und gilt für alle.`,
    "unit-converted": (f) => `„${f.column}“ ist von ${f.from} in ${f.to} umgerechnet.`,
    "thousands-read": (f) => `„${f.column}“: Zeichen zwischen Tausendern sind weggelassen.`,
    "decimal-told": (f) =>
      `Vor den Nachkommastellen steht ${f.mark === "comma" ? "ein Komma" : "ein Punkt"}, wie von Ihnen gesagt.`,
    "dates-ordered": (f) =>
      f.by === null
        ? `Beim Datum steht ${orders[f.order]} zuerst, wie von Ihnen gesagt.`
        : `Beim Datum steht ${orders[f.order]} zuerst, denn „${f.by}“ lässt sich nicht anders lesen.`,
    "dates-read": (f) => `Beim Datum steht das Jahr jetzt vorn: „${f.example}“ als ${f.date}.`,
    "dates-left-out": (f) =>
      `„${f.column}“: ${quoted(f.texts)} lässt sich nicht als Datum lesen; die Probe hat keines, und der Text steht daneben.`,
    "times-left-out": (f) =>
      `„${f.column}“: ${quoted(f.texts)} ${whyKept[f.why]}; der Text steht neben der Probe.`,
    "time-joined": (f) => `„${f.header}“ ist die Uhrzeit zum Datum.`,
    "windows-1252": (f) =>
      `Die Datei ist nicht UTF-8 und wird als Windows-1252 gelesen, etwa ${quoted(f.words)}: Sehen Sie nach, ob diese Wörter stimmen.`,
    "spilled-read": (f) =>
      `„${f.text}“ anstelle einer Masse: Die Probe bleibt weg, mit diesem Grund.`,
    "word-read": (f) => `„${f.column}“: „${f.text}“ wird als „${f.as}“ gelesen.`,
    "catch-like-mean": (f) =>
      `„${f.column}“: Eine Zahl, die ${f.figure === "mean" ? "das Mittel" : "die Summe"} derer darüber ist, gilt als Probe, denn darunter gehen die Zeilen weiter.`,
    "one-bin": (f) =>
      `Weder Tank noch Produkt noch Füllung sind genannt; ${f.catches === 1 ? "die Probe gilt" : `die ${f.catches} Proben gelten`} als erste Füllung eines Tanks.`,
  },
  reasons: {
    title: "eine Überschrift",
    "header-again": "benennt die Spalten noch einmal",
    heading: "eine Zwischenüberschrift",
    mean: "ein Mittelwert",
    total: "eine Summe",
    "other-figure": "aus anderen Zeilen berechnet",
    "no-mass": "keine Masse",
    "no-figures": "keine Zahlen",
    told: "wie von Ihnen gesagt",
    "other-sheet": "ein Blatt ohne Proben",
  },
  title: "Wie die Proben gelesen wurden",
  headings: { assumed: "Angenommen", asked: "Gefragt", setAside: "Beiseitegelegt" },
  nothing: { assumed: "Nichts.", asked: "Nichts.", setAside: "Keine Zeile." },
  place: (f) => (f.sheet === null ? f.source : `${f.source}, Blatt „${f.sheet}“`),
  rows: (f) => (f.count === 1 ? `Zeile ${f.rows}.` : `${f.count}-mal, Zeilen ${f.rows}.`),
  asideRow: (f) => `Zeile ${f.row}, ${f.why}: ${f.text}`,
  summary: (f) =>
    `${f.catches === 1 ? "1 Probe" : `${f.catches} Proben`} nach ${f.file} geschrieben; Annahmen: ${f.assumed}, beiseitegelegte Zeilen: ${f.setAside}. Lesen Sie, was angenommen wurde, bevor Sie damit arbeiten.`,
  notRead: (files) =>
    `Nicht gelesen, weil keine Tabelle so endet: ${files.slice(0, 6).join(", ")}${files.length > 6 ? ", …" : ""}`,
  listed: (file) => `Aufgelistet in ${file}`,
  notYet: (f) =>
    `Nichts wurde geschrieben: ${f.questions === 1 ? "1 Frage ist" : `${f.questions} Fragen sind`} offen. Antworten Sie, und führen Sie den Befehl noch einmal aus; --help nennt alle Antworten.`,
};
