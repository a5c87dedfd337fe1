import type { spreads as english } from "../en/spreads.ts";

const named = (f: { readonly productClass: string | null; readonly meterType: string | null }) =>
  [f.productClass ?? "Ohne Klasse", ...(f.meterType === null ? [] : [f.meterType])].join(", ");

/** By constant: what it is about, and of what so many are behind it, in the dative. */
const about = {
  between_meters_spread: ["Unterschied der Füllungen, von Dosierer zu Dosierer", "Dosierern"],
  between_meters_scatter: ["Streuung der Proben, von Dosierer zu Dosierer", "Dosierern"],
  between_fills_scatter: [
    "Streuung der Proben, von Füllung zu Füllung desselben Dosierers",
    "Füllungen",
  ],
  typical_spread: ["Unterschied der Füllungen bei einem typischen Dosierer", "Dosierern"],
  typical_scatter: [
    "Streuung einer Probe von 20 Umdrehungen bei einem typischen Dosierer",
    "Dosierern",
  ],
} as const;

const judged = (differs: boolean) =>
  differs
    ? "liegt außerhalb und passt nicht zu diesen Dosierern; solange er festgelegt ist, wird trotzdem mit ihm gerechnet."
    : "liegt darin; nichts spricht hier gegen ihn.";

/** What is said of a library of spreads, and of constants that pooled logs estimate anew. */
export const spreads: typeof english = {
  made: (f) =>
    `${f.file}: wie stark es bei ${f.meters === 1 ? "1 Dosierer" : `${f.meters} Dosierern`} aus ${f.logs === 1 ? "1 Protokoll" : `${f.logs} Protokollen`} streut, ohne einen Namen.`,
  class: (f) => `- ${named(f)}: ${f.meters} Dosierer.`,
  leftOut: (f) =>
    `- ${named(f)}: weggelassen, denn ${f.bins === 1 ? "es ist nur 1 Tank" : `es sind nur ${f.bins} Tanks`}; eine Klasse braucht ${f.needed}, damit kein einzelner Dosierer erkennbar ist.`,
  factor: (f) =>
    `${about[f.name][0]}: 95 von 100 innerhalb des Faktors ${f.factor} um die Mitte (Standardabweichung des Logarithmus ${f.estimate}, ${f.level}-Bereich ${f.from} bis ${f.to}, aus ${f.sources} ${about[f.name][1]}). Der festgelegte Wert ${f.declared}, ein Faktor ${f.declaredFactor}, ${judged(f.differs)}`,
  alike: (f) =>
    `${about[f.name][0]}: nicht verschiedener, als es der Zufall macht, was nicht heißt, dass alle gleich sind (Standardabweichung des Logarithmus, ${f.level}-Bereich ${f.from} bis ${f.to}, aus ${f.sources} ${about[f.name][1]}). Der festgelegte Wert ${f.declared}, ein Faktor ${f.declaredFactor}, ${judged(f.differs)}`,
  size: (f) =>
    `${about[f.name][0]}: ${f.estimate} (${f.level}-Bereich ${f.from} bis ${f.to}, aus ${f.sources} ${about[f.name][1]}). Der festgelegte Wert ${f.declared} ${judged(f.differs)}`,
  notEstimated: (needed) =>
    `Von dem, was festgelegt ist, wurde nichts neu geschätzt: Dazu braucht es ${needed} Dosierer.`,
};
