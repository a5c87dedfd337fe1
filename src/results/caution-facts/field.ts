import type { Standing } from "../severity.ts";

export interface FieldDifference {
  readonly normalisedError: number;
  readonly bias: number;
  /** Among all field checks of the log. */
  readonly pValue: number;
}

/** From delivery per turn to the rate in the field. */
export interface FieldCautionFacts {
  // setting
  readonly "setting-needs": { readonly missing: readonly string[] };
  readonly "delivery-not-told-from-zero": { readonly level: number };
  readonly "slip-not-given": Record<string, never>;
  readonly "target-out-of-reach": {
    readonly targetKgPerHa: number;
    readonly lowestKgPerHa: number;
    /** Below the lowest: no rate can be held at every working speed. */
    readonly highestKgPerHa: number;
    /** At another working speed a motor reaches other rates; a ground wheel does not. */
    readonly drive: "ground-wheel" | "motor";
  };
  /** Lawful rates; null: there is none of that end. */
  readonly "rate-against-law": {
    readonly rateKgPerHa: number;
    readonly of: "target" | "step";
    readonly lowestKgPerHa: number | null;
    readonly highestKgPerHa: number | null;
  };
  /** The target is one of the limits, so that no number of catches keeps what is put out within them. */
  readonly "target-on-limit": {
    readonly rateKgPerHa: number;
    readonly lowestKgPerHa: number | null;
    readonly highestKgPerHa: number | null;
    readonly below: number | null;
    readonly above: number | null;
  };
  readonly "rate-may-break-law": {
    readonly lowestKgPerHa: number | null;
    readonly highestKgPerHa: number | null;
    /** Chance of less than the lowest; null: there is none. */
    readonly below: number | null;
    readonly above: number | null;
    /** Up to which the two together are borne. */
    readonly borne: number;
  };
  readonly "no-step-within-tolerance": { readonly rateError: number; readonly tolerance: number };
  /** The step to be set, and the only one that was caught. */
  readonly "step-not-caught": {
    /** Names; null: it has none. */
    readonly stepName: string | null;
    readonly caughtName: string | null;
    /** Meter turns per wheel turn. */
    readonly stepRatio: number;
    readonly caughtRatio: number;
  };
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
  readonly "speed-catches-agree": { readonly catches: number };
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
  readonly "field-disagrees": FieldDifference;
  readonly "field-differs": FieldDifference;
  readonly "field-disagreed-before": FieldDifference;
  readonly "one-field-check": { readonly bias: number };
  readonly "two-field-checks": Record<string, never>;
  // outlets
  readonly "few-outlets": { readonly outlets: number };
  readonly "outlets-caught-once": Record<string, never>;
  readonly "outlets-agree-exactly": { readonly outlets: number };
  readonly "outlets-outside-band": { readonly outlets: readonly string[]; readonly band: number };
}

export const fieldStandings = {
  "setting-needs": { severity: "note", asks: "to-know" },
  "delivery-not-told-from-zero": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["more-catches"],
  },
  "slip-not-given": { severity: "note", asks: "to-know" },
  "target-out-of-reach": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["setup", "answered"],
  },
  "rate-against-law": { severity: "serious", asks: "look-first", endedBy: ["setup"] },
  "target-on-limit": { severity: "serious", asks: "look-first", endedBy: ["setup", "answered"] },
  "rate-may-break-law": { severity: "doubt", asks: "catch-more" },
  "no-step-within-tolerance": {
    severity: "doubt",
    asks: "look-first",
    endedBy: ["setup", "answered"],
  },
  "step-not-caught": { severity: "doubt", asks: "to-know" },
  "drive-set-off": { severity: "doubt", asks: "to-know" },
  "meter-speed-not-recorded": { severity: "note", asks: "to-know" },
  "setting-outside-caught-speeds": { severity: "doubt", asks: "to-know" },
  "one-meter-speed": { severity: "note", asks: "to-know" },
  "speeds-too-alike": { severity: "note", asks: "to-know" },
  "speed-never-varied-within-a-fill": { severity: "note", asks: "to-know" },
  "too-few-for-speed": { severity: "note", asks: "to-know" },
  "speed-catches-agree": { severity: "note", asks: "to-know" },
  "speed-changes-delivery": { severity: "doubt", asks: "to-know" },
  "speed-not-straight": { severity: "doubt", asks: "to-know" },
  "speed-goes-with-turns": { severity: "doubt", asks: "to-know" },
  "budget-leaves-out": { severity: "note", asks: "to-know" },
  "budget-unknown": { severity: "doubt", asks: "to-know" },
  "budget-not-confirmed": { severity: "doubt", asks: "to-know" },
  "scale-error-not-corrected": { severity: "note", asks: "to-know" },
  "field-check-without-uncertainty": { severity: "note", asks: "to-know" },
  "predicted-rate-unknown": { severity: "note", asks: "to-know" },
  "field-check-fill-unknown": { severity: "doubt", asks: "to-know" },
  "field-disagrees": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["field-check", "answered"],
  },
  "field-differs": { severity: "doubt", asks: "to-know" },
  "field-disagreed-before": { severity: "note", asks: "to-know" },
  "one-field-check": { severity: "note", asks: "to-know" },
  "two-field-checks": { severity: "note", asks: "to-know" },
  "few-outlets": { severity: "doubt", asks: "to-know" },
  "outlets-caught-once": { severity: "note", asks: "to-know" },
  "outlets-agree-exactly": { severity: "doubt", asks: "to-know" },
  "outlets-outside-band": { severity: "doubt", asks: "to-know" },
} as const satisfies Readonly<Record<keyof FieldCautionFacts, Standing>>;
