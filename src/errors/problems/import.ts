import type { NoFacts } from "./facts.ts";

/** What a file of somebody's own leaves open, and has to be asked. */
export interface ImportProblems {
  readonly "header-not-found": NoFacts;
  /** Headers that mean the same column. */
  readonly "columns-alike": { readonly name: string; readonly headers: readonly string[] };
  /** Nothing says whether the container was weighed too; null: the unit is open as well. */
  readonly "weight-kind": { readonly header: string; readonly unit: string | null };
  readonly "mass-unit-open": { readonly header: string; readonly kind: string };
  /** No header means this column; these have no meaning that is known. Where there are sheets, their names may. */
  readonly "column-open": {
    readonly name: string;
    readonly headers: readonly string[];
    readonly sheets: boolean;
  };
  readonly "dates-two-ways": NoFacts;
  /** Written once, and blank in the rows below. */
  readonly "blank-below": { readonly name: string; readonly writtenRow: number };
}

export const importCodes = {
  "header-not-found": "answer-needed",
  "columns-alike": "answer-needed",
  "weight-kind": "answer-needed",
  "mass-unit-open": "answer-needed",
  "column-open": "answer-needed",
  "dates-two-ways": "answer-needed",
  "blank-below": "answer-needed",
} as const satisfies Readonly<Record<keyof ImportProblems, string>>;
