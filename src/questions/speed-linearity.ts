import { max, min } from "simple-statistics";
import type { Span } from "../data/setup.ts";
import { at } from "../errors/at.ts";
import type { Meter } from "../model/meters.ts";
import type { ModelOptions } from "../model/model.ts";
import { tEstimate } from "../model/t-estimate.ts";
import { requireModelOptions } from "../results/options.ts";
import { type PooledSlope, pooledSlope } from "../statistics/pooled-slope.ts";
import { curvatureTest, parallelLackOfFit } from "../statistics/slope-shape.ts";
import { weightedMean } from "../statistics/summary.ts";
import { speedCautions } from "./speed-linearity/cautions.ts";
import { referenceSpeed, type SpeedGroup, speedGroups } from "./speed-linearity/groups.ts";
import { fewestCatches, leastSpeedRatio } from "./speed-linearity/limits.ts";
import { speedLine, speedsWithin } from "./speed-linearity/line.ts";
import type { SpeedLinearity, SpeedPoint, SpeedSlope } from "./speed-linearity/result.ts";

export type {
  SpeedLinearity,
  SpeedLinePoint,
  SpeedPoint,
  SpeedSlope,
  SpeedsWithinTolerance,
} from "./speed-linearity/result.ts";

/**
 * Does the delivery per turn change with the speed of the meter, and over which speeds does it hold within the tolerance?
 *
 * Analysis of covariance: delivery of a catch relative to its fill's, on meter speed, one slope for all fills and a level
 * for each, weights turns. t test of the slope; t test of a bend; F test of lack of fit against repeats at one speed. The
 * straight line is what the range rests on; a bend or lack of fit raises a caution and never changes the model.
 *
 * @param meter   one bin × product
 * @param options level of intervals, and the tolerance the range is about
 * @returns       null when no catch names a meter speed: nothing was asked. Changes are fractions of the delivery at the
 *                mean speed; the range never leaves the speeds caught
 * Null when      fewer than 4 catches have a speed, or too few in fills with several (caution too-few-for-speed), all have
 *                the same (one-meter-speed), the highest is less than 1.2 times the lowest (speeds-too-alike), speeds vary
 *                between fills only (speed-never-varied-within-a-fill), or nothing scatters (zero-scatter): slope, tests
 *                and range
 * Assumes        catches of a fill independent, scatter variance of a delivery in proportion to 1/turns
 * Source         Draper and Smith 1998, Applied Regression Analysis, 3rd edition, chapters 2, 12 and 14
 */
export function speedLinearity(meter: Meter, options: ModelOptions): SpeedLinearity | null {
  requireModelOptions(options);
  const groups = speedGroups(meter);
  if (groups.length === 0) return null;
  const speeds = groups.flatMap(({ x }) => x);
  const caught = { from: min(speeds), to: max(speeds) };
  const reference = referenceSpeed(groups);
  const fit = tellable(speeds.length, caught) ? pooledSlope(groups) : null;
  const slope = fit === null ? null : slopeOf(fit, caught, options.level);
  const all = meter.fills.reduce((count, { catches }) => count + catches.length, 0);
  const result = {
    kind: "speed-linearity",
    bin: meter.bin,
    product: meter.product,
    options,
    input: {
      catches: speeds.length,
      fills: groups.length,
      withoutSpeed: all - speeds.length,
    },
    caught,
    reference,
    points: groups.flatMap((group) => pointsOf(group, fit, reference)),
    slope,
    curvature: fit === null ? null : curvatureTest(groups, fit),
    lackOfFit: fit === null ? null : parallelLackOfFit(groups, fit),
    within: slope === null ? null : speedsWithin(slope, reference, caught, options.tolerance),
    band: { lower: 1 - options.tolerance, upper: 1 + options.tolerance },
    line: slope === null ? [] : speedLine(slope, reference, caught),
  } as const;
  return { ...result, cautions: speedCautions(result, groups) };
}

function tellable(catches: number, { from, to }: Span): boolean {
  return catches >= fewestCatches && to >= leastSpeedRatio * from;
}

function slopeOf(fit: PooledSlope, { from, to }: Span, level: number): SpeedSlope {
  const over = <U extends "fraction" | "fraction/(turns/min)">(factor: number, unit: U) =>
    tEstimate(fit.slope * factor, unit, fit.standardError * factor, fit.df, level, "coefficient");
  return {
    estimate: over(1, "fraction/(turns/min)"),
    acrossRange: over(to - from, "fraction"),
    statistic: fit.statistic,
    pValue: fit.pValue,
    fills: fit.groups,
  };
}

/** A fill's own level is taken off at the reference speed, so that fills lie on one line. */
function pointsOf(
  { catches, x, y, weights }: SpeedGroup,
  fit: PooledSlope | null,
  reference: number,
): readonly SpeedPoint[] {
  const slope = fit?.slope ?? 0;
  const atReference = y.map((value, i) => value - slope * (at(x, i) - reference));
  const level = weightedMean(atReference, weights);
  return catches.map(({ row, fill, turnsPerMin }, i) => ({
    row: row.row,
    fill: fill.fill,
    catch: row.catch,
    turnsPerMin,
    relative: 1 + at(y, i) - level,
  }));
}
