import type { Mishap } from "../mishap.ts";
import type { Severity } from "../severity.ts";

/** About catches that are not to be believed. */
export interface OutlierCautionFacts {
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
}

export const outlierSeverities: Readonly<Record<keyof OutlierCautionFacts, Severity>> = {
  "suspect-catch": "serious",
  "suspect-only-in-fill": "note",
  "two-disagree": "serious",
  "two-disagree-in-fill-only": "note",
  "more-than-can-be-told": "serious",
  "too-few-to-judge": "caution",
};
