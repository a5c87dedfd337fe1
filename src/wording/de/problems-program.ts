import type { Phrases } from "../../errors/issue-text.ts";
import type { FromProgram, ProgramProblems } from "../../errors/problems/program.ts";
import { decimal } from "./decimal.ts";

const orLeaveOut = "Berichtigen Sie den Wert, oder lassen Sie die Probe weg.";
const remedies = { frame: "Berichtigen Sie die Zelle.", catch: orLeaveOut };
const correct = (f: FromProgram) => remedies[f.within];
const found = (f: { readonly isObject: boolean }) => (f.isObject ? "ein Objekt" : null);

/** What is said of a value that comes from a program. */
export const programProblems: Phrases<ProgramProblems> = {
  "no-catches": {
    expected: "mindestens eine Probe",
    remedy: "Geben Sie Umdrehungen und Masse einer Probe an.",
  },
  "frame-column-missing": {
    found: "keine solche Spalte",
    expected: "diese Spalte in jedem Data Frame mit Proben",
    remedy: "Behalten Sie die Spalten, die catchesToFrame anlegt.",
  },
  "cell-missing": { expected: "ein Wert in jeder Zeile", remedy: remedies.frame },
  "field-missing": { expected: "ein Wert", remedy: orLeaveOut },
  "field-empty": { expected: "ein Text, in dem etwas steht, oder null", remedy: orLeaveOut },
  "field-no-date": {
    expected: "ein Datum, das es gibt, mit dem Jahr zuerst, oder null",
    remedy: orLeaveOut,
  },
  "field-no-mass": {
    expected: "eine Masse über 0, oder leftOut mit dem Grund",
    remedy: orLeaveOut,
  },
  "extra-no-texts": {
    found,
    expected: "ein Objekt mit einem Text je Spaltenname",
    remedy: orLeaveOut,
  },
  "value-no-text": { found, expected: "ein Text", remedy: correct },
  "value-no-number": { found, expected: "eine Zahl, kein Text", remedy: correct },
  "value-not-whole": { expected: "eine ganze Zahl", remedy: correct },
  "value-out-of-range": {
    expected: (f) =>
      f.to === null
        ? `eine Zahl ab ${decimal(f.from)}`
        : `eine Zahl von ${decimal(f.from)} bis ${decimal(f.to)}`,
    remedy: correct,
  },
};
