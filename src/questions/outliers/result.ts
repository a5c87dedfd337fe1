import type { MassUnit } from "../../data/types.ts";
import type { ModelOptions } from "../../model/model.ts";
import type { Caution } from "../../results/caution.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { BartlettTest } from "../../statistics/bartlett.ts";
import type { OutsideVariance } from "../../statistics/constant-offset.ts";
import type { FamilyJudgement } from "../../statistics/deleted-residuals.ts";
import type { Explanation } from "./explanations.ts";
import type { NamedTests } from "./named-tests.ts";

export type { FamilyJudgement };

export interface OutlierOptions extends ModelOptions {
  /** Chance that a clean fill, and that a clean log, raises no flag; a fraction, usually 0.95. */
  readonly screeningLevel: number;
  /** Meters screened together: the log's chance of a false flag is shared among them. */
  readonly metersInLog: number;
  /** Unit the masses were written in: swapped digits are looked for in what was written. */
  readonly massUnit: MassUnit;
}

/**
 * "stands out only when its fill is looked at alone": one fill in twenty shows such a catch by chance, so among many
 * fills it means little. "one of two that disagree": nobody can say which. "nothing to compare with": the other catches
 * agree exactly and no scale division says how well they could disagree.
 */
export type CatchVerdict =
  | "in line"
  | "stands out"
  | "stands out only when its fill is looked at alone"
  | "one of two that disagree"
  | "too few to judge"
  | "nothing to compare with";

/** One catch against what the catches of its fill that do not stand out predict for it. */
export interface CatchJudgement {
  readonly row: number;
  readonly fill: number;
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
  /** Delivery with it, as the fill stands. */
  readonly now: Estimate<"kg/turn">;
  readonly without: Estimate<"kg/turn">;
  /** without ÷ now − 1. */
  readonly relativeChange: number;
}

/** A catch that stands out, with what it does and what may have happened. Nothing is done to it. */
export interface Suspect extends CatchJudgement {
  readonly influence: Influence;
  /** Best first; empty: no explanation fits. */
  readonly explanations: readonly Explanation[];
}

/** The two catches of a fill that differ more than the meter's scatter allows. */
export interface DisagreeingPair {
  readonly fill: number;
  readonly catches: readonly [number, number];
  /** Difference of their deliveries, as a fraction of the fill's. */
  readonly relativeDifference: number;
  readonly statistic: number;
  readonly inFill: FamilyJudgement;
  readonly inLog: FamilyJudgement;
  readonly family: "this fill" | "whole log";
}

/** How one fill was judged. */
export interface FillScreening {
  readonly fill: number;
  readonly takenAt: string | null;
  readonly catches: number;
  readonly status: "judged" | "too few to judge" | "nothing to compare with";
  /** Degrees of freedom that other fills lend; 0: its own catches alone. */
  readonly outsideDf: number;
  /** Highest over lowest delivery of its catches, − 1. */
  readonly relativeRange: number;
  /** Catches that stand out with the fill as the family; of a pair, both. */
  readonly standingOut: readonly number[];
  /** True when still more catches stand out than a fill of this size can tell apart. */
  readonly moreThanCanBeTold: boolean;
  /** Delivery without all that stand out; null when none does, or two disagree. */
  readonly withoutSuspects: Influence | null;
  /** The tests others ask for by name, on the catches' deliveries per turn, own scatter only, or why one is not given. */
  readonly named: NamedTests;
}

/** Catches the person asked to leave out of one fill, and what that did. */
export interface LeftOutOfFill {
  readonly fill: number;
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
  readonly options: OutlierOptions;
  readonly input: { readonly catches: number; readonly fills: number; readonly leftOut: number };
  /** The newest fill: its family is the fill. */
  readonly today: FillScreening;
  /** Every fill, the newest last. */
  readonly fills: readonly FillScreening[];
  /** Every catch, in order of fills and catches. */
  readonly catches: readonly CatchJudgement[];
  readonly suspects: readonly Suspect[];
  readonly pairs: readonly DisagreeingPair[];
  /** What each catch of the newest fill does to its delivery. */
  readonly influence: readonly (Influence & { readonly catch: number })[];
  /** The catch scatter that fills lend each other, before and after the log was screened for it. */
  readonly scatter: {
    readonly before: OutsideVariance | null;
    readonly after: OutsideVariance | null;
    readonly setAside: readonly { readonly fill: number; readonly catch: number }[];
    /** Bartlett's test after screening; null when fewer than two fills can be compared. */
    readonly homogeneity: BartlettTest | null;
  };
  /** Tests in the log's family, this meter's alone. */
  readonly testsInLog: number;
  readonly leftOut: readonly LeftOutOfFill[];
  readonly cautions: readonly Caution[];
}
