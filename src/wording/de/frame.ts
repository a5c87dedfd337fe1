import type { FrameWords } from "../frame.ts";

/** The frame of a report in German. */
export const frame: FrameWords = {
  skipToContent: "Zum Inhalt springen",
  contents: "Inhalt",
  notKnown: "nicht bekannt",
  chart: "Diagramm",
  specification: "Spezifikation",
  severity: { note: "Anmerkung", doubt: "Zweifelhaft", serious: "Schwerwiegend" },
};
