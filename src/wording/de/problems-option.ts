import type { OptionTemplates } from "../../errors/option-text.ts";
import { decimal } from "./decimal.ts";

/** What is said of an option that cannot be what it is. */
export const optionProblems: OptionTemplates = {
  needs: {
    fraction: () => "ein Anteil über 0 und unter 1, zum Beispiel 0,95",
    positive: () => "eine endliche Zahl über null",
    "positive-or-null": () => "eine endliche Zahl über null, oder null, wenn sie nicht bekannt ist",
    "not-negative": () => "eine endliche Zahl, null oder mehr",
    between: (f) => `eine Zahl von ${decimal(f.low)} bis ${decimal(f.high)}`,
    count: (f) => `eine ganze Zahl von mindestens ${f.least}`,
    text: () => "ein Text",
    list: () => "eine Liste",
    "one-of": (f) => f.choices.join(" oder "),
    listed: (f) => `einer der Werte ${f.choices.join(", ")}`,
    "bin-in": (f) => `ein Tank, der in ${f.source} steht`,
    "catch-in": (f) => `Tank:Füllung:Probe, wie sie in ${f.source} stehen`,
    "one-catch": (f) => oneCatch[f.by](f.names),
    reason: () => "ein paar Worte, die sagen, warum",
    name: () => "ein Name",
    "no-column-beside": (f) => `nicht angegeben, weil die Datei eine Spalte ${f.column} hat`,
    "sheet-of-workbook": () => "nicht angegeben, wenn die Datei keine Arbeitsmappe (.xlsx) ist",
    "some-catch-counts": () => "so, dass noch mindestens eine Probe zählt",
    "as-measured": () => "„as measured“, weil eine Füllung nichts ausgetragen hat",
    "different-names": () => "zwei oder mehr verschiedene Namen",
    "some-numbers": () => "eine oder mehrere Zahlen",
    "level-with-margin": () => "über 0,5, wenn Gleichwertigkeit geprüft wird",
    "few-rows": (f) => `so wenige, dass es höchstens ${f.most} Zeilen werden`,
    "known-name": (f) => `einer der Namen ${f.names.join(", ")}`,
  },
  text: (f) => `Option „${f.option}“: gefunden ${f.received}; nötig ${f.allowed}.`,
  unknown: (f) => `Eine Option „${f.option}“ gibt es nicht; nötig ${f.allowed}.`,
};

const oneCatch: Readonly<Record<"bin" | "fill" | "product", (names: readonly string[]) => string>> =
  {
    bin: (names) =>
      `eine einzige Probe; diese gibt es ${names.map((name) => `in Tank ${name}`).join(" und ")}: Nennen Sie den Tank so`,
    fill: (names) =>
      `eine einzige Probe; diese gibt es ${names.map((name) => `in Füllung ${name}`).join(" und ")}: Nennen Sie die Füllung so`,
    product: (names) =>
      `eine einzige Probe; diese gibt es mit ${names.join(" und ")}: Nennen Sie das Produkt`,
  };
