import type { Mishap } from "./mishap.ts";

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
  /** Outlets weighed apart: added up to catches of the meter, or, where each catch has one outlet, not whole. */
  readonly "outlets-in-catches": { readonly outlets: number; readonly addedUp: boolean };
  readonly "weighting-by-name": { readonly law: string; readonly usualKgPerTurn: number };
  // across fills
  readonly "one-fill": { readonly borrowedFrom: number };
  readonly "two-fills": { readonly bandInDifferences: number };
  readonly "few-fills": { readonly fills: number };
  readonly "spread-at-boundary": { readonly upperKgPerTurn: number | null };
  readonly "spread-borrowed": { readonly fills: number; readonly df: number };
  readonly "fills-are-not-catches": { readonly timesTooNarrow: number };
  /** A shift or trend was found, and what is said of the next fill still pools all fills. */
  readonly "history-has-moved": { readonly fills: number; readonly sinceFill: number | null };
  readonly "first-catch-tells-less": {
    readonly skipHalfWidth: number;
    readonly firstHalfWidth: number;
  };
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
  // catches needed
  readonly "scatter-assumed": { readonly relative: number; readonly turns: number };
  readonly "spread-assumed": { readonly relative: number };
  readonly "scale-limits-tolerance": { readonly turns: number; readonly leastTurns: number };
  readonly "stopped-on-width": { readonly tolerance: number };
  readonly "tolerance-needs-more-catches": {
    readonly mostCatches: number;
    /** null: no number of catches of these turns. */
    readonly catchesNeeded: number | null;
    /** Relative half-width at the most catches; null: unknown. */
    readonly halfWidthThen: number | null;
  };
  // skipping
  readonly "skip-not-priced": { readonly fills: number; readonly df: number };
  readonly "book-value-outside": {
    readonly bookKgPerTurn: number;
    readonly lowerKgPerTurn: number;
    readonly upperKgPerTurn: number;
  };
  // cost
  readonly "prices-missing": { readonly missing: readonly string[] };
  readonly "quadratic-about-best-rate": Record<string, never>;
  readonly "quadratic-needs-more": { readonly df: number };
  readonly "heavy-cost-below-product": {
    readonly heavyPerPercent: number;
    readonly productPerPercent: number;
  };
  readonly "set-up-time-not-counted": Record<string, never>;
  // outliers
  readonly "suspect-catch": {
    readonly relativeResidual: number;
    readonly pValue: number;
    readonly family: "this fill" | "whole log";
    /** What fits, best first. */
    readonly mishaps: readonly Mishap[];
    readonly withoutKgPerTurn: number;
    readonly relativeChange: number;
  };
  readonly "suspect-only-in-fill": {
    readonly relativeResidual: number;
    readonly pValue: number;
    /** Fills of such a log that show one by chance. */
    readonly expectedByChance: number;
  };
  readonly "two-disagree": { readonly relativeDifference: number; readonly pValue: number };
  readonly "two-disagree-in-fill-only": {
    readonly relativeDifference: number;
    readonly pValue: number;
    readonly expectedByChance: number;
  };
  readonly "more-than-can-be-told": { readonly catches: number };
  readonly "too-few-to-judge": {
    readonly catches: number;
    /** Highest over lowest delivery of the catches, − 1. */
    readonly relativeRange: number;
    readonly outsideDf: number;
  };
  // setting
  readonly "setting-needs": { readonly missing: readonly string[] };
  readonly "delivery-not-told-from-zero": { readonly level: number };
  readonly "skid-not-given": Record<string, never>;
  readonly "target-out-of-reach": {
    readonly targetKgPerHa: number;
    readonly lowestKgPerHa: number;
    /** Below the lowest: no rate can be held at every working speed. */
    readonly highestKgPerHa: number;
  };
  readonly "no-step-within-tolerance": { readonly rateError: number; readonly tolerance: number };
  readonly "drive-set-off": { readonly rateError: number; readonly tolerance: number };
  /** Meter speeds the setting asks for, turns/min. */
  readonly "meter-speed-not-recorded": { readonly lower: number; readonly upper: number };
  readonly "setting-outside-caught-speeds": {
    readonly lower: number;
    readonly upper: number;
    readonly caughtLower: number;
    readonly caughtUpper: number;
  };
  // speed linearity
  readonly "one-meter-speed": { readonly turnsPerMin: number };
  readonly "speeds-too-alike": { readonly lower: number; readonly upper: number };
  readonly "speed-never-varied-within-a-fill": { readonly fills: number };
  readonly "too-few-for-speed": { readonly catches: number; readonly needed: number };
  readonly "speed-changes-delivery": {
    /** From the lowest to the highest meter speed caught. */
    readonly change: number;
    readonly lower: number;
    readonly upper: number;
    readonly pValue: number;
  };
  readonly "speed-not-straight": {
    readonly by: "curvature" | "lack of fit";
    readonly pValue: number;
  };
  readonly "speed-goes-with-turns": { readonly correlation: number };
  // uncertainty budget
  readonly "budget-leaves-out": { readonly sources: readonly string[] };
  readonly "budget-unknown": Record<string, never>;
  readonly "budget-not-confirmed": { readonly difference: number; readonly limit: number };
  readonly "scale-error-not-corrected": { readonly testedError: number };
  // field check
  readonly "field-check-without-uncertainty": { readonly missing: readonly string[] };
  readonly "predicted-rate-unknown": Record<string, never>;
  readonly "field-check-fill-unknown": { readonly fill: number };
  readonly "field-disagrees": { readonly normalisedError: number; readonly bias: number };
  readonly "one-field-check": { readonly bias: number };
  readonly "two-field-checks": Record<string, never>;
  // outlets
  readonly "few-outlets": { readonly outlets: number };
  readonly "outlet-grades-from-memory": Record<string, never>;
  readonly "outlets-caught-once": Record<string, never>;
  readonly "outlets-agree-exactly": { readonly outlets: number };
  readonly "outlets-outside-band": { readonly outlets: readonly string[]; readonly band: number };
  // product comparison
  readonly "product-not-repeated": Record<string, never>;
  readonly "product-few-fills": { readonly fills: number };
  readonly "nothing-to-compare": { readonly products: number };
  readonly "products-in-different-bins": { readonly bins: readonly string[] };
  readonly "products-share-some-bins": { readonly bins: readonly string[] };
  readonly "blocks-not-used": { readonly by: string; readonly blocks: number };
  readonly "fills-without-block": { readonly fills: number };
  readonly "blocks-incomplete": { readonly blocks: number; readonly complete: number };
  readonly "pairs-share-no-blocks": { readonly pairs: number };
  readonly "product-without-spread": { readonly fills: number };
  readonly "common-spread-doubtful": { readonly pValue: number };
  readonly "catches-would-mislead": {
    readonly first: string;
    readonly second: string;
    readonly verdict: string;
    readonly pValue: number;
    readonly wrongVerdict: string;
    readonly wrongPValue: number;
  };
  readonly "no-equivalence-margin": { readonly pairs: number };
  readonly "fills-without-scatter": { readonly fills: number };
  readonly "scatter-not-compared": { readonly pairs: number };
  // explaining variables
  readonly "nothing-recorded": Record<string, never>;
  readonly "variable-missing": { readonly variable: string; readonly fills: number };
  readonly "variable-constant": { readonly variable: string };
  readonly "variables-not-told-apart": { readonly variables: readonly string[] };
  readonly "few-products": { readonly products: number };
  readonly "no-density": Record<string, never>;
  readonly "density-outside": {
    readonly densityKgPerM3: number;
    readonly lowest: number;
    readonly highest: number;
  };
  readonly "new-product-from-few": { readonly products: number };
  // trial plan
  readonly "plan-few-fills": { readonly fills: number };
  readonly "plan-little-power": { readonly power: number; readonly difference: number };
  readonly "plan-one-turn-level": Record<string, never>;
  readonly "plan-scatter-not-compared": { readonly catches: number };
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
  "outlets-in-catches": "caution",
  "weighting-by-name": "note",
  "one-fill": "caution",
  "two-fills": "caution",
  "few-fills": "note",
  "spread-at-boundary": "note",
  "spread-borrowed": "caution",
  "fills-are-not-catches": "note",
  "history-has-moved": "caution",
  "first-catch-tells-less": "note",
  "no-trend-yet": "note",
  "no-change-point-yet": "note",
  "fills-agree-exactly": "caution",
  "product-changed": "note",
  "product-order-unknown": "caution",
  "fill-numbers-against-dates": "caution",
  "gaps-between-fills": "note",
  "trend-or-wander": "caution",
  "delivery-settles": "caution",
  "scatter-unusual": "caution",
  "no-scatter-to-compare": "note",
  "scatter-assumed": "caution",
  "spread-assumed": "caution",
  "scale-limits-tolerance": "caution",
  "stopped-on-width": "note",
  "tolerance-needs-more-catches": "caution",
  "skip-not-priced": "caution",
  "book-value-outside": "caution",
  "prices-missing": "note",
  "quadratic-about-best-rate": "note",
  "quadratic-needs-more": "caution",
  "heavy-cost-below-product": "caution",
  "set-up-time-not-counted": "note",
  "suspect-catch": "serious",
  "suspect-only-in-fill": "note",
  "two-disagree": "serious",
  "two-disagree-in-fill-only": "note",
  "more-than-can-be-told": "serious",
  "too-few-to-judge": "caution",
  "setting-needs": "note",
  "delivery-not-told-from-zero": "serious",
  "skid-not-given": "note",
  "target-out-of-reach": "serious",
  "no-step-within-tolerance": "caution",
  "drive-set-off": "caution",
  "meter-speed-not-recorded": "note",
  "setting-outside-caught-speeds": "caution",
  "one-meter-speed": "note",
  "speeds-too-alike": "note",
  "speed-never-varied-within-a-fill": "note",
  "too-few-for-speed": "note",
  "speed-changes-delivery": "caution",
  "speed-not-straight": "caution",
  "speed-goes-with-turns": "caution",
  "budget-leaves-out": "note",
  "budget-unknown": "caution",
  "budget-not-confirmed": "caution",
  "scale-error-not-corrected": "note",
  "field-check-without-uncertainty": "note",
  "predicted-rate-unknown": "note",
  "field-check-fill-unknown": "caution",
  "field-disagrees": "serious",
  "one-field-check": "note",
  "two-field-checks": "note",
  "few-outlets": "caution",
  "outlet-grades-from-memory": "note",
  "outlets-caught-once": "note",
  "outlets-agree-exactly": "caution",
  "outlets-outside-band": "caution",
  "product-not-repeated": "caution",
  "product-few-fills": "caution",
  "nothing-to-compare": "note",
  "products-in-different-bins": "serious",
  "products-share-some-bins": "caution",
  "blocks-not-used": "note",
  "fills-without-block": "caution",
  "blocks-incomplete": "note",
  "pairs-share-no-blocks": "caution",
  "product-without-spread": "caution",
  "common-spread-doubtful": "caution",
  "catches-would-mislead": "caution",
  "no-equivalence-margin": "note",
  "fills-without-scatter": "caution",
  "scatter-not-compared": "note",
  "nothing-recorded": "note",
  "variable-missing": "caution",
  "variable-constant": "note",
  "variables-not-told-apart": "caution",
  "few-products": "caution",
  "no-density": "caution",
  "density-outside": "serious",
  "new-product-from-few": "caution",
  "plan-few-fills": "caution",
  "plan-little-power": "caution",
  "plan-one-turn-level": "note",
  "plan-scatter-not-compared": "note",
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
