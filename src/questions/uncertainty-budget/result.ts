import type { Caution } from "../../results/caution.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { InputLaw } from "../../statistics/propagation.ts";
import type { UncertaintyBudgetOptions } from "./options.ts";

export type { UncertaintyBudgetOptions };

/** Where doubt about the applied rate comes from. */
export type BudgetSource =
  /** How repeated catches differ. */
  | "catch scatter"
  | "reading gross"
  | "reading tare"
  /** What a known mass showed the scale to be wrong by; the same for every catch, so it does not average out. */
  | "scale error"
  /** What is common to the counts of all catches, such as a stop mark; what differs between them is catch scatter. */
  | "turn count"
  | "fill to fill"
  /** What the next fill adds while each delivers more, or less, than the one before; known, and not taken off. */
  | "drift"
  | "working width"
  | "wheel travel"
  | "slip";

/** A source that nothing given says anything about. */
export type LeftOut = BudgetSource | "drive" | "speed measure";

/** One line of the budget. */
export interface BudgetLine {
  readonly source: BudgetSource;
  /** Unit of value and standard uncertainty. */
  readonly unit: "kg/turn" | "turns" | "m" | "fraction";
  readonly value: number;
  readonly standardUncertainty: number;
  readonly law: InputLaw;
  /** null: known well. */
  readonly df: number | null;
  /** Relative change of the rate for each unit. */
  readonly sensitivity: number;
  /** |sensitivity| × standard uncertainty: a fraction of the rate. */
  readonly contribution: number;
  /** Of the combined variance. */
  readonly share: number;
}

/** The budget's linear sum against the same sources drawn at random. */
export interface BudgetCheck {
  /** Made; `draws` of the options is the most. */
  readonly draws: number;
  readonly seed: number;
  /** Rate errors that enclose the level's share of the draws, as many outside on either side. */
  readonly lower: number;
  readonly upper: number;
  readonly standardDeviation: number;
  /** Larger of the two distances between the ends of the drawn and of the budget's interval. */
  readonly difference: number;
  /**
   * What the ends may differ by: half a unit of the first digit of the combined uncertainty, or four standard errors
   * of the drawn ends where these are larger.
   */
  readonly limit: number;
  readonly agrees: boolean;
}

/** Where on the way from the scale to the field an uncertainty comes in; ground: width, wheel and slip. */
export type StaircaseStage = "scale" | "catches" | "fills" | "drift" | "ground";

/** What one stage adds to the variance of the rate. */
export interface StaircaseStep {
  readonly stage: StaircaseStage;
  /** Empty: nothing given says anything of it; of drift: none was found. */
  readonly sources: readonly BudgetSource[];
  /** Of the combined variance. */
  readonly share: number;
  /** Where the step begins and ends: the shares of all stages up to it. */
  readonly from: number;
  readonly to: number;
  /** What half its standard uncertainty would leave and save, money/ha; null: it adds nothing. */
  readonly ifHalved: {
    readonly expanded: number;
    readonly savesPerHectare: number | null;
  } | null;
}

/** How the variance of the rate builds up when this fill's value is kept for the fills that follow. */
export interface Staircase {
  readonly steps: readonly StaircaseStep[];
  /** Half-width at the level, a fraction of the rate. */
  readonly expanded: number;
  /** Expected cost of the rate error, money/ha; null: no response is given, or it has no bound. */
  readonly lossPerHectare: number | null;
}

/** The applied rate's uncertainty, relative to the rate, and what it is made of. */
export interface UncertaintyBudget {
  readonly kind: "uncertainty-budget";
  readonly bin: string;
  readonly product: string;
  readonly fill: FillName;
  readonly options: UncertaintyBudgetOptions;
  /** Largest share first; empty where the catch scatter is unknown. */
  readonly lines: readonly BudgetLine[];
  readonly leftOut: readonly LeftOut[];
  /** Fractions of the rate; null where the catch scatter is unknown. */
  readonly total: {
    readonly combined: number;
    /** Welch–Satterthwaite, catch scatter and readings of the scale as one; null: infinite. */
    readonly effectiveDf: number | null;
    readonly coverageFactor: number;
    /** Half-width at the level. */
    readonly expanded: number;
    readonly withinTolerance: boolean;
  } | null;
  readonly check: BudgetCheck | null;
  /** The largest source, and the expanded uncertainty if it were half as large. */
  readonly improveFirst: {
    readonly source: BudgetSource;
    readonly share: number;
    readonly expandedIfHalved: number;
  } | null;
  /** Null where the catch scatter is unknown. */
  readonly staircase: Staircase | null;
  readonly cautions: readonly Caution[];
}
