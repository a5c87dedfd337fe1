import type { FillName } from "../fill-name.ts";
import type { Standing } from "../severity.ts";

/** About changes: from fill to fill, within a fill, and of the scatter. */
export interface DriftCautionFacts {
  // drift
  readonly "fill-differs": {
    /** Relative to the mean of the earlier fills of its level. */
    readonly difference: number;
    readonly earlierFills: number;
    readonly pValue: number;
    /** p at which a fill differs. */
    readonly limit: number;
  };
  readonly "fill-differs-confirmed": {
    readonly difference: number;
    readonly earlierFills: number;
    readonly pValue: number;
    readonly catches: number;
    /** Median of the earlier fills. */
    readonly usualCatches: number;
  };
  readonly "moved-since": {
    readonly sinceFill: FillName;
    /** Season that this fill begins; left out: it begins none, or the log has one. */
    readonly season?: string;
    readonly fillsSince: number;
    /** Relative to the mean of the fills before, with its interval. */
    readonly change: number;
    readonly lower: number | null;
    readonly upper: number | null;
    /** Averaged evidence, so much to 1, and its limit; null: a fill that differed was followed by another. */
    readonly evidence: number | null;
    readonly limit: number | null;
  };
  readonly trending: {
    /** Relative change from fill to fill. */
    readonly perFill: number;
    readonly fills: number;
    readonly evidence: number;
    readonly limit: number;
  };
  readonly "stood-apart": {
    /** Relative to the mean of the earlier fills of its level. */
    readonly difference: number;
    /** Fill that was back. */
    readonly backWith: FillName;
  };
  readonly "no-trend-yet": { readonly fills: number; readonly needed: number };
  readonly "no-change-point-yet": { readonly fills: number; readonly needed: number };
  readonly "fills-agree-exactly": { readonly fills: number };
  readonly "product-changed": {
    readonly otherProducts: readonly string[];
    /** First fills after another product. */
    readonly beforeFills: readonly FillName[];
  };
  readonly "product-order-unknown": Record<string, never>;
  readonly "fill-numbers-against-dates": Record<string, never>;
  readonly "gaps-between-fills": {
    readonly missingFills: number;
    readonly longestPauseDays: number | null;
  };
  /** Found by the trend test, looked at once at the end; it decides nothing. */
  readonly "trend-or-wander": { readonly pValue: number };
  readonly "delivery-settles": {
    readonly scope: "this fill" | "within fills" | "between fills";
    readonly against: "catch order" | "bin level";
    /** Relative change per catch, or from an empty to a full bin. */
    readonly change: number;
    readonly pValue: number;
  };
  /** Fills of one name in a column deliver apart from those of another. */
  readonly "column-splits-fills": {
    /** As the file heads them; several where they part the fills in the same way. */
    readonly columns: readonly string[];
    /** Names, in the first of the columns, of the fills that deliver least and most. */
    readonly low: string;
    readonly high: string;
    /** Of the highest, relative to the lowest. */
    readonly difference: number;
    readonly pValue: number;
    /** First fill of a change of level that was found where the column changed; null: none was. */
    readonly explainsSince: FillName | null;
  };
  // repeatability
  readonly "scatter-unusual": {
    /** Scatter today ÷ what is usual. */
    readonly ratio: number;
    readonly pValue: number;
  };
  /** So much more than usual that one clean fill in 500 does it: some catch of it is wrong, or the meter. */
  readonly "scatter-beyond-usual": {
    readonly ratio: number;
    readonly pValue: number;
    readonly limit: number;
  };
  /** Three catches that disagree more than is usual, and not beyond doubt. */
  readonly "few-scatter-apart": { readonly ratio: number; readonly pValue: number };
  readonly "no-scatter-to-compare": { readonly catches: number; readonly usualKnown: boolean };
}

export const driftStandings = {
  "fill-differs": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["more-catches", "answered"],
  },
  "fill-differs-confirmed": { severity: "doubt", asks: "to-know" },
  "moved-since": { severity: "doubt", asks: "to-know" },
  trending: { severity: "doubt", asks: "to-know" },
  "stood-apart": { severity: "note", asks: "to-know" },
  "no-trend-yet": { severity: "note", asks: "to-know" },
  "no-change-point-yet": { severity: "note", asks: "to-know" },
  "fills-agree-exactly": { severity: "doubt", asks: "to-know" },
  "product-changed": { severity: "note", asks: "to-know" },
  "product-order-unknown": { severity: "doubt", asks: "to-know" },
  "fill-numbers-against-dates": { severity: "doubt", asks: "to-know" },
  "gaps-between-fills": { severity: "note", asks: "to-know" },
  "trend-or-wander": { severity: "note", asks: "to-know" },
  "delivery-settles": { severity: "doubt", asks: "to-know" },
  "column-splits-fills": { severity: "doubt", asks: "to-know" },
  "scatter-unusual": { severity: "doubt", asks: "to-know" },
  "scatter-beyond-usual": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["excluded", "answered"],
  },
  "few-scatter-apart": { severity: "doubt", asks: "catch-more" },
  "no-scatter-to-compare": { severity: "note", asks: "to-know" },
} as const satisfies Readonly<Record<keyof DriftCautionFacts, Standing>>;
