/**
 * A typed finding that goes with a result instead of a silent assumption. The code and the facts are for
 * machines; the sentence is made from them by the wording layer, so it can be had in any language.
 */
export type Caution = { readonly [C in CautionCode]: CautionOf<C> }[CautionCode];

export interface CautionOf<C extends CautionCode> {
  readonly code: C;
  readonly severity: Severity;
  readonly where: Where;
  readonly facts: CautionFacts[C];
}

/**
 * note: worth knowing · caution: read before relying on the number · serious: do not rely on the number
 * until this is settled.
 */
export type Severity = "note" | "caution" | "serious";

/** Where a finding applies; null means "all of them". */
export interface Where {
  readonly bin: string | null;
  readonly product: string | null;
  readonly fill: number | null;
  readonly catches: readonly number[];
}

export type CautionCode = keyof CautionFacts;

/** Facts each caution carries. Masses in kg, fractions as fractions. */
export interface CautionFacts {
  // the file
  readonly "catch-far-from-fellows": { readonly timesMedian: number };
  readonly "unit-looks-wrong": { readonly unit: string; readonly medianKgPerTurn: number };
  readonly "turns-all-equal": {
    readonly turns: number;
    /** What one tare left in would add, as a fraction of the mean net mass; null when no tare is known. */
    readonly tareShare: number | null;
  };
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
  readonly "weighting-by-name": { readonly law: string; readonly usualKgPerTurn: number };
  // across fills
  readonly "one-fill": { readonly borrowedFrom: number };
  readonly "two-fills": { readonly bandInDifferences: number };
  readonly "few-fills": { readonly fills: number };
  readonly "spread-at-boundary": { readonly upperKgPerTurn: number | null };
  readonly "spread-borrowed": { readonly fills: number; readonly df: number };
  readonly "fills-are-not-catches": { readonly timesTooNarrow: number };
  readonly "first-catch-tells-less": {
    readonly skipHalfWidth: number;
    readonly firstHalfWidth: number;
  };
}

const severities: Readonly<Record<CautionCode, Severity>> = {
  "catch-far-from-fellows": "serious",
  "unit-looks-wrong": "serious",
  "turns-all-equal": "note",
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
  "weighting-by-name": "note",
  "one-fill": "caution",
  "two-fills": "caution",
  "few-fills": "note",
  "spread-at-boundary": "note",
  "spread-borrowed": "caution",
  "fills-are-not-catches": "note",
  "first-catch-tells-less": "note",
};

export const nowhere: Where = { bin: null, product: null, fill: null, catches: [] };

export function caution<C extends CautionCode>(
  code: C,
  where: Partial<Where>,
  facts: CautionFacts[C],
): Caution {
  const finding: CautionOf<C> = {
    code,
    severity: severities[code],
    where: { ...nowhere, ...where },
    facts,
  };
  // The mapped union is the same set of shapes as CautionOf<C> over all C; the compiler cannot see that for a generic C.
  return finding as unknown as Caution;
}
