/** The time there is for the catches of one fill, and what a catch takes. */
export interface TimeBudget {
  readonly minutes: number;
  /** Bag, scale and note of each catch, before any turn. */
  readonly minutesPerCatch: number;
  readonly turnsPerMinute: number;
  /** As many as the bag holds and the scale weighs. */
  readonly longestTurns: number;
  /** Scatter that more turns do not lessen (a slack count of turns in proportion, a slipping hand), relative. */
  readonly proportionalScatter: number;
}

/** One way to spend the time: so many catches, each as long as the time allows. */
export interface TurnsChoice {
  readonly catches: number;
  readonly turns: number;
  readonly minutes: number;
  /** Relative half-width to be expected. */
  readonly halfWidth: number;
}

export interface TurnsPlan {
  readonly choices: readonly TurnsChoice[];
  /** The narrowest of them with at least as many catches as the width may be judged by; null: no time for that. */
  readonly best: TurnsChoice | null;
  /**
   * Turns from which on a longer catch is no longer worth its time, if time were all; null: the longest the bag and
   * the scale allow.
   */
  readonly worthwhileTurns: number | null;
}

/** What a trial costs, all in one unit: money, or minutes. */
export interface TrialCosts {
  readonly budget: number;
  readonly perFill: number;
  readonly perCatch: number;
  readonly perTurn: number;
  /** For each turn level of a fill beyond the first. */
  readonly perExtraLevel: number;
}

/** One way to split the budget. */
export interface TrialSplit {
  readonly fills: number;
  readonly catchesPerFill: number;
  /** Turn levels within each fill; two let a constant mass be seen. */
  readonly turnLevels: readonly number[];
  readonly cost: number;
  /** Relative half-width of the interval for the mean over fills. */
  readonly halfWidth: number;
  /** Relative difference from a fixed value that is found with a chance of 80 %. */
  readonly detectable: number;
  /** Constant mass in every catch found with that chance, as a share of a catch's mass; null: cannot be told. */
  readonly detectableConstant: number | null;
}

export interface TrialSplits {
  /** Relative fill-to-fill spread the plan rests on, catch scatter taken out. */
  readonly spread: number;
  readonly spreadFrom: "fills" | "assumption";
  /** n* = √((cost of a fill)/(cost of a catch))·(catch scatter ÷ spread), not rounded. */
  readonly idealCatchesPerFill: number;
  /** For each number of fills the most catches that the budget allows, with one turn level and with two. */
  readonly splits: readonly TrialSplit[];
  /** The narrowest with catches enough to know the scatter. */
  readonly best: TrialSplit | null;
  /** The narrowest in which a constant mass can be seen. */
  readonly bestWithTwoLevels: TrialSplit | null;
}
