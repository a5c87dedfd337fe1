import type { Standing } from "../severity.ts";

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
}

export const fileStandings: Readonly<Record<keyof FileCautionFacts, Standing>> = {
  "catch-far-from-fellows": { severity: "serious", asks: "look-first" },
  "unit-looks-wrong": { severity: "serious", asks: "look-first" },
  "turns-all-equal": { severity: "note", asks: "to-know" },
};
