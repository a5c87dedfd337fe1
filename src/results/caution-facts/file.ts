import type { FillName } from "../fill-name.ts";
import type { Question } from "../question.ts";
import type { Standing } from "../severity.ts";

/** What the file itself gives away. */
export interface FileCautionFacts {
  // the file
  readonly "catch-far-from-fellows": { readonly timesMedian: number };
  readonly "unit-looks-wrong": {
    readonly unit: string;
    readonly medianKgPerTurn: number;
    readonly medianCatchKg: number;
  };
  /** The newest fill of the file has no catch that counts; what is answered is the fill before. */
  readonly "newest-fill-left-out": { readonly leftOutFill: FillName };
  /** A question failed; everything else was answered. */
  readonly "not-computed": { readonly question: Question; readonly reason: string };
  readonly "needed-not-computed": { readonly question: Question; readonly reason: string };
  /** It is left out, and nothing was weighed. */
  readonly "catch-without-mass": { readonly reason: string };
  /** Several files make one log, whose rows are counted through them; each with its first row. */
  readonly "files-read-together": {
    readonly files: readonly string[];
    readonly firstRows: readonly number[];
  };
  /** The file has turns and masses alone. */
  readonly "one-bin-taken": { readonly catches: number };
  /** Turns of so many catches were worked out from the areas they stand for, by these turns per hectare. */
  readonly "turns-from-area": {
    readonly catches: number;
    readonly lowest: number;
    readonly highest: number;
    readonly assumed: boolean;
  };
  readonly "turns-all-equal": {
    readonly turns: number;
    /** What one tare left in would add, as a fraction of the mean net mass; null when no tare is known. */
    readonly tareShare: number | null;
  };
  /** Nobody states the scale's division: it was read from so many weights, so many of them different. */
  readonly "division-read-from-digits": {
    readonly divisionKg: number;
    /** The same in the unit the weights were written in. */
    readonly step: number;
    readonly unit: string;
    readonly weights: number;
    readonly different: number;
  };
  /**
   * A library was given: so many of its meters lend the spread of fills, and so many the scatter of catches, to the bin that
   * most lend to; none of either where bins of the same product speak alone. How far a meter lies from the middle, as a
   * factor, is declared and not measured.
   */
  readonly "library-lends": {
    readonly file: string | null;
    readonly spreads: number;
    readonly scatters: number;
    readonly assumedFactor: number;
  };
  /** Questions that take the single catches, where only the totals of fills are at hand. */
  readonly "needs-rows": { readonly questions: readonly Question[] };
  // the setup
  /** The setup names a library, and nobody gave its records. */
  readonly "library-not-read": { readonly name: string };
  /** `instead` is the name in the catches that may be meant. */
  readonly "setup-name-not-caught": {
    readonly what: "bin" | "product";
    readonly name: string;
    readonly instead: string;
  };
  /** The setup names a machine, farm or season that no catch names; `instead` is what may be meant, null: nothing is like it. */
  readonly "setup-key-not-caught": {
    readonly key: "machine" | "farm" | "season";
    readonly name: string;
    readonly instead: string | null;
  };
  /** The setup names a fill by its number alone, and the catches hold several seasons. */
  readonly "setup-season-missing": { readonly number: number };
  /** A name of an earlier version, and its name now, both as one writes them in the file. */
  readonly "old-name": { readonly was: string; readonly now: string };
}

export const fileStandings = {
  "catch-far-from-fellows": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["corrected", "excluded", "checked"],
  },
  "unit-looks-wrong": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["corrected", "answered"],
  },
  "newest-fill-left-out": { severity: "serious", asks: "catch-more" },
  "not-computed": { severity: "serious", asks: "to-know" },
  "needed-not-computed": { severity: "serious", asks: "look-first", endedBy: ["answered"] },
  "catch-without-mass": { severity: "note", asks: "to-know" },
  "files-read-together": { severity: "note", asks: "to-know" },
  "turns-from-area": { severity: "note", asks: "to-know" },
  "one-bin-taken": { severity: "note", asks: "to-know" },
  "turns-all-equal": { severity: "note", asks: "to-know" },
  "division-read-from-digits": { severity: "note", asks: "to-know" },
  "library-lends": { severity: "note", asks: "to-know" },
  "library-not-read": { severity: "note", asks: "to-know" },
  "needs-rows": { severity: "doubt", asks: "to-know" },
  "setup-name-not-caught": { severity: "note", asks: "to-know" },
  "setup-key-not-caught": { severity: "doubt", asks: "to-know" },
  "setup-season-missing": { severity: "doubt", asks: "to-know" },
  "old-name": { severity: "note", asks: "to-know" },
} as const satisfies Readonly<Record<keyof FileCautionFacts, Standing>>;
