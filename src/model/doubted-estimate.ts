import { max, min } from "simple-statistics";
import type { Catch } from "../data/types.ts";
import { at, lastOf } from "../errors/at.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { defaults } from "../results/defaults.ts";
import type { Estimate } from "../results/estimate.ts";
import { mean } from "../statistics/summary.ts";
import { type CatchesEstimate, type EstimateOptions, estimateFill } from "./fill-estimate.ts";
import { perTurnVariance, voteOfAssumption } from "./lenders.ts";
import { type MeterScatter, scatterExceedance } from "./lent-scatter.ts";
import { type Fill, withCatches } from "./meters.ts";
import { type FillFinding, isUnchecked, levels } from "./screening/finding.ts";
import { intervalAround, unknownEstimate } from "./t-estimate.ts";

/** Catches that cannot all be right, too few to say which is: two or three, or as many as nothing can judge. */
export interface Disagreement {
  readonly by: "range" | "pair test" | "scatter test";
  /** Highest less lowest delivery, over their mean. */
  readonly range: number;
  /** The two that lie farthest apart. */
  readonly apart: readonly [number, number];
  /** What each pair of them gives, kg/turn; of two catches what each gives by itself. */
  readonly pairs: readonly { readonly catches: readonly number[]; readonly value: number }[];
}

/** The bands that a fill has with the catches that stand out, and without them. */
export interface Hull {
  /** Catches that stand out. */
  readonly catches: readonly number[];
  readonly with: Estimate<"kg/turn">;
  readonly without: Estimate<"kg/turn">;
}

/** One fill's delivery as every answer has it. */
export interface FillEstimate extends CatchesEstimate {
  /** Null unless a catch of the newest fill stands out: then the interval reaches to the farther end of both bands. */
  readonly hull: Hull | null;
  /** Null unless the catches disagree: then there is no interval. */
  readonly disagree: Disagreement | null;
  /** The same with nobody but this meter speaking for its scatter; null: nobody else does, or there is no interval. */
  readonly byItself: OtherLine | null;
  /** The same with a typical scatter taken for granted, where nobody lends any to two or three catches; decides nothing. */
  readonly ifTypical: OtherLine | null;
}

/** The same value with the interval that another scatter gives it. */
export interface OtherLine {
  readonly estimate: Estimate<"kg/turn">;
  /** Relative; null: unknown. */
  readonly halfWidth: number | null;
}

/**
 * Catches of one fill whose deliveries range over more than this share of their mean cannot all be right: catches scatter
 * by a few percent. A judgement; how often clean catches do it is in reports/outlier-study.md.
 */
export const grossRange = 0.15;
const mostToDisagree = 3;

/**
 * The delivery of a fill with the doubt that its own catches cast on it. A catch of the newest fill that stands out is
 * neither dropped nor believed: the value stays Σm/Σt of all, and ± is the larger distance from it to the ends of the
 * bands with and without the catch. Catches that disagree have a value and no ±.
 *
 * @param finding  what the screening found in the fill
 * @returns        with a hull the standard error is the half-width over Student's t, so that what is worked out from it is
 *                 as wide; with a disagreement there is none
 * Source          coverage of the hull where a catch is flagged: reports/outlier-study.md
 */
export function doubtedEstimate(
  fill: Fill,
  finding: FillFinding | null,
  lent: MeterScatter,
  options: EstimateOptions,
): FillEstimate {
  const disagree = disagreementOf(fill, finding, lent);
  if (disagree !== null)
    return {
      ...withoutError(estimateFill(fill, lent, options)),
      hull: null,
      disagree,
      byItself: null,
      ifTypical: null,
    };
  const flagged = finding?.isNewest && !finding.isPair ? finding.inFill : [];
  const within = (scatter: MeterScatter) => withinHull(fill, flagged, scatter, options);
  const { fit, variance, scatter, halfWidth, estimate, hull } = within(lent);
  const { source } = scatter;
  const isFew = fill.catches.length <= mostToDisagree;
  return {
    fit,
    variance,
    scatter,
    halfWidth,
    estimate,
    hull,
    disagree,
    byItself:
      lent.outside !== null && source === "lent"
        ? lineOf(within({ ...lent, outside: null }))
        : null,
    ifTypical:
      source === "own" && isFew ? lineOf(within({ ...lent, outside: typicalScatter })) : null,
  };
}

const typicalScatter = voteOfAssumption(perTurnVariance(defaults.assumedScatter.relative));

function lineOf({ estimate, halfWidth }: CatchesEstimate): OtherLine {
  return { estimate, halfWidth };
}

function withinHull(
  fill: Fill,
  flagged: readonly Catch[],
  lent: MeterScatter,
  options: EstimateOptions,
): CatchesEstimate & Pick<FillEstimate, "hull"> {
  const estimated = estimateFill(fill, lent, options);
  const hull = hullOf(fill, flagged, estimated.estimate, lent, options);
  const { fit, variance, scatter, halfWidth, estimate } =
    hull === null ? estimated : widened(estimated, hull, options.level);
  return { fit, variance, scatter, halfWidth, estimate, hull };
}

function withoutError(estimated: CatchesEstimate): CatchesEstimate {
  const { variance, estimate } = estimated;
  return {
    ...estimated,
    estimate: unknownEstimate(estimate.value, "kg/turn"),
    halfWidth: null,
    variance: { ...variance, model: null, robust: null, total: null },
  };
}

function hullOf(
  fill: Fill,
  flagged: readonly Catch[],
  estimate: Estimate<"kg/turn">,
  lent: MeterScatter,
  options: EstimateOptions,
): Hull | null {
  if (flagged.length === 0 || estimate.interval === null) return null;
  const stay = fill.catches.filter((row) => !flagged.includes(row));
  const without = estimateFill(withCatches(fill, stay), lent, options).estimate;
  if (without.interval === null) return null;
  return { catches: flagged.map((row) => row.catch), with: estimate, without };
}

function widened(estimated: CatchesEstimate, hull: Hull, level: number): CatchesEstimate {
  const { value, df } = estimated.estimate;
  const ends = [hull.with, hull.without].flatMap(({ interval }) => [
    interval?.lower ?? value,
    interval?.upper ?? value,
  ]);
  const half = Math.max(value - min(ends), max(ends) - value);
  return {
    ...estimated,
    halfWidth: half / value,
    estimate: {
      ...estimated.estimate,
      standardError: half / studentTQuantile((1 + level) / 2, df ?? 1),
      interval: intervalAround(value, half, level, "this fill's delivery"),
    },
  };
}

/**
 * Whether two or three catches of a fill, or as many as are too few for one of them to be judged, lie so far apart that
 * one must be wrong; null: they do not.
 */
function disagreementOf(
  fill: Fill,
  finding: FillFinding | null,
  lent: MeterScatter,
): Disagreement | null {
  const { catches } = fill;
  const isFew = catches.length <= mostToDisagree || finding?.status === "too few to judge";
  if (catches.length < 2 || !isFew || isSettled(catches)) return null;
  const range = relativeRange(catches);
  const by = range > grossRange ? "range" : disagreementByTest(fill, finding, lent);
  if (by === null) return null;
  return {
    by,
    range,
    apart: farthestApart(catches),
    pairs: pairsOf(fill),
  };
}

/** What catches of the newest fill are held against: two by their difference, three by their scatter together. */
function disagreementByTest(
  fill: Fill,
  finding: FillFinding | null,
  lent: MeterScatter,
): Disagreement["by"] | null {
  if (finding === null || !finding.isNewest) return null;
  if (finding.isPair) return finding.inFillStrictly.length > 0 ? "pair test" : null;
  // One that can be named is dealt with by its own: the others are known well enough without it.
  if (finding.inFill.length > 0 || fill.catches.length !== mostToDisagree) return null;
  const p = scatterExceedance(fill, lent);
  return p !== null && p < 1 - levels.lookFirst ? "scatter test" : null;
}

/** Whether somebody's word settles it: of two catches for both, of more for all but those that agree without them. */
function isSettled(catches: readonly Catch[]): boolean {
  const unchecked = catches.filter(isUnchecked);
  if (unchecked.length === 0) return true;
  if (unchecked.length === catches.length || catches.length === 2) return false;
  return relativeRange(unchecked) <= grossRange;
}

/** Highest less lowest delivery of some catches, over their mean. */
export function relativeRange(catches: readonly Catch[]): number {
  const deliveries = catches.map(perTurn);
  return (max(deliveries) - min(deliveries)) / mean(deliveries);
}

function farthestApart(catches: readonly Catch[]): readonly [number, number] {
  const sorted = [...catches].sort((a, b) => perTurn(a) - perTurn(b));
  const ends = [at(sorted, 0).catch, lastOf(sorted).catch] as const;
  return ends[0] < ends[1] ? ends : [ends[1], ends[0]];
}

function perTurn({ netKg, turns }: Catch): number {
  return netKg / turns;
}

function pairsOf(fill: Fill): Disagreement["pairs"] {
  const { catches } = fill;
  const parts =
    catches.length === 2
      ? catches.map((row) => [row])
      : catches.flatMap((row, i) => catches.slice(i + 1).map((other) => [row, other]));
  return parts.map((rows) => ({
    catches: rows.map((row) => row.catch),
    value: withCatches(fill, rows).delivery,
  }));
}
