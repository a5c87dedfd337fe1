import type { CatchRemark } from "../catch-remark.ts";
import type { Mishap } from "../mishap.ts";
import type { Standing } from "../severity.ts";

/** A catch of the newest fill that stands out among its fellows. */
export interface SuspectFacts {
  readonly relativeResidual: number;
  /** With the fill as the family. */
  readonly pValue: number;
  /** What fits, best first. */
  readonly mishaps: readonly Mishap[];
  /** True: what follows is without both catches that stand out and that nobody has checked. */
  readonly both: boolean;
  readonly withoutKgPerTurn: number;
  readonly relativeChange: number;
  readonly remark: CatchRemark;
}

/** Two catches of one fill that lie farther apart than the scatter that other fills lend. */
export interface PairFacts {
  readonly relativeDifference: number;
  readonly pValue: number;
  readonly remarks: readonly CatchRemark[];
}

/** About catches that are not to be believed. */
export interface OutlierCautionFacts {
  // outliers
  readonly "suspect-catch": SuspectFacts;
  readonly "catch-stands-out": SuspectFacts;
  readonly "suspect-checked": SuspectFacts;
  readonly "suspect-in-earlier-fill": {
    readonly relativeResidual: number;
    /** With all catch tests of the log as the family. */
    readonly pValue: number;
    readonly mishaps: readonly Mishap[];
    readonly remark: CatchRemark;
  };
  readonly "suspect-only-in-fill": {
    readonly relativeResidual: number;
    readonly pValue: number;
    /** Fills of such a log that show one by chance. */
    readonly expectedByChance: number;
    readonly remark: CatchRemark;
  };
  readonly "catch-set-aside": {
    /** Net mass ÷ what its fellows predict. */
    readonly timesFellows: number;
    /** With all catch tests of the log as the family. */
    readonly pValue: number;
    readonly mishaps: readonly Mishap[];
    /** Catches of this meter that are set aside, this one among them. */
    readonly setAside: number;
    /** Half-widths of the band for the next fill, relative; null: unknown. */
    readonly nextFill: number | null;
    readonly nextFillWithAll: number | null;
    readonly remark: CatchRemark;
  };
  readonly "fill-set-aside": PairFacts & {
    readonly nextFill: number | null;
    readonly nextFillWithAll: number | null;
  };
  readonly "catches-disagree": {
    /** Highest less lowest delivery, over their mean. */
    readonly relativeRange: number;
    /** What each pair gives, kg/turn; of two catches what each gives by itself. */
    readonly pairs: readonly { readonly catches: readonly number[]; readonly value: number }[];
    readonly remarks: readonly CatchRemark[];
  };
  readonly "two-disagree": PairFacts;
  readonly "two-lie-apart": PairFacts;
  readonly "two-checked": PairFacts;
  readonly "two-disagreed-earlier": PairFacts;
  readonly "two-disagree-in-fill-only": PairFacts & { readonly expectedByChance: number };
  readonly "more-than-can-be-told": { readonly catches: number };
  readonly "too-few-to-judge": {
    readonly catches: number;
    /** Highest less lowest delivery of the catches, over their mean. */
    readonly relativeRange: number;
    /** Range above which catches cannot all be right, whatever they usually scatter by. */
    readonly grossRange: number;
    readonly outsideDf: number;
  };
}

export const outlierStandings = {
  "suspect-catch": { severity: "serious", asks: "look-first", endedBy: ["checked", "excluded"] },
  "catch-stands-out": { severity: "doubt", asks: "catch-more" },
  "suspect-checked": { severity: "note", asks: "to-know" },
  "suspect-in-earlier-fill": { severity: "note", asks: "to-know" },
  "suspect-only-in-fill": { severity: "note", asks: "to-know" },
  "catch-set-aside": { severity: "doubt", asks: "to-know" },
  "fill-set-aside": { severity: "doubt", asks: "to-know" },
  "catches-disagree": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["more-catches", "checked", "excluded"],
  },
  "two-disagree": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["more-catches", "checked", "excluded"],
  },
  "two-lie-apart": { severity: "doubt", asks: "catch-more" },
  "two-checked": { severity: "note", asks: "to-know" },
  "two-disagreed-earlier": { severity: "note", asks: "to-know" },
  "two-disagree-in-fill-only": { severity: "note", asks: "to-know" },
  "more-than-can-be-told": {
    severity: "serious",
    asks: "look-first",
    endedBy: ["checked", "excluded"],
  },
  "too-few-to-judge": { severity: "doubt", asks: "to-know" },
} as const satisfies Readonly<Record<keyof OutlierCautionFacts, Standing>>;
