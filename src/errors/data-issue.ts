import type { DataIssueCode, ProblemKey, ProblemOf } from "./problems.ts";

/** One thing wrong with a file: where it is, what was found, what was needed, what to do. */
export type DataIssue = { readonly [K in ProblemKey]: IssueOf<K> }[ProblemKey];

/** The problem and its facts are for other languages; everything that is a sentence here is in English. */
export interface IssueOf<K extends ProblemKey> extends ProblemOf<K> {
  readonly code: DataIssueCode;
  /** File name as the user gave it. */
  readonly source: string;
  readonly rowKind: RowKind;
  /** Row as a spreadsheet shows it (the header is row 1); null when the whole file is meant. */
  readonly row: number | null;
  /** Of a problem between rows of two files: the one whose row the facts call the first. */
  readonly firstSource?: string;
  /** Rows of the file beside this one in which the same is wrong, where one stands for all. */
  readonly alike?: number;
  /** Column as the file spells it, or the path within a setup; null when no single one is meant. */
  readonly column: string | null;
  /** What was found, shortened when long. */
  readonly received: string;
  readonly expected: string;
  readonly remedy: string;
  /** All of the above in one sentence or two, for a person. */
  readonly text: string;
}

/** What is counted: a spreadsheet has rows, an array in a JSON file has entries, and a text that is no table has lines. */
export type RowKind = "row" | "entry" | "line";
