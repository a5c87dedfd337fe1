import type { SetupPlace } from "../../data/setup.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { SeriesOutcome, SeriesStep } from "../../statistics/shift-replay.ts";
import type { SpreadPrior } from "../../statistics/spread-prior.ts";
import type { ApartFill, DifferingFill, FoundChange, TrendingFills } from "../history-findings.ts";
import type { Fill, Meter } from "../meters.ts";

/**
 * not asked: as the caller wished · too few fills: fewer than 4 since the level began · steady · fill differs: the newest
 * stands apart, and the next one, or more catches of this one, will settle it · fill differs, confirmed: by many more
 * catches than usual · stood apart: the fill before the newest was the odd one, the newest is back · moved: found with
 * the newest fill, or fewer than 4 fills ago · trending: each fill delivers more, or less, than the last.
 */
export type HistoryStatus =
  | "not asked"
  | "too few fills"
  | "steady"
  | "fill differs"
  | "fill differs, confirmed"
  | "stood apart"
  | "moved"
  | "trending";

/** Fills of one level, in order of time; those that stood apart are not among them. */
export interface Stretch {
  readonly fills: readonly Fill[];
  /**
   * What began it: the first fill of the log; a change that was found; the setup, which says that the meter was opened or
   * changed; or it is a fill alone that differed just before that, so that nothing settled it.
   */
  readonly begins: "log" | "moved" | "setup" | "unsettled";
}

/** What was decided when a fill came. */
export interface HistoryStep {
  readonly fill: FillName;
  readonly outcome: SeriesOutcome;
  /** What the fill before, which differed, turned out to be with this one. */
  readonly settled: SeriesStep["settled"];
  /** Of this fill against those before it in its stretch; null: could not be asked. */
  readonly pValue: number | null;
  /** Averaged evidence of a lasting shift, so much to 1, and the limit for it; null: could not be asked. */
  readonly evidence: number | null;
  readonly limit: number | null;
}

/** Whether a meter has moved over its fills, asked after every fill, and what that leaves of them. */
export interface MeterHistory {
  readonly status: HistoryStatus;
  /** Oldest first; the last is in force: level and next fill rest on it, the spread rests on all. */
  readonly stretches: readonly Stretch[];
  /** Left out of mean and spread, oldest first. */
  readonly stoodApart: readonly ApartFill[];
  /** Every change of level that was found, oldest first. */
  readonly changes: readonly FoundChange[];
  /** The last of them, while it qualifies what to do; null: none, or it is history. */
  readonly moved: FoundChange | null;
  readonly differs: DifferingFill | null;
  readonly trending: TrendingFills | null;
  /** One for every fill; empty when not asked. */
  readonly steps: readonly HistoryStep[];
  /** The stretch in force as it stood before the newest fill came. */
  readonly beforeNewest: readonly Fill[];
}

/** Fill before which a meter was opened, cleaned or changed; product null: whatever product is in the bin. */
export interface FreshStart extends SetupPlace {
  readonly fill: number;
  /** Its season; null or left out: the log has one. */
  readonly season?: string | null | undefined;
}

/** How the history of a meter is to be read; everything optional. */
export interface HistoryChoices {
  /** Default "after every fill"; "never" where fills were planned to differ, as in a trial with blocks. */
  readonly asked?: "after every fill" | "never";
  /** Default none. */
  readonly startsAfresh?: readonly FreshStart[];
  /** What other meters say of the relative spread of fills, now; default nothing, this meter's own speaks. */
  readonly prior?: SpreadPrior;
  /** Whether a fill holds a catch that is not believed, and so cannot confirm itself; default: no fill does. */
  readonly flagged?: (fill: Fill) => boolean;
}

/** How the order of a meter's fills is read. */
export interface HistoryReading {
  readonly historyOf: (meter: Meter, level: number, choices: HistoryChoices) => MeterHistory;
  /** The stretches of that history alone. */
  readonly stretchesOf: (meter: Meter, choices: HistoryChoices) => readonly Stretch[];
}
