import type { NumberOfCatches } from "../../model/next-catch.ts";
import type { NextCatchCurve } from "../../model/next-catch-curve.ts";
import type { WorthOfCatch, WorthOfSkipping } from "../../model/worth-of-catch.ts";
import type { Caution } from "../../results/caution.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { LentBy } from "../../results/lent-by.ts";
import type { CatchesNeededOptions, StoppingRule, TypicalScatter } from "./options.ts";
import type { TrialSplits, TurnsPlan } from "./plans.ts";

export type { CatchesNeededOptions, StoppingRule, TypicalScatter };

/** What says whether catches are enough: their width against the tolerance, or what another one is worth. */
export type Decider = "tolerance" | "money";

/**
 * waits: a catch of this fill must be explained or repeated first · unknown: nothing says how well the fill is known · too
 * few: two catches of one's own cannot say how much they scatter · enough · short: so many more are likely to do ·
 * not reachable: no number within the limits is likely to, or they are all taken.
 */
export type Standing = "waits" | "unknown" | "too few" | "enough" | "short" | "not reachable";

/** How many catches are enough. */
export interface CatchesNeeded {
  readonly kind: "catches-needed";
  /** null: planned before any catch. */
  readonly bin: string | null;
  readonly product: string | null;
  readonly fill: FillName | null;
  readonly options: CatchesNeededOptions;
  readonly input: {
    readonly catches: number;
    readonly turns: number;
    readonly earlierFills: number;
  };
  readonly basis: Knowledge;
  /** Relative half-width reached so far: that of the fill's delivery; null: unknown. */
  readonly halfWidth: number | null;
  /** What to state once the catches are enough: the larger of half-width and tolerance; null: not enough, or unknown. */
  readonly statedHalfWidth: number | null;
  /** Catches before the width may decide, and how many times it is widened for that. */
  readonly stopping: StoppingRule;
  readonly standing: Standing;
  /** Null: neither can speak, while catches must be explained or taken first. */
  readonly decides: Decider | null;
  /** What one catch more is worth, whichever decides; null: no prices, nothing known yet, or no further catch allowed. */
  readonly worth: WorthOfCatch | null;
  /**
   * The fewest further catches likely to reach the tolerance, or, where money decides, those that pay; null: none is, none
   * is needed, or nobody can tell.
   */
  readonly needed: NumberOfCatches | null;
  /** Whether the fill to come may go uncaught; null: the fills so far cannot say, or label or law sets rates. */
  readonly skip: SkipAdvice | null;
  /** Chance that the rate is off by more than the tolerance with the drive set now; null: unknown. */
  readonly chanceOffTolerance: number | null;
  /** Turns of a catch from which on reading the scale leaves the tolerance within reach; null: not known. */
  readonly leastTurns: number | null;
  /** Earlier fills alone, the catches made, and each further one of the turns needed, else of the same. */
  readonly curve: NextCatchCurve;
  readonly turnsPlan: TurnsPlan | null;
  readonly trialPlan: TrialSplits | null;
  readonly cautions: readonly Caution[];
}

/** Whether the fill to come may go uncaught, with the drive left at the assumed value. */
export interface SkipAdvice {
  readonly decides: Decider;
  readonly skips: boolean;
  /** What the drive is left at then, kg/turn. */
  readonly setToKgPerTurn: number;
  /** Fills of the level in force. */
  readonly fills: number;
  /** Chance that it is off by more than the tolerance then; null: too few fills for a small chance to be believed. */
  readonly chanceOff: number | null;
  /** Up to which a tolerance lets a fill go uncaught. */
  readonly chanceBorne: number;
  /** Money, whichever decides; null: no prices, or without bound. */
  readonly worth: WorthOfSkipping | null;
}

/** What is known when the question is asked; everything relative to the delivery, so that it holds for any product. */
export interface Knowledge {
  /** The fill asked about; null: one still to come. */
  readonly fill: FillName | null;
  /** Catches of it so far. */
  readonly catches: number;
  /** Their turns together. */
  readonly turns: number;
  readonly earlierFills: number;
  /** Turns of each further catch. */
  readonly turnsPerCatch: number;
  /** The longest catch that bag and scale take, in turns; null: nobody can tell before the first catch. */
  readonly longestTurns: number | null;
  /** The heaviest catch that was counted with, kg, and whether somebody gave it. */
  readonly heaviestCatch: { readonly kg: number; readonly given: boolean };
  /** Whose catch scatter speaks. */
  readonly scatter: "lent" | "own" | "assumed";
  /** Who lends it; null: nobody does. */
  readonly lentBy: LentBy | null;
  /** Relative variance of a one-turn catch; one of t turns has 1/t of it; 0: the scale hides it. */
  readonly variancePerTurn: number;
  /** Degrees of freedom behind it; 0: assumed. */
  readonly df: number;
  /** The same as a relative standard deviation of a catch of turnsPerCatch turns. */
  readonly relativeScatter: number;
  /** Scale division over delivery per turn: the turns that weigh one division; null: unknown. */
  readonly divisionInTurns: number | null;
  /** Relative half-width of the fill's delivery, as every answer states it; null: unknown. */
  readonly halfWidth: number | null;
  /** A catch of the fill is in doubt, or its catches do not agree. */
  readonly inDoubt: boolean;
}
