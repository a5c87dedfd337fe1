import type { FillGap } from "../../model/fill-order.ts";
import type { HistoryStatus, HistoryStep, Stretch } from "../../model/history/result.ts";
import type {
  ApartFill,
  DifferingFill,
  FoundChange,
  TrendingFills,
} from "../../model/history-findings.ts";
import type { ModelOptions } from "../../model/model.ts";
import type { Caution } from "../../results/caution.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { ByName } from "./by-name.ts";
import type { DriftShift, DriftTrend } from "./changes.ts";
import type { Noticing } from "./noticing.ts";
import type { DriftPower, FalseAlarms } from "./rates.ts";
import type { ScoreCharts } from "./score-charts.ts";
import type { SettlingTest } from "./settling.ts";
import type { DriftStep } from "./verdict.ts";

export interface DriftOptions extends ModelOptions {
  /** Lasting shift for which the power is stated, as a fraction of the delivery. */
  readonly shiftOfInterest: number;
}

/** One fill in the order of time. */
export interface DriftFill {
  readonly fill: FillName;
  readonly takenAt: string | null;
  readonly catches: number;
  /** Interval about this fill's delivery. */
  readonly estimate: Estimate<"kg/turn">;
  /** Place of its stretch in `stretches`; null: it stood apart. */
  readonly stretch: number | null;
  /** What was decided when it came; null: not asked. */
  readonly step: HistoryStep | null;
}

/** Fills of one level. */
export interface DriftStretch {
  readonly from: FillName;
  readonly to: FillName;
  readonly fills: number;
  readonly begins: Stretch["begins"];
  /** Mean of their deliveries, kg/turn. */
  readonly mean: number;
}

/** Has the meter moved over the fills of one bin and product? */
export interface Drift {
  readonly kind: "drift";
  readonly bin: string;
  readonly product: string;
  readonly options: DriftOptions;
  readonly input: {
    readonly fills: number;
    /** Those of the level in force. */
    readonly fillsInForce: number;
    readonly otherProducts: readonly string[];
    readonly gaps: readonly FillGap[];
  };
  readonly verdict: HistoryStatus;
  readonly nextSteps: readonly DriftStep[];
  /** Oldest first. */
  readonly fills: readonly DriftFill[];
  /** Oldest first; the last one is in force. */
  readonly stretches: readonly DriftStretch[];
  /** The change that the verdict "moved" is about, and while it qualifies what to do; null: none, or it is history. */
  readonly moved: FoundChange | null;
  /** Every change that was found, oldest first. */
  readonly changes: readonly FoundChange[];
  /** The newest fill, where it stands apart. */
  readonly differs: DifferingFill | null;
  readonly trending: TrendingFills | null;
  readonly stoodApart: readonly ApartFill[];
  /**
   * What a fill must stay within for the rate to stay within the tolerance, if the drive is set for `center`, the level in
   * force without a fill that differs. These are no control limits: they come from what is wanted.
   */
  readonly toleranceLines: {
    readonly center: number;
    readonly lower: number;
    readonly upper: number;
  };
  /** Of a meter like this one, its spread told by its own fills only or by others too. */
  readonly falseAlarms: FalseAlarms;
  /** Null after a change was found, below 4 fills, and without any spread. */
  readonly power: DriftPower | null;
  /** What would be found of a shift that sets in with the next fill; null: not known, or nobody looks. */
  readonly noticing: Noticing | null;
  /** Explanation, looked at once, at the end: it never changes the verdict. Null below 5 fills. */
  readonly trend: DriftTrend | null;
  /** Explanation likewise: the likeliest shift, whether or not it is more than chance; null below 6 fills. */
  readonly shift: DriftShift | null;
  readonly scoreCharts: ScoreCharts;
  readonly byName: ByName | null;
  readonly settling: readonly SettlingTest[];
  readonly cautions: readonly Caution[];
}
