import type * as english from "../en/uncertainty-sources.ts";

export const sources: typeof english.sources = {
  "catch scatter": "Streuung der Proben",
  "reading gross": "Ablesen der Waage, brutto",
  "reading tare": "Ablesen der Waage, Tara",
  "scale error": "geprüfter Fehler der Waage",
  "turn count": "Zählen der Umdrehungen",
  "fill to fill": "Streuung zwischen den Füllungen",
  drift: "Trend von Füllung zu Füllung",
  "working width": "Arbeitsbreite und Überlappung",
  "wheel travel": "Weg des Rads je Umdrehung",
  slip: "Schlupf des Antriebsrads",
};

export const leftOut: typeof english.leftOut = {
  ...sources,
  drive: "der Antrieb (nicht angegeben)",
  "speed measure": "die Geschwindigkeitsmessung des Antriebs",
};
