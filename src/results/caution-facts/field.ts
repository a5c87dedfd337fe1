import type { Severity } from "../severity.ts";

/** From delivery per turn to the rate in the field. */
export interface FieldCautionFacts {
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
}

export const fieldSeverities: Readonly<Record<keyof FieldCautionFacts, Severity>> = {
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
};
