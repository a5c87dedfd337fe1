import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { studentTQuantile, studentTTwoSided } from "../numeric/distributions/student-t.ts";
import { requireAllFinite, requireNumber, requireProbability } from "../numeric/domain.ts";
import { findRoot } from "../numeric/roots.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import { unfoldedShares } from "./change-point-shares.ts";
import { changePointTable as table } from "./change-point-table.ts";
import { mean } from "./summary.ts";

/** The split of a series that parts it best into a "before" and an "after". */
export interface ChangePoint {
  /** Values before the change; 2 or more, as are those after it. */
  readonly before: number;
  readonly meanBefore: number;
  readonly meanAfter: number;
  /** meanAfter − meanBefore. */
  readonly difference: number;
  /** Of the difference, as if the split had been known: pooled scatter, n − 2 degrees of freedom. */
  readonly standardError: number;
  /** Pooled two-sample t of that split, signed. */
  readonly statistic: number;
  /** n − 2. */
  readonly df: number;
  /** Chance of a |t| as large at any split when nothing changed. */
  readonly pValue: number;
}

/** Fewest values on either side of a split: one alone would be an outlier, not a level. */
const fewestBesideChange = 2;
/** Fewest values that can be split. */
export const fewestToSplit = 2 * fewestBesideChange;

/**
 * Was there one shift, and after which value? The pooled two-sample t statistic is taken at every split with 2 or more
 * values on each side; its largest size is judged by the distribution of that maximum.
 *
 * @param values at least 4 finite numbers in time order, one per independent unit: fills, never catches
 * @returns null when the two sides do not scatter at all, which leaves nothing to test against
 * @throws NumericalError with fewer than 4 values or one that is not finite
 * Assumes independent normal values of equal spread. The difference at the best split is too large on average, because
 *   the split was chosen for it; `changePointInterval` allows for that
 * Source Hawkins 1977, Journal of the American Statistical Association 72, 180–186; Worsley 1979, same journal 74, 365–367
 * @example changePoint([5, 6, 5, 6, 9, 8, 9, 8])?.before // -> 4
 */
export function changePoint(values: readonly number[]): ChangePoint | null {
  const n = values.length;
  const { contrasts } = splitContrasts(values);
  const { before } = contrasts.reduce((a, b) =>
    Math.abs(b.contrast) > Math.abs(a.contrast) ? b : a,
  );
  const sides = [values.slice(0, before), values.slice(before)];
  const [meanBefore = 0, meanAfter = 0] = sides.map(mean);
  const within = values.reduce(
    (sum, value, i) => sum + (value - (i < before ? meanBefore : meanAfter)) ** 2,
    0,
  );
  if (noScatter(within, values)) return null;
  const df = n - 2;
  const difference = meanAfter - meanBefore;
  const standardError = Math.sqrt((within / df) * (1 / before + 1 / (n - before)));
  const statistic = difference / standardError;
  const pValue = changePointPValue(statistic, n);
  return { before, meanBefore, meanAfter, difference, standardError, statistic, df, pValue };
}

/** How far a series steps at one split: the unit contrast (after − before) of the values. */
export interface SplitContrast {
  readonly before: number;
  /** Its square is the sum of squares between the two sides. */
  readonly contrast: number;
}

/**
 * The unit contrast at every split with 2 or more values on each side, and the sum of squares about the mean.
 *
 * @throws NumericalError with fewer than 4 values or one that is not finite
 */
export function splitContrasts(values: readonly number[]): {
  readonly totalSquares: number;
  readonly contrasts: readonly SplitContrast[];
} {
  const n = values.length;
  if (n < fewestToSplit)
    throw new NumericalError(
      `changePoint: ${n} values; at least ${fewestToSplit} are needed, 2 on each side.`,
    );
  requireAllFinite("changePoint", "value", values);
  const center = mean(values);
  let [partial, totalSquares] = [0, 0];
  const contrasts: SplitContrast[] = [];
  values.forEach((value, i) => {
    partial += value - center;
    totalSquares += (value - center) ** 2;
    const before = i + 1;
    if (before >= fewestBesideChange && before <= n - fewestBesideChange)
      contrasts.push({ before, contrast: -partial * Math.sqrt(n / (before * (n - before))) });
  });
  return { totalSquares, contrasts };
}

/**
 * Chance that the largest |t| over all splits of n independent normal values is at least this large: the number of
 * splits times the two-sided p of one of them (Bonferroni's bound), times the share of that bound that is not counted
 * twice. The share is tabulated from a seeded simulation (relative Monte-Carlo error below 0.2 %) and interpolated.
 *
 * @param statistic of either sign
 * @param n values, 4 or more; above the largest size of the table its share is used, which is on the careful side
 * @throws NumericalError when n is too small or the statistic is not a number
 */
export function changePointPValue(statistic: number, n: number): number {
  requireNumber("changePointPValue", "statistic", statistic);
  if (!(n >= fewestToSplit))
    throw new NumericalError(`changePointPValue: n is ${n}; it must be at least ${fewestToSplit}.`);
  const ofOneSplit = studentTTwoSided(statistic, n - 2);
  const splits = n - fewestToSplit + 1;
  return Math.min(1, splits * ofOneSplit * shareCountedOnce(ofOneSplit, n));
}

/**
 * The |t| that the largest over all splits stays below with chance `level` when nothing changed.
 *
 * @param level 0 < level < 1
 * @param n values, 4 or more
 * @throws NumericalError when an argument is out of range
 */
export function changePointCritical(level: number, n: number): number {
  requireProbability("changePointCritical", "level", level);
  const splits = n - fewestToSplit + 1;
  const upper = studentTQuantile(1 - (1 - level) / (2 * splits), n - 2);
  if (splits === 1) return upper;
  return findRoot((t) => changePointPValue(t, n) - (1 - level), 0, upper * (1 + 1e-9));
}

/** Linear in the logarithms of share, p and n, between neighbours in the table. */
function shareCountedOnce(ofOneSplit: number, n: number): number {
  if (n === fewestToSplit) return 1;
  const [small, large, weight] = neighbours(table.sizes, n);
  const toward = weight === 0 ? 0 : logRatio(n, table.sizes, small, large);
  const exponent = -Math.log10(Math.max(ofOneSplit, Number.MIN_VALUE));
  const logShareOf = (size: number) => logShare(sharesOf(size), exponent);
  return Math.exp(
    logShareOf(small) * (1 - toward) + (toward === 0 ? 0 : logShareOf(large) * toward),
  );
}

const unfolded = new Map<number, readonly number[]>();

/** A row of the table, read when it is asked for first. */
function sharesOf(size: number): readonly number[] {
  const shares =
    unfolded.get(size) ?? unfoldedShares(at(table.folded, size), table.exponents.length);
  unfolded.set(size, shares);
  return shares;
}

function logShare(shares: readonly number[], exponent: number): number {
  const [low, high, weight] = neighbours(table.exponents, exponent);
  return Math.log(at(shares, low)) * (1 - weight) + Math.log(at(shares, high)) * weight;
}

function logRatio(n: number, sizes: readonly number[], small: number, large: number): number {
  const [a, b] = [at(sizes, small), at(sizes, large)];
  return Math.log(n / a) / Math.log(b / a);
}

/** Places of the two neighbours of x in an ascending list, and how far x is from the first to the second. */
function neighbours(ascending: readonly number[], x: number): readonly [number, number, number] {
  const last = ascending.length - 1;
  const above = ascending.findIndex((value) => value >= x);
  if (above === -1) return [last, last, 0];
  if (above === 0 || ascending[above] === x) return [above, above, 0];
  const [low, high] = [at(ascending, above - 1), at(ascending, above)];
  return [above - 1, above, (x - low) / (high - low)];
}
