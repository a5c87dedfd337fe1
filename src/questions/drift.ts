import { mean } from "simple-statistics";
import type { Fill, Meter } from "../model/meters.ts";
import { estimateOf, type MeterModel, type ModelOptions } from "../model/model.ts";
import type { Caution } from "../results/caution.ts";
import type { Estimate } from "../results/estimate.ts";
import { requireModelOptions } from "../results/options.ts";
import { type AgainstEarlier, againstEarlier } from "./drift/as-they-came.ts";
import { type ByName, byName } from "./drift/by-name.ts";
import { driftCautions } from "./drift/cautions.ts";
import { changesOf, type DriftShift, type DriftTrend } from "./drift/changes.ts";
import { type NewestFill, newestFillOf } from "./drift/newest.ts";
import { type DriftPower, type FalseAlarms, ratesOf } from "./drift/rates.ts";
import { type ScoreCharts, scoreCharts } from "./drift/score-charts.ts";
import { type SettlingTest, settlingTests } from "./drift/settling.ts";
import { spreadOf } from "./drift/spread.ts";
import { type FillGap, type ProductChange, stretchesOf } from "./drift/stretches.ts";
import { type DriftStep, type DriftVerdict, driftVerdict, nextSteps } from "./drift/verdict.ts";

export interface DriftOptions extends ModelOptions {
  /** Shift for which the power is stated, as a fraction of the delivery. */
  readonly shiftOfInterest: number;
  /** Whether fills before another product was in the bin count. */
  readonly productChange: ProductChange;
}

/** One fill in the order of time. */
export interface DriftFill {
  readonly fill: number;
  readonly takenAt: string | null;
  readonly catches: number;
  /** Interval about this fill's delivery. */
  readonly estimate: Estimate<"kg/turn">;
  /** False for fills before another product was in the bin. */
  readonly judged: boolean;
  /** Against the fills before it, at the limit for every fill of a season; null for the first three. */
  readonly asItCame: AgainstEarlier | null;
}

/** Has the meter moved over the fills of one bin and product? */
export interface Drift {
  readonly kind: "drift";
  readonly bin: string;
  readonly product: string;
  readonly options: DriftOptions;
  readonly input: {
    /** Fills since the bin last held another product: those that are judged. */
    readonly fills: number;
    /** Earlier fills, not judged because another product was in the bin since. */
    readonly fillsSetAside: number;
    readonly otherProducts: readonly string[];
    readonly gaps: readonly FillGap[];
  };
  readonly verdict: DriftVerdict;
  readonly nextSteps: readonly DriftStep[];
  /** Oldest first. */
  readonly fills: readonly DriftFill[];
  /** Null below 5 fills. */
  readonly trend: DriftTrend | null;
  /** The likeliest shift, whether or not it is more than chance; null below 6 fills. */
  readonly shift: DriftShift | null;
  /** Null below 3 fills. */
  readonly newest: NewestFill | null;
  /**
   * What a fill must stay within for the rate to stay within the tolerance, if the drive is set for `center`: the mean of
   * the fills before the newest, or before the shift. These are no control limits: they come from what is wanted.
   */
  readonly toleranceLines: {
    readonly center: number;
    readonly lower: number;
    readonly upper: number;
  };
  readonly falseAlarms: FalseAlarms;
  /** Null below 5 fills, or without any spread between fills. */
  readonly power: DriftPower | null;
  readonly scoreCharts: ScoreCharts;
  readonly byName: ByName | null;
  readonly settling: readonly SettlingTest[];
  readonly cautions: readonly Caution[];
}

/**
 * Has this meter moved since earlier fills: since when, how much, and what to do about it?
 *
 * One estimate a fill, in order of time. (a) Trend: least-squares slope on the order, t(k − 2). (b) Newest fill against the
 * prediction interval of the earlier ones, and every fill as it came at (1 − level)/(k − 3). (c) One shift: largest pooled
 * two-sample |t| over the splits. (a) and (c) are adjusted together by Holm's method; (b) is one look of its own.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  level: 1 − level is the false-alarm rate of every finding; tolerance for the tolerance lines;
 *                 shiftOfInterest and productChange as their comments say
 * @param meters   all meters of the log, to know what else was in the bin; those of other bins are passed over
 * @returns        sizes in kg/turn and as fractions, with intervals; verdict and steps as literal words
 * Null when       too few fills (cautions no-trend-yet, no-change-point-yet); fills that agree exactly
 *                 (caution fills-agree-exactly)
 * Assumes         independent normal fills of one spread. Fills alike when close in time raise the false alarms of the
 *                 season tests, so a finding reads "trend or slow wander". Rates and power: reports/drift-study.md
 * Source          ISO 7870-2; Hawkins 1977, JASA 72, 180; Worsley 1986, Biometrika 73, 91; Quesenberry 1991,
 *                 J. Quality Technology 23, 213; Holm 1979
 */
export function drift(
  meter: MeterModel,
  options: DriftOptions,
  meters: readonly Meter[] = [],
): Drift {
  requireModelOptions(options);
  const { level, tolerance, shiftOfInterest } = options;
  const order = stretchesOf(meter, meters, options.productChange);
  const judged = order.stretches.at(-1) ?? [];
  const setAside = order.stretches.slice(0, -1).flat();
  const changes = changesOf(judged, level);
  const newest = newestFillOf(judged, level);
  const verdict = driftVerdict(judged.length, changes, newest, level);
  const center = centerOf(judged, verdict === "moved" ? changes.shift : null);
  const rates = ratesOf({
    fills: judged.length,
    spread: spreadOf(judged, changes, verdict, level),
    delivery: center,
    shift: shiftOfInterest,
    level,
  });
  const settling = settlingTests([...setAside, ...judged], level);
  const shiftBeyondTolerance = Math.abs(changes.shift?.relativeSize.value ?? 0) > tolerance;
  return {
    kind: "drift",
    bin: meter.bin,
    product: meter.product,
    options,
    input: {
      fills: judged.length,
      fillsSetAside: setAside.length,
      otherProducts: order.otherProducts,
      gaps: order.gaps,
    },
    verdict,
    nextSteps: nextSteps(verdict, shiftBeyondTolerance),
    fills: driftFills(setAside, judged, meter, options),
    ...changes,
    newest,
    toleranceLines: {
      center,
      lower: center * (1 - tolerance),
      upper: center * (1 + tolerance),
    },
    ...rates,
    scoreCharts: scoreCharts(judged, againstEarlier(deliveriesOf(judged), level)),
    byName: byName(judged),
    settling,
    cautions: driftCautions({ meter, order, changes, verdict, settling, level }),
  };
}

function driftFills(
  setAside: readonly Fill[],
  judged: readonly Fill[],
  meter: MeterModel,
  options: DriftOptions,
): readonly DriftFill[] {
  const { level } = options;
  const looks = Math.max(1, judged.length - 3);
  const asTheyCame = againstEarlier(deliveriesOf(judged), 1 - (1 - level) / looks);
  return [...setAside, ...judged].map((fill, i) => {
    const place = i - setAside.length;
    return {
      fill: fill.fill,
      takenAt: fill.takenAt,
      catches: fill.totals.catches,
      estimate: estimateOf(meter, fill, options).estimate,
      judged: place >= 0,
      asItCame: place >= 3 ? (asTheyCame[place] ?? null) : null,
    };
  });
}

/** Mean of the fills before the shift where there was one, else of those before the newest. */
function centerOf(fills: readonly Fill[], shift: DriftShift | null): number {
  if (shift !== null) return shift.before;
  return mean(deliveriesOf(fills.length > 1 ? fills.slice(0, -1) : fills));
}

function deliveriesOf(fills: readonly Fill[]): number[] {
  return fills.map(({ delivery }) => delivery);
}
