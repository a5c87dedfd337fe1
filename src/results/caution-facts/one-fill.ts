import type { LentBy } from "../lent-by.ts";
import type { Standing } from "../severity.ts";

export interface ConstantMassFacts {
  readonly constantKg: number;
  readonly lowerKg: number | null;
  readonly upperKg: number | null;
  /** By itself. */
  readonly pValue: number;
  readonly interceptSlopeKgPerTurn: number;
}

/** About the catches of one fill. */
export interface OneFillCautionFacts {
  // one fill
  readonly "one-catch": Record<string, never>;
  readonly "one-catch-lent": { readonly df: number; readonly lentBy: LentBy };
  readonly "two-catches": { readonly widthFactor: number };
  readonly "few-degrees-of-freedom": { readonly df: number };
  readonly "zero-scatter": { readonly divisionKg: number };
  readonly "zero-scatter-unscaled": Record<string, never>;
  readonly "scale-division-unknown": Record<string, never>;
  readonly "scale-limits-result": { readonly share: number; readonly divisionKg: number | null };
  readonly "constant-mass": ConstantMassFacts;
  readonly "constant-mass-suspected": ConstantMassFacts;
  readonly "lack-of-fit": { readonly pValue: number };
  readonly "heteroscedastic-error-used": { readonly ratio: number };
  readonly "scale-looks-coarser": { readonly stepKg: number; readonly divisionKg: number };
  readonly "scatter-differs": { readonly pValue: number };
  /** The bin's catches scatter more, or less, than those of the other bins that lend to it. */
  readonly "catches-wilder-than-bins": { readonly pValue: number };
  readonly "catches-calmer-than-bins": { readonly pValue: number };
  /** Outlets weighed apart, all of them in every catch, and added up. */
  readonly "outlets-in-catches": { readonly outlets: number };
  /** Outlets of which some catches lack some, or a single one: part of what the meter delivers. */
  readonly "outlets-not-whole": { readonly outlets: number };
  readonly "weighting-by-name": { readonly law: string; readonly usualKgPerTurn: number };
}

export const oneFillStandings = {
  "one-catch": { severity: "doubt", asks: "catch-more" },
  "one-catch-lent": { severity: "note", asks: "to-know" },
  "two-catches": { severity: "doubt", asks: "catch-more" },
  "few-degrees-of-freedom": { severity: "doubt", asks: "to-know" },
  "zero-scatter": { severity: "doubt", asks: "to-know" },
  "zero-scatter-unscaled": { severity: "doubt", asks: "catch-more" },
  "scale-division-unknown": { severity: "note", asks: "to-know" },
  "scale-limits-result": { severity: "doubt", asks: "to-know" },
  "constant-mass": { severity: "serious", asks: "look-first", endedBy: ["corrected", "answered"] },
  "constant-mass-suspected": { severity: "doubt", asks: "to-know" },
  "lack-of-fit": { severity: "doubt", asks: "to-know" },
  "heteroscedastic-error-used": { severity: "note", asks: "to-know" },
  "scale-looks-coarser": { severity: "doubt", asks: "to-know" },
  "scatter-differs": { severity: "doubt", asks: "to-know" },
  "catches-wilder-than-bins": { severity: "doubt", asks: "to-know" },
  "catches-calmer-than-bins": { severity: "note", asks: "to-know" },
  "outlets-in-catches": { severity: "doubt", asks: "to-know" },
  "outlets-not-whole": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["corrected", "answered"],
  },
  "weighting-by-name": { severity: "note", asks: "to-know" },
} as const satisfies Readonly<Record<keyof OneFillCautionFacts, Standing>>;
