import { at, lastOf } from "../errors/at.ts";
import { type FillGap, fillOrderOf } from "../model/fill-order.ts";
import {
  type HistoryStatus,
  type HistoryStep,
  type MeterHistory,
  type Stretch,
  stretchInForce,
} from "../model/history.ts";
import type {
  ApartFill,
  DifferingFill,
  FoundChange,
  TrendingFills,
} from "../model/history-findings.ts";
import { deliveriesOf, type Meter } from "../model/meters.ts";
import { estimateOf, type MeterModel, type ModelOptions } from "../model/model.ts";
import type { Caution } from "../results/caution.ts";
import type { Estimate } from "../results/estimate.ts";
import type { FillName } from "../results/fill-name.ts";
import { requireModelOptions } from "../results/options.ts";
import { mean } from "../statistics/summary.ts";
import { againstEarlier } from "./drift/as-they-came.ts";
import { type ByName, byName } from "./drift/by-name.ts";
import { driftCautions } from "./drift/cautions.ts";
import { changesOf, changeTests, type DriftShift, type DriftTrend } from "./drift/changes.ts";
import { type Noticing, noticingOf } from "./drift/noticing.ts";
import { type DriftPower, type FalseAlarms, falseAlarmsOf, powerOf } from "./drift/rates.ts";
import { type ScoreCharts, scoreCharts } from "./drift/score-charts.ts";
import { type SettlingTest, settlingTests } from "./drift/settling.ts";
import { type DriftStep, nextSteps } from "./drift/verdict.ts";

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

/**
 * Has this meter moved since earlier fills: since when, how much, and what to do about it?
 *
 * The decision is the model's, one after every fill (`historyOf`): averaged evidence of a lasting shift, told as trending
 * when a straight line explains more; else the newest fill at p ≤ .002, which the next fill settles. Beside it stand, as
 * explanation, tests that look once, at the end: least-squares slope on the order, t(k − 2), and the largest pooled
 * two-sample |t| over the splits, adjusted together by Holm's method; and charts of scores.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  tolerance for the tolerance lines; level of sizes' intervals and of the explaining tests;
 *                 shiftOfInterest as its comment says
 * @param meters   all meters of the log, or of the bin, to know what else was in it
 * @param asked    of how many meters it is asked whether a column splits their fills; default: as many as are given
 * @returns        sizes as fractions, with intervals; verdict and steps as literal words
 * Null when       as the fields say; fills that agree exactly leave nothing to judge by (caution fills-agree-exactly)
 * Assumes         near-normal fills of one spread, which earlier levels share, and about which other meters tell where they
 *                 lend. A steady meter is called moved, trending or differing in 1 of 20 seasons of 12 fills, more often where
 *                 neighbouring fills are alike or differ more than those of the meters that lend: reports/drift-study.md
 * Source          Hawkins 1977, JASA 72, 180; Worsley 1986, Biometrika 73, 91; Jeffreys 1961, Theory of Probability, 5.2;
 *                 Quesenberry 1991, J. Quality Technology 23, 213; Holm 1979
 */
export function drift(
  meter: MeterModel,
  options: DriftOptions,
  meters: readonly Meter[] = [],
  asked = Math.max(1, meters.length),
): Drift {
  const { order, explained, settling, cautions } = driftInBrief(meter, options, meters, asked);
  const { level, tolerance, shiftOfInterest } = options;
  const { history, fills, bin, product } = meter;
  const deliveries = deliveriesOf(fills);
  const center = history.differs?.earlier ?? meter.across.mean.value;
  return {
    kind: "drift",
    bin,
    product,
    options,
    input: {
      fills: fills.length,
      fillsInForce: stretchInForce(history).length,
      otherProducts: order.otherProducts,
      gaps: order.gaps,
    },
    verdict: history.status,
    nextSteps: nextSteps(history.status),
    fills: driftFills(meter, options),
    stretches: history.stretches.map(stretchOf),
    ...findingsOf(history),
    toleranceLines: {
      center,
      lower: center * (1 - tolerance),
      upper: center * (1 + tolerance),
    },
    falseAlarms: falseAlarmsOf(meter),
    power: powerOf(meter, shiftOfInterest),
    noticing: noticingOf(meter),
    ...changesOf(explained, fills, level),
    scoreCharts: scoreCharts(fills, againstEarlier(deliveries, level)),
    byName: byName(fills),
    settling,
    cautions,
  };
}

/** The findings of `drift`, and what they are made from, without what is drawn. */
export function driftInBrief(
  meter: MeterModel,
  options: DriftOptions,
  meters: readonly Meter[] = [],
  asked = Math.max(1, meters.length),
) {
  requireModelOptions(options);
  const { level } = options;
  const order = fillOrderOf(meter, meters);
  const explained = changeTests(meter.fills);
  const settling = settlingTests(meter.fills, level);
  const cautions = driftCautions({ meter, order, explained, settling, level, meters: asked });
  return { order, explained, settling, cautions };
}

function driftFills(meter: MeterModel, options: DriftOptions): readonly DriftFill[] {
  const { history, fills } = meter;
  return fills.map((fill, i) => {
    const stretch = history.stretches.findIndex((one) => one.fills.includes(fill));
    return {
      fill: fill.fill,
      takenAt: fill.takenAt,
      catches: fill.totals.catches,
      estimate: estimateOf(meter, fill, options).estimate,
      stretch: stretch === -1 ? null : stretch,
      step: history.steps[i] ?? null,
    };
  });
}

function stretchOf({ fills, begins }: Stretch): DriftStretch {
  return {
    from: at(fills, 0).fill,
    to: lastOf(fills).fill,
    fills: fills.length,
    begins,
    mean: mean(deliveriesOf(fills)),
  };
}

function findingsOf({ moved, changes, differs, trending, stoodApart }: MeterHistory) {
  return { moved, changes, differs, trending, stoodApart };
}
