import { studentTQuantile } from "../../numeric/distributions/student-t.ts";
import { randomStream } from "../../numeric/random.ts";
import { changePointCritical } from "../../statistics/change-point.ts";
import { fewestForShift, fewestForTrend } from "./changes.ts";

/** Limits of the two season tests for so many fills, at the level Holm's method gives the first to be rejected. */
interface SeasonLimits {
  readonly fills: number;
  readonly slope: number;
  /** Infinite while there are too few fills for a change-point. */
  readonly shift: number;
}

/** How often seasons of so many fills are found to have changed. */
export interface SeasonChances {
  /** Chance of finding each of the shifts, in their order. */
  readonly found: readonly number[];
  /** Chance of a finding in a season without any change, when it is asked for after every fill from the fifth on. */
  readonly falseWhenAskedEveryFill: number | null;
  readonly seasons: number;
  readonly seed: number;
}

const seed = 20260402;
const mostSeasons = 4000;
/** Fills simulated in all, so that a long log costs no more than a short one. */
const fillBudget = 400_000;
const longestAskedEveryFill = 40;

/**
 * Chance that the season tests find a shift halfway through, by seeded simulation of normal fills. Every shift is tried on
 * the same seasons.
 *
 * @param fills   5 or more
 * @param shifts  in units of the fill-to-fill standard deviation
 */
export function seasonChances(
  fills: number,
  shifts: readonly number[],
  level: number,
): SeasonChances {
  const { seasons, values } = steadySeasons(fills);
  const limits = limitsFor(fills, level);
  const found = shifts.map(() => 0);
  const shifted = new Float64Array(fills);
  for (let start = 0; start < values.length; start += fills)
    shifts.forEach((shift, i) => {
      for (let fill = 0; fill < fills; fill++)
        shifted[fill] = (values[start + fill] ?? 0) + (2 * fill >= fills - 1 ? shift : 0);
      if (isFinding(shifted, 0, limits)) found[i] = (found[i] ?? 0) + 1;
    });
  return {
    found: found.map((count) => count / seasons),
    falseWhenAskedEveryFill: falseWhenAskedEveryFill(fills, level),
    seasons,
    seed,
  };
}

const askedBefore = new Map<string, number>();

/** Depends on nothing that a meter has to say, so it is kept once computed. */
function falseWhenAskedEveryFill(fills: number, level: number): number | null {
  if (fills > longestAskedEveryFill) return null;
  const key = `${fills} ${level}`;
  const known = askedBefore.get(key);
  if (known !== undefined) return known;
  const { seasons, values } = steadySeasons(fills);
  const limits = Array.from({ length: fills - fewestForTrend + 1 }, (_, i) =>
    limitsFor(fewestForTrend + i, level),
  );
  let found = 0;
  for (let start = 0; start < values.length; start += fills)
    if (limits.some((limit) => isFinding(values, start, limit))) found++;
  askedBefore.set(key, found / seasons);
  return found / seasons;
}

/** Seasons of standard normal fills, one after the other. */
function steadySeasons(fills: number): { seasons: number; values: Float64Array } {
  const seasons = Math.max(200, Math.min(mostSeasons, Math.round(fillBudget / fills)));
  const random = randomStream(seed, fills);
  const values = new Float64Array(seasons * fills);
  for (let i = 0; i < values.length; i++) values[i] = random.normal();
  return { seasons, values };
}

function limitsFor(fills: number, level: number): SeasonLimits {
  const tests = fills < fewestForShift ? 1 : 2;
  const each = 1 - (1 - level) / tests;
  return {
    fills,
    slope: studentTQuantile((1 + each) / 2, fills - 2),
    shift: tests === 1 ? Number.POSITIVE_INFINITY : changePointCritical(each, fills),
  };
}

/**
 * Whether the slope or the best split of the fills from `start` on is beyond its limit. A test's t² is (n − 2)·share/(1 −
 * share), share its part of the sum of squares; written as plain loops because it runs many thousand times.
 */
function isFinding(
  values: Float64Array,
  start: number,
  { fills: n, slope, shift }: SeasonLimits,
): boolean {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += values[start + i] ?? 0;
  const center = sum / n;
  let [squares, moment, partial, largest] = [0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const deviation = (values[start + i] ?? 0) - center;
    squares += deviation * deviation;
    moment += (i - (n - 1) / 2) * deviation;
    partial += deviation;
    if (i >= 1 && i <= n - 3)
      largest = Math.max(largest, (partial * partial * n) / ((i + 1) * (n - i - 1)));
  }
  const ofSlope = (12 * moment * moment) / (n * (n * n - 1));
  const beyond = (part: number, t: number) => part * (t * t + n - 2) > t * t * squares;
  return beyond(ofSlope, slope) || (Number.isFinite(shift) && beyond(largest, shift));
}
