/** One thing wrong with a file: where it is, what was found, what was needed, what to do. */
export interface DataIssue {
  readonly code: DataIssueCode;
  /** File name as the user gave it. */
  readonly source: string;
  /** Row as a spreadsheet shows it (the header is row 1); null when the whole file is meant. */
  readonly row: number | null;
  /** Column as the file spells it, or the path within a setup; null when no single one is meant. */
  readonly column: string | null;
  /** What was found, shortened when long. */
  readonly received: string;
  readonly expected: string;
  readonly remedy: string;
  /** All of the above in one sentence or two, for a person. */
  readonly text: string;
}

export type DataIssueCode =
  | "file-not-found"
  | "file-unreadable"
  | "file-type-unknown"
  | "file-empty"
  | "file-binary"
  | "file-not-utf8"
  | "file-malformed"
  | "file-too-large"
  | "line-too-long"
  | "no-rows"
  | "column-missing"
  | "column-repeated"
  | "column-unit"
  | "two-mass-units"
  | "value-missing"
  | "not-a-number"
  | "not-a-text"
  | "not-finite"
  | "out-of-range"
  | "not-whole"
  | "not-a-date"
  | "not-yes-no"
  | "net-disagrees"
  | "gross-below-tare"
  | "duplicate-catch"
  | "two-products-in-fill"
  | "two-spellings"
  | "decimal-ambiguous"
  | "sheet-not-found"
  | "setup-invalid";
