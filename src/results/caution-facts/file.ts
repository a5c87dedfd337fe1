import type { Severity } from "../severity.ts";

/** What the file itself gives away. */
export interface FileCautionFacts {
  // the file
  readonly "catch-far-from-fellows": { readonly timesMedian: number };
  readonly "unit-looks-wrong": { readonly unit: string; readonly medianKgPerTurn: number };
  readonly "turns-all-equal": {
    readonly turns: number;
    /** What one tare left in would add, as a fraction of the mean net mass; null when no tare is known. */
    readonly tareShare: number | null;
  };
  // the setup
  /** `instead` is the name in the catches that may be meant. */
  readonly "setup-name-not-caught": {
    readonly what: "bin" | "product";
    readonly name: string;
    readonly instead: string;
  };
}

export const fileSeverities: Readonly<Record<keyof FileCautionFacts, Severity>> = {
  "catch-far-from-fellows": "serious",
  "unit-looks-wrong": "serious",
  "turns-all-equal": "note",
  "setup-name-not-caught": "note",
};
