import type { NoFacts } from "./facts.ts";

/** What is wrong with values that come from a program: cells of a data frame, fields given to makeCatch, lists of catches. */
export interface ProgramProblems {
  readonly "no-catches": NoFacts;
  readonly "frame-column-missing": NoFacts;
  readonly "cell-missing": NoFacts;
  readonly "field-missing": NoFacts;
  readonly "field-empty": NoFacts;
  readonly "field-no-date": NoFacts;
  readonly "field-no-mass": NoFacts;
  readonly "extra-no-texts": { readonly isObject: boolean };
  readonly "value-no-text": FromProgram & { readonly isObject: boolean };
  readonly "value-no-number": FromProgram & { readonly isObject: boolean };
  readonly "value-not-whole": FromProgram;
  /** null: without limit. */
  readonly "value-out-of-range": FromProgram & {
    readonly from: number | null;
    readonly to: number | null;
  };
}

/** Where the value stands, and so what is to be mended. */
export interface FromProgram {
  readonly within: "frame" | "catch";
}

export const programCodes = {
  "no-catches": "no-rows",
  "frame-column-missing": "column-missing",
  "cell-missing": "value-missing",
  "field-missing": "value-missing",
  "field-empty": "value-missing",
  "field-no-date": "not-a-date",
  "field-no-mass": "out-of-range",
  "extra-no-texts": "not-a-text",
  "value-no-text": "not-a-text",
  "value-no-number": "not-a-number",
  "value-not-whole": "not-whole",
  "value-out-of-range": "out-of-range",
} as const satisfies Readonly<Record<keyof ProgramProblems, string>>;
