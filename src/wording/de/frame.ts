import type { FrameWords } from "../frame.ts";

/** The frame of a report in German. */
export const frame: FrameWords = {
  skipToContent: "Zum Inhalt springen",
  contents: "Inhalt",
  notKnown: "nicht bekannt",
  chart: "Diagramm",
  specification: "Spezifikation",
  thinned: {
    catches: (drawn, all, few) =>
      `Gezeichnet sind ${drawn} von ${all} Proben: von je ${few} eine, dazu die höchste, die niedrigste und alle auffälligen.`,
    fills: (drawn, all) =>
      `Gezeichnet sind ${drawn} von ${all} Füllungen: von je einigen die höchste und die niedrigste, dazu alle auffälligen.`,
    influences: (drawn, all) =>
      `Gezeigt sind die ${drawn} von ${all} Proben, die am Austrag am meisten ändern.`,
  },
  severity: { note: "Anmerkung", doubt: "Zweifelhaft", serious: "Schwerwiegend" },
};
