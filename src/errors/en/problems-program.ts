import type { Phrases } from "../issue-text.ts";
import type { FromProgram, ProgramProblems } from "../problems/program.ts";

const orLeaveOut = "Correct the value, or leave the catch out.";
const remedies = { frame: "Correct the cell.", catch: orLeaveOut };
const correct = (f: FromProgram) => remedies[f.within];

/** What is said of a value that comes from a program. */
export const programProblems: Phrases<ProgramProblems> = {
  "no-catches": { expected: "at least one catch", remedy: "Give the turns and mass of a catch." },
  "frame-column-missing": {
    found: "no such column",
    expected: "it in every frame of catches",
    remedy: "Keep the columns that catchesToFrame makes.",
  },
  "cell-missing": { expected: "a value in every row", remedy: remedies.frame },
  "field-missing": { expected: "a value", remedy: orLeaveOut },
  "field-empty": { expected: "a text with something in it, or null", remedy: orLeaveOut },
  "field-no-date": { expected: "a date that exists, year first, or null", remedy: orLeaveOut },
  "field-no-mass": {
    expected: "a mass above 0, or leftOut with the reason",
    remedy: orLeaveOut,
  },
  "extra-no-texts": { expected: "an object of texts by header", remedy: orLeaveOut },
  "value-no-text": { expected: "a text", remedy: correct },
  "value-no-number": { expected: "a number, not a text", remedy: correct },
  "value-not-whole": { expected: "a whole number", remedy: correct },
  "value-out-of-range": {
    expected: (f) => `a number from ${f.from ?? "-Infinity"} to ${f.to ?? "Infinity"}`,
    remedy: correct,
  },
};
