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
    "known-name": (f) => `einer der Namen ${f.names.join(", ")}`,
  },
  text: (f) => `Option „${f.option}“: gefunden ${f.received}; nötig ${f.allowed}.`,
  unknown: (f) => `Eine Option „${f.option}“ gibt es nicht; nötig ${f.allowed}.`,
};
