import type { fieldCheck as english } from "../en/field-check.ts";
import { nouns } from "./nouns.ts";

const over: typeof english.correctionOfOne = (f) =>
  `Feld gegen Proben über ${f.checks} ${f.checks === 1 ? "Prüfung" : "Prüfungen"}: ${f.factor} von dem, was die Proben erwarten lassen`;

/** What is said of what the field used. */
export const fieldCheck: typeof english = {
  labels: {
    heading: "Feldprüfungen",
    detail: "Feldprüfungen in Zahlen",
    table: {
      caption: "Feldprüfungen der Reihe nach",
      check: "Prüfung",
      used: (unit) => `Verbraucht (${unit})`,
      area: (unit) => `Fläche (${unit})`,
      rate: (unit) => `Menge (${unit})`,
      intended: (unit) => `Soll (${unit})`,
      error: "Gegen die Sollmenge",
      predicted: (unit) => `Erwartet (${unit})`,
      bias: "Feld gegen Proben",
      normalisedError: "Normierte Abweichung",
      running: "Laufende Korrektur",
      unknown: "nicht bekannt",
    },
  },
  fill: (fill) => `Füllung ${fill}`,
  check: (place) => `Prüfung ${place}`,
  noCheck: (f) => `Tank ${f.bin} (${f.product}): keine Feldprüfung.`,
  sentence: (f) =>
    `Tank ${f.bin} (${f.product}), ${f.check}: Das Feld bekam ${f.rate}${f.compared === null ? "" : `, ${f.compared}`}.`,
  againstIntended: (error) => `${error} gegenüber der Sollmenge`,
  againstExpected: (error) => `${error} gegenüber dem, was die Proben erwarten lassen`,
  used: (f) => `${f.check}: ${f.mass} auf ${f.area}.`,
  areaTaken: (f) =>
    `Das ist das Feld von ${f.field}${f.shut === null ? "" : `, weniger ${f.shut} für geschlossene Reihen in Fahrgassen`}${f.overlap === null ? "" : `, dazu ${f.overlap} doppelt bestellt`}.`,
  predicted: (f) => `Nach den Proben erwartet: ${f.rate}, ${f.drive}, aus ${f.delivery}.`,
  drive: {
    "assumed delivery": "mit dem Antrieb auf dem damals angenommenen Austrag",
    "turns per hectare": "bei den Umdrehungen je Fläche, auf die der Antrieb jetzt eingestellt ist",
    "drive ratio": "bei der jetzt eingestellten Übersetzung",
  },
  delivery: {
    "this fill": "den Proben dieser Füllung",
    "any fill": "dem, was irgendeine Füllung dieses Tanks austrägt",
  },
  agreement: (f) =>
    `Feld und Proben stimmen ${f.agrees ? "" : "nicht "}überein: normierte Abweichung ${f.error} (innerhalb von ± 1 stimmen sie überein).`,
  best: (rate) => `Bester Wert aus beiden: ${rate}.`,
  notJudged: (f) =>
    `Die gefundene Menge liegt ${f.inside ? "innerhalb" : "außerhalb"} des Bereichs, den die Proben angeben; ob beide übereinstimmen, lässt sich nicht beurteilen, solange die Unsicherheit des Feldes selbst nicht bekannt ist.`,
  correction: (f) =>
    `${over(f)} (Vertrauensbereich (${f.level}) ${f.range}, t-Verteilung ${nouns.onDegrees(f.df)}).`,
  correctionOfOne: (f) => `${over(f)} (kein Vertrauensbereich bei einer Prüfung).`,
  whatTheFieldDoes:
    "Das macht das Fahren auf dem Feld; es gehört nicht zur Streuung der Proben, und mehr Proben ändern es nicht.",
  chart: {
    check: "Feldprüfung",
    kind: "Was es ist",
    rate: (unit) => `Menge (${unit})`,
    kinds: {
      field: "auf dem Feld gefunden",
      predicted: "nach den Proben erwartet",
      intended: "Soll",
    },
  },
  chartTitle: (bin) => `Feldprüfungen, Tank ${bin}`,
  chartDescription: (rates) =>
    `Auf dem Feld gefundene Menge neben der Sollmenge und der nach den Proben erwarteten: ${rates}.`,
};
