import type { Disagreement } from "../../model/doubted-estimate.ts";
import type { CatchRemark } from "../../results/catch-remark.ts";
import type { Caution } from "../../results/caution.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { BartlettTest } from "../../statistics/bartlett.ts";
import type { OutsideVariance } from "../../statistics/constant-offset.ts";
import type { FamilyJudgement } from "../../statistics/deleted-residuals.ts";
import type { Explanation } from "./explanations.ts";
import type { NamedTests } from "./named-tests.ts";
import type { OutliersOptions } from "./options.ts";

export type { FamilyJudgement, OutliersOptions };

/**
 * "stands out only when its fill is looked at alone": one fill in twenty shows such a catch by chance, so among many
 * fills it means little. "one of two that disagree": nobody can say which. "nothing to compare with": the other catches
 * agree exactly and no scale division says how well they could disagree. "set aside": beyond doubt among all catch tests
 * of the log, in an earlier fill; it is in no figure.
 */
export type CatchVerdict =
  | "in line"
  | "set aside"
  | "stands out"
  | "stands out only when its fill is looked at alone"
  | "one of two that disagree"
  | "too few to judge"
  | "nothing to compare with";

/** One catch against what the catches of its fill that do not stand out predict for it. */
export interface CatchJudgement {
  readonly row: number;
  readonly fill: FillName;
  readonly catch: number;
  readonly turns: number;
  readonly netKg: number;
  /** Net mass that the others predict; null where it was not judged. */
  readonly expectedKg: number | null;
  /** netKg ÷ expectedKg − 1. */
  readonly relativeResidual: number | null;
  /** Distance from the prediction in its standard errors (deleted residual), Student's t on df. */
  readonly statistic: number | null;
  readonly df: number | null;
  /** Its fill as the family. */
  readonly inFill: FamilyJudgement | null;
  /** The whole log as the family. */
  readonly inLog: FamilyJudgement | null;
  readonly verdict: CatchVerdict;
  /** The family in which it stands out: for the newest fill always the fill; null: in none. */
  readonly family: "this fill" | "whole log" | null;
}

/** What a catch does to the delivery of its fill. */
export interface Influence {
  /** Delivery with all catches of the fill. */
  readonly now: Estimate<"kg/turn">;
  readonly without: Estimate<"kg/turn">;
  /** without ÷ now − 1. */
  readonly relativeChange: number;
}

/** A catch that stands out, with what it does, what may have happened, and what the file says of it. */
export interface Suspect extends CatchJudgement {
  readonly remark: CatchRemark;
  readonly influence: Influence;
  /** Best first; empty: no explanation fits. */
  readonly explanations: readonly Explanation[];
}

/** The two catches of a fill that differ more than the meter's scatter allows. */
export interface DisagreeingPair {
  readonly fill: FillName;
  readonly catches: readonly [number, number];
  /** Difference of their deliveries, as a fraction of the fill's. */
  readonly relativeDifference: number;
  readonly statistic: number;
  readonly inFill: FamilyJudgement;
  readonly inLog: FamilyJudgement;
  readonly family: "this fill" | "whole log";
  /** True when they disagree beyond doubt: then their fill is in no figure. */
  readonly setAside: boolean;
  readonly remarks: readonly CatchRemark[];
}

/** How one fill was judged. */
export interface FillScreening {
  readonly fill: FillName;
  readonly takenAt: string | null;
  readonly catches: number;
  readonly status: "judged" | "too few to judge" | "nothing to compare with";
  /** Degrees of freedom that other fills lend; 0: its own catches alone. */
  readonly outsideDf: number;
  /** Highest less lowest delivery of its catches, over their mean. */
  readonly relativeRange: number;
  /** Catches that stand out with the fill as the family; of a pair, both. */
  readonly standingOut: readonly number[];
  /** True when still more catches stand out, by the stricter test, than a fill of this size can tell apart. */
  readonly moreThanCanBeTold: boolean;
  /** Delivery without all that stand out; null when none does, or two disagree. */
  readonly withoutSuspects: Influence | null;
  /** The tests others ask for by name, on the catches' deliveries per turn, own scatter only, or why one is not given. */
  readonly named: NamedTests;
}

/** Catches the person asked to leave out of one fill, and what that did. */
export interface LeftOutOfFill {
  readonly fill: FillName;
  readonly catches: readonly {
    readonly row: number;
    readonly catch: number;
    readonly reason: string;
  }[];
  /** Delivery as reported, without them. */
  readonly without: Estimate<"kg/turn">;
  /** Delivery with them back in. */
  readonly withThem: Estimate<"kg/turn">;
  /** without ÷ withThem − 1. */
  readonly relativeChange: number;
}

/** Which catches of one bin and product are not to be believed as they stand. */
export interface Outliers {
  readonly kind: "outliers";
  readonly bin: string;
  readonly product: string;
  readonly options: OutliersOptions;
  readonly input: { readonly catches: number; readonly fills: number; readonly leftOut: number };
  /** The newest fill: its family is the fill. */
  readonly today: FillScreening;
  /** Every fill, the newest last. */
  readonly fills: readonly FillScreening[];
  /** Every catch, in order of fills and catches. */
  readonly catches: readonly CatchJudgement[];
  readonly suspects: readonly Suspect[];
  readonly pairs: readonly DisagreeingPair[];
  /** Catches of the newest fill that cannot all be right, too few to say which; null: they can. */
  readonly disagree: Disagreement | null;
  /** What each catch of the newest fill does to its delivery; of more than 200, the 200 that change it most. */
  readonly influence: readonly (Influence & { readonly catch: number })[];
  /** The catch scatter that fills lend each other, before and after the log was screened for it. */
  readonly scatter: {
    readonly before: OutsideVariance | null;
    readonly after: OutsideVariance | null;
    readonly setAside: readonly { readonly fill: FillName; readonly catch: number }[];
    /** Bartlett's test after screening; null when fewer than two fills can be compared. */
    readonly homogeneity: BartlettTest | null;
  };
  /** Half-width of the band for the next fill, relative; with the catches that are set aside, null where none is. */
  readonly nextFill: { readonly halfWidth: number | null; readonly withAll: number | null };
  /** How often a clean newest fill, and a clean log, is told of, is to be looked at first; and a clean log loses a catch. */
  readonly falseAlarms: {
    readonly told: number;
    readonly lookFirst: number;
    readonly setAside: number;
  };
  /** Tests of single catches that this meter puts into the family of the log. */
  readonly tests: number;
  /** Meters whose catch tests make up that family. */
  readonly metersInLog: number;
  readonly leftOut: readonly LeftOutOfFill[];
  readonly cautions: readonly Caution[];
}
