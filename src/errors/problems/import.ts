import type { NoFacts } from "./facts.ts";

/** What is asked or refused where files are imported, read together or added to. */
export interface ImportProblems {
  readonly "header-not-found": NoFacts;
  /** Headers that mean the same column. */
  readonly "columns-alike": { readonly name: string; readonly headers: readonly string[] };
  /** Nothing says whether the container was weighed too; null: the unit is open as well. */
  readonly "weight-kind": { readonly header: string; readonly unit: string | null };
  /** No header means a mass; the likely one of those that have no meaning, and the unit it names. */
  readonly "mass-column-open": {
    readonly headers: readonly string[];
    readonly likely: string | null;
    readonly unit: string | null;
  };
  readonly "catches-side-by-side": { readonly headers: readonly string[] };
  /** A column gives the unit row by row, these and not in this row. */
  readonly "unit-blank": { readonly units: readonly string[] };
  readonly "mass-unit-open": { readonly header: string; readonly kind: string };
  /** No header means this column; these have no meaning that is known. Where there are sheets, their names may. */
  readonly "column-open": {
    readonly name: string;
    readonly headers: readonly string[];
    readonly sheets: boolean;
  };
  readonly "dates-two-ways": NoFacts;
  readonly "decimal-two-ways": NoFacts;
  /** Written once, and blank in the rows below. */
  readonly "blank-below": { readonly name: string; readonly writtenRow: number };
  /** Nothing numbers the row as a catch, and its figure is worked out from those above it, or happens to be the same. */
  readonly "catch-or-mean": { readonly figure: "mean" | "total" };
  /** Its catches have no numbers; `by`: what the name of which may say. */
  readonly "fill-in-two-places": { readonly first: string; readonly by: "sheet" | "file" };
  /** `by`: how it can be said that they are of different machines or seasons. */
  readonly "catch-in-two-places": {
    readonly first: string;
    readonly by: "--key" | "--map file" | "--map sheet";
  };
  /** The same bytes as a file that was named before. */
  readonly "file-copied": { readonly first: string };
  /** The folder has none, and none below it. */
  readonly "no-tables": NoFacts;
  /** No text to which rows can be added. */
  readonly "not-appendable": NoFacts;
}

export const importCodes = {
  "header-not-found": "answer-needed",
  "columns-alike": "answer-needed",
  "weight-kind": "answer-needed",
  "mass-column-open": "answer-needed",
  "catches-side-by-side": "answer-needed",
  "unit-blank": "answer-needed",
  "mass-unit-open": "answer-needed",
  "column-open": "answer-needed",
  "dates-two-ways": "answer-needed",
  "decimal-two-ways": "answer-needed",
  "blank-below": "answer-needed",
  "catch-or-mean": "answer-needed",
  "fill-in-two-places": "answer-needed",
  "catch-in-two-places": "duplicate-catch",
  "file-copied": "duplicate-catch",
  "no-tables": "file-not-found",
  "not-appendable": "file-type-unknown",
} as const satisfies Readonly<Record<keyof ImportProblems, string>>;
