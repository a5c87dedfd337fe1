import type { Standing } from "../severity.ts";

/** About changes: from fill to fill, within a fill, and of the scatter. */
export interface DriftCautionFacts {
  // drift
  readonly "no-trend-yet": { readonly fills: number; readonly needed: number };
  readonly "no-change-point-yet": { readonly fills: number; readonly needed: number };
  readonly "fills-agree-exactly": { readonly fills: number };
  readonly "product-changed": {
    readonly otherProducts: readonly string[];
    /** 0 where fills before the change count all the same. */
    readonly fillsSetAside: number;
  };
  readonly "product-order-unknown": Record<string, never>;
  readonly "fill-numbers-against-dates": Record<string, never>;
  readonly "gaps-between-fills": {
    readonly missingFills: number;
    readonly longestPauseDays: number | null;
  };
  readonly "trend-or-wander": { readonly pValue: number };
  readonly "delivery-settles": {
    readonly scope: "this fill" | "within fills" | "between fills";
    readonly against: "catch order" | "bin level";
    /** Relative change per catch, or from an empty to a full bin. */
    readonly change: number;
    readonly pValue: number;
  };
  // repeatability
  readonly "scatter-unusual": {
    /** Scatter today ÷ scatter of earlier fills. */
    readonly ratio: number;
    readonly pValue: number;
  };
  readonly "no-scatter-to-compare": { readonly catches: number; readonly earlierDf: number };
}

export const driftStandings = {
  "no-trend-yet": { severity: "note", asks: "to-know" },
  "no-change-point-yet": { severity: "note", asks: "to-know" },
  "fills-agree-exactly": { severity: "doubt", asks: "to-know" },
  "product-changed": { severity: "note", asks: "to-know" },
  "product-order-unknown": { severity: "doubt", asks: "to-know" },
  "fill-numbers-against-dates": { severity: "doubt", asks: "to-know" },
  "gaps-between-fills": { severity: "note", asks: "to-know" },
  "trend-or-wander": { severity: "doubt", asks: "to-know" },
  "delivery-settles": { severity: "doubt", asks: "to-know" },
  "scatter-unusual": { severity: "doubt", asks: "to-know" },
  "no-scatter-to-compare": { severity: "note", asks: "to-know" },
} as const satisfies Readonly<Record<keyof DriftCautionFacts, Standing>>;
