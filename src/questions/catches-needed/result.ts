import type { ModelOptions } from "../../model/model.ts";
import type { NextCatchCurve } from "../../model/next-catch.ts";
import type { Caution } from "../../results/caution.ts";
import type { TimeBudget, TrialCosts, TrialPlan, TurnsPlan } from "./plans.ts";

/** A catch scatter taken for granted until there is one of one's own. */
export interface TypicalScatter {
  /** Relative standard deviation of a catch of `turns` turns. */
  readonly relative: number;
  readonly turns: number;
}

export interface CatchesNeededOptions extends ModelOptions {
  /** Chance wanted of reaching the tolerance. */
  readonly assurance: number;
  /** Which fill: the newest of the log, with the catches it has, or the one still to come. */
  readonly fill: "newest" | "next";
  /** Turns of each further catch; null: as many as so far. */
  readonly turnsPerCatch: number | null;
  /** Catches of one fill after which to stop whatever the width. */
  readonly mostCatches: number;
  /** Catches before the width may decide, where the fill's own scatter speaks. */
  readonly fewestOwn: number;
  /** The same where the scatter of other fills speaks too. */
  readonly fewestPooled: number;
  /** Used, and named as an assumption, where the log shows no catch scatter. */
  readonly typicalScatter: TypicalScatter;
  /** Used, and named as an assumption, where the log shows no fill-to-fill spread apart from catch scatter; relative. */
  readonly typicalSpread: number;
  /** Delivery to plan with before any catch, for the share of the scale's division; null: none. */
  readonly assumedKgPerTurn: number | null;
  readonly time: TimeBudget | null;
  readonly trial: TrialCosts | null;
}

/** How many catches are enough. */
export interface CatchesNeeded {
  readonly kind: "catches-needed";
  /** null: planned before any catch. */
  readonly bin: string | null;
  readonly product: string | null;
  readonly fill: number | null;
  readonly options: CatchesNeededOptions;
  readonly input: {
    readonly catches: number;
    readonly turns: number;
    readonly earlierFills: number;
  };
  readonly basis: Knowledge;
  /** Relative half-width reached so far, by the fill's own catches; null: unknown. */
  readonly halfWidth: number | null;
  /** Whether it is within the tolerance; null: unknown. */
  readonly met: boolean | null;
  readonly stopping: StoppingAdvice;
  /** What 0, 1, 2, … further catches buy. */
  readonly further: readonly FurtherCatches[];
  /** Fewest further catches that reach the tolerance with the assurance wanted; null: none within mostCatches. */
  readonly recommended: Recommendation | null;
  /** The same without the limit of mostCatches; null: none at all, longer catches are needed. */
  readonly withoutLimit: Recommendation | null;
  /** The same with catches of half, as many and twice the turns. */
  readonly byTurns: readonly {
    readonly turns: number;
    readonly recommended: Recommendation | null;
  }[];
  /** Turns from which on reading the scale is a small part of the tolerance; null: division or delivery unknown. */
  readonly turnsForScale: number | null;
  readonly turnsPlan: TurnsPlan | null;
  readonly trialPlan: TrialPlan | null;
  /** How well the next fill would be known after 0, 1, 2, … catches; null: planned before any catch. */
  readonly curve: NextCatchCurve | null;
  readonly cautions: readonly Caution[];
}

/** What is known when the question is asked; everything relative to the delivery, so that it holds for any product. */
export interface Knowledge {
  /** The fill asked about; null: one still to come. */
  readonly fill: number | null;
  /** Catches of it so far. */
  readonly catches: number;
  /** Their turns together. */
  readonly turns: number;
  readonly earlierFills: number;
  /** Turns of each further catch. */
  readonly turnsPerCatch: number;
  /** Whose catch scatter speaks. */
  readonly scatter: "pooled" | "own" | "assumed";
  /** Relative variance of a one-turn catch; one of t turns has 1/t of it. */
  readonly variancePerTurn: number;
  /** Degrees of freedom behind it; 0: assumed. */
  readonly df: number;
  /** The same as a relative standard deviation of a catch of turnsPerCatch turns. */
  readonly relativeScatter: number;
  /** Scale division over delivery per turn: the turns that weigh one division; null: unknown. */
  readonly divisionInTurns: number | null;
}

/** What a number of further catches buys. */
export interface FurtherCatches {
  readonly further: number;
  /** Catches of the fill then. */
  readonly catches: number;
  /** Relative half-width if the scatter stays as it is; null: unknown. */
  readonly halfWidth: number | null;
  /** Relative half-width that will not be exceeded with the chance `assurance`; null: unknown. */
  readonly halfWidthAssured: number | null;
  /** Chance that the half-width is within the tolerance; null: unknown. */
  readonly chance: number | null;
}

export interface Recommendation {
  readonly further: number;
  readonly turns: number;
  readonly chance: number;
}

/** When to stop taking catches, decided beforehand. */
export interface StoppingRule {
  /** Half-width aimed at, relative. */
  readonly tolerance: number;
  /** Catches before the width may decide, where the fill's own scatter speaks. */
  readonly fewestOwn: number;
  /** The same where the scatter of other fills speaks too. */
  readonly fewestPooled: number;
  /** Catches after which to stop whatever the width. */
  readonly mostCatches: number;
}

/** Where a fill stands. */
export interface Progress {
  readonly catches: number;
  /** Relative half-width of the interval so far; null: unknown. */
  readonly halfWidth: number | null;
  readonly scatter: "own" | "pooled" | "assumed";
}

export interface StoppingAdvice {
  readonly action: "catch again" | "stop";
  readonly reason:
    | "too few catches"
    | "wider than tolerance"
    | "within tolerance"
    | "most catches reached";
  /** Catches before the width may decide. */
  readonly fewest: number;
  /** What to state: ± the larger of half-width and tolerance; null: unknown. */
  readonly shownHalfWidth: number | null;
}
