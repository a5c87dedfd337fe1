import { max } from "simple-statistics";
import { pooledScatter } from "../model/catch-scatter.ts";
import type { FillEstimate } from "../model/doubted-estimate.ts";
import { scatterPrior } from "../model/lent-scatter.ts";
import { type Fill, newestFill } from "../model/meters.ts";
import { estimateOf, type MeterModel, type ModelOptions } from "../model/model.ts";
import { readingVariance } from "../model/reading.ts";
import { levels } from "../model/screening/finding.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { type Caution, caution } from "../results/caution.ts";
import type { FillName } from "../results/fill-name.ts";
import { requireModelOptions } from "../results/options.ts";
import { median } from "../statistics/summary.ts";
import { type Consistency, consistencyOf } from "./repeatability/consistency.ts";
import {
  compareScatter,
  type Practice,
  practiceOf,
  type RelativeScatter,
  relativeScatter,
  type ScatterComparison,
  type UsualScatter,
  usualScatter,
} from "./repeatability/scatter.ts";

/** How repeatable are this person's catches, and what limits them? */
export interface Repeatability {
  readonly kind: "repeatability";
  readonly bin: string;
  readonly product: string;
  readonly fill: FillName;
  readonly takenAt: string | null;
  readonly options: ModelOptions;
  readonly input: {
    readonly catches: number;
    /** Of a typical catch of this fill. */
    readonly turns: number;
    readonly earlierFills: number;
  };
  /** Null with one catch, or when catches agree exactly. */
  readonly today: RelativeScatter | null;
  /** What others lend: the meter's other fills and the other meters; null: nobody does. */
  readonly usual: UsualScatter | null;
  readonly comparison: ScatterComparison | null;
  readonly practice: Practice;
  /**
   * Two good catches of typical turns differ by more than this only in 1 − level of cases (repeatability limit), as a
   * fraction of their mass; null while the scatter is unknown.
   */
  readonly twoCatchesWithin: number | null;
  readonly scale: {
    readonly divisionKg: number | null;
    /** Standard deviation of reading gross and tare, d/√6, as a fraction of a typical catch; null without a division. */
    readonly relativeError: number | null;
    /** Part of the variance of a single catch that reading gross and tare makes up. */
    readonly shareOfCatch: number | null;
    /** The same of this fill's delivery, where reading errors do not average out. */
    readonly shareOfFill: number | null;
  };
  /**
   * What makes up most of this fill's error: reading the scale, which more catches of the same length do not average out,
   * or the scatter of catches, which they do; null: unknown.
   */
  readonly limitedBy: "scale" | "scatter" | null;
  /** Scatter of every fill by its own catches, for the chart; fills with one catch have none. */
  readonly fills: readonly {
    readonly fill: FillName;
    readonly takenAt: string | null;
    readonly catches: number;
    readonly scatter: RelativeScatter | null;
  }[];
  /** Which fills and operators are unlike the others; left out what has fewer than three of two catches each. */
  readonly consistency: readonly Consistency[];
  readonly cautions: readonly Caution[];
}

/**
 * How repeatable are the catches of this fill: as usual, and what limits them?
 *
 * Catch scatter of the fill against what other fills and other meters lend it, by the F test on n − 1 and ν0 degrees of freedom. What reading the scale makes up is
 * d²/6 (gross and tare, each rounded to the division d) over the variance of a catch. How many more catches are worth
 * taking is for `catchesNeeded` to say.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  level, tolerance and the scale's division (kg, null: unknown)
 * @param fill     which fill; default the newest
 * @returns        scatters as fractions of the mass of a typical catch of this fill
 * Null when       one catch, exact agreement, or nobody lends any scatter (caution no-scatter-to-compare)
 * Assumes         scatter variance in proportion to turns, normal errors; one bad catch makes the F test say "more than
 *                 usual", so look at outlying catches first
 * Source          ISO 5725-6 (repeatability limit); GUM (JCGM 100:2008) F.2.2; NIST/SEMATECH e-Handbook 1.3.5.9
 */
export function repeatability(
  meter: MeterModel,
  options: ModelOptions,
  fill: Fill = newestFill(meter),
): Repeatability {
  const { turns, own, usual, comparison, cautions } = repeatabilityInBrief(meter, options, fill);
  const { level } = options;
  const earlierFills = meter.fills.slice(0, meter.fills.indexOf(fill));
  const estimated = estimateOf(meter, fill, options);
  const state = stateOf(fill, estimated, turns, options);
  const shareOfFill = readingShareOf(estimated);
  return {
    kind: "repeatability",
    bin: fill.bin,
    product: fill.product,
    fill: fill.fill,
    takenAt: fill.takenAt,
    options,
    input: { catches: fill.totals.catches, turns, earlierFills: earlierFills.length },
    today: own,
    usual,
    comparison,
    practice: practiceOf(comparison, level),
    twoCatchesWithin: twoCatchesWithin(state),
    scale: { ...readingOf(state), shareOfFill },
    limitedBy: shareOfFill === null ? null : shareOfFill > dominates ? "scale" : "scatter",
    fills: meter.fills.map((one) => ({
      fill: one.fill,
      takenAt: one.takenAt,
      catches: one.totals.catches,
      scatter: relativeScatter(pooledScatter([one]), turns, one.delivery, level),
    })),
    consistency: consistencyOf(meter.fills),
    cautions,
  };
}

/** The findings of `repeatability`, and what they are made from, without what is drawn. */
export function repeatabilityInBrief(
  meter: MeterModel,
  options: ModelOptions,
  fill: Fill = newestFill(meter),
) {
  requireModelOptions(options);
  const { level } = options;
  const turns = median(fill.catches.map((row) => row.turns));
  const own = relativeScatter(pooledScatter([fill]), turns, fill.delivery, level);
  const usual = usualScatter(scatterPrior(fill, meter.scatter), turns);
  const comparison = compareScatter(own, usual);
  const cautions = cautionsOf(fill, comparison, usual, level);
  return { turns, own, usual, comparison, cautions };
}

/** Part of the variance of the fill's delivery that reading the scale makes up; null: unknown. */
function readingShareOf({ variance }: FillEstimate): number | null {
  const { division, total } = variance;
  return division === null || total === null || total === 0 ? null : division / total;
}

/** A fill's scatter and scale; everything the shares are computed from. */
interface CatchingState {
  /** Turns of a typical catch. */
  readonly turns: number;
  /** kg/turn. */
  readonly delivery: number;
  /** Error variance of a one-turn catch, kg²/turn, and its degrees of freedom; null: unknown. */
  readonly scatter: { readonly variance: number; readonly df: number } | null;
  /** 0: unknown or none. */
  readonly divisionKg: number;
  readonly level: number;
}

const dominates = 0.5;
/** As many as cannot say which of them is wrong; of two their difference is told. */
const fewCatches = 3;
/** As rarely as a fill is said to differ from the earlier ones: one clean fill in 500. */
const beyondUsual = 0.002;

function stateOf(
  fill: Fill,
  { scatter }: FillEstimate,
  turns: number,
  { level, scaleDivisionKg }: ModelOptions,
): CatchingState {
  const { variance, df } = scatter;
  const divisions = fill.catches.map((row) => row.divisionKg ?? scaleDivisionKg ?? 0);
  return {
    turns,
    delivery: fill.delivery,
    scatter: variance === null ? null : { variance, df },
    divisionKg: max(divisions),
    level,
  };
}

function twoCatchesWithin({ scatter, turns, delivery, level }: CatchingState): number | null {
  if (scatter === null || scatter.variance === 0) return null;
  const ofDifference = Math.sqrt((2 * scatter.variance) / turns) / delivery;
  return studentTQuantile((1 + level) / 2, scatter.df) * ofDifference;
}

function readingOf({ scatter, turns, delivery, divisionKg }: CatchingState) {
  if (divisionKg === 0) return { divisionKg: null, relativeError: null, shareOfCatch: null };
  const variance = readingVariance(divisionKg);
  return {
    divisionKg,
    relativeError: Math.sqrt(variance) / (delivery * turns),
    // Readings are rounded already when their scatter is seen, so the share cannot exceed all of it.
    shareOfCatch: scatter === null ? null : variance / Math.max(scatter.variance * turns, variance),
  };
}

function cautionsOf(
  fill: Fill,
  comparison: ScatterComparison | null,
  usual: UsualScatter | null,
  level: number,
): readonly Caution[] {
  const where = { bin: fill.bin, product: fill.product, fill: fill.fill };
  if (comparison === null)
    return [
      caution("no-scatter-to-compare", where, {
        catches: fill.totals.catches,
        usualKnown: usual !== null,
      }),
    ];
  const facts = { ratio: comparison.ratio, pValue: comparison.pValue };
  const { upperTail } = comparison;
  // Two or three that disagree beyond doubt have no interval; short of that one more catch tells which it is.
  if (fill.totals.catches === fewCatches)
    return upperTail >= 1 - levels.lookFirst && upperTail < 1 - levels.told
      ? [caution("few-scatter-apart", where, facts)]
      : [];
  if (practiceOf(comparison, level) !== "more than usual") return [];
  return [
    upperTail <= beyondUsual
      ? caution("scatter-beyond-usual", where, { ...facts, limit: beyondUsual })
      : caution("scatter-unusual", where, facts),
  ];
}
