import type { Mishap } from "../mishap.ts";
import type { Standing } from "../severity.ts";

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

export const outlierStandings = {
  "suspect-catch": { severity: "serious", asks: "look-first", endedBy: ["checked", "excluded"] },
  "suspect-only-in-fill": { severity: "note", asks: "to-know" },
  "two-disagree": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["more-catches", "checked", "excluded"],
  },
  "two-disagree-in-fill-only": { severity: "note", asks: "to-know" },
  "more-than-can-be-told": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["checked", "excluded"],
  },
  "too-few-to-judge": { severity: "doubt", asks: "to-know" },
} as const satisfies Readonly<Record<keyof OutlierCautionFacts, Standing>>;
