import type { Severity } from "../severity.ts";

/** About the catches of one fill. */
export interface OneFillCautionFacts {
  // one fill
  readonly "one-catch": { readonly earlierFills: number };
  readonly "two-catches": { readonly widthFactor: number };
  readonly "few-degrees-of-freedom": { readonly df: number };
  readonly "zero-scatter": { readonly divisionKg: number | null };
  readonly "scale-division-unknown": Record<string, never>;
  readonly "scale-limits-result": { readonly share: number; readonly divisionKg: number | null };
  readonly "constant-mass": {
    readonly constantKg: number;
    readonly lowerKg: number | null;
    readonly upperKg: number | null;
    readonly pValue: number;
    readonly interceptSlopeKgPerTurn: number;
  };
  readonly "lack-of-fit": { readonly pValue: number };
  readonly "heteroscedastic-error-used": { readonly ratio: number };
  readonly "scale-looks-coarser": { readonly stepKg: number; readonly divisionKg: number };
  readonly "scatter-differs": { readonly pValue: number; readonly fellBack: boolean };
  /** Outlets weighed apart: added up to catches of the meter, or, where each catch has one outlet, not whole. */
  readonly "outlets-in-catches": { readonly outlets: number; readonly addedUp: boolean };
  readonly "weighting-by-name": { readonly law: string; readonly usualKgPerTurn: number };
}

export const oneFillSeverities: Readonly<Record<keyof OneFillCautionFacts, Severity>> = {
  "one-catch": "caution",
  "two-catches": "caution",
  "few-degrees-of-freedom": "caution",
  "zero-scatter": "caution",
  "scale-division-unknown": "note",
  "scale-limits-result": "caution",
  "constant-mass": "serious",
  "lack-of-fit": "caution",
  "heteroscedastic-error-used": "note",
  "scale-looks-coarser": "caution",
  "scatter-differs": "caution",
  "outlets-in-catches": "caution",
  "weighting-by-name": "note",
};
