import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { normalUpperTail } from "../numeric/distributions/normal.ts";
import { requireFinite } from "../numeric/domain.ts";
import { groupBy } from "../numeric/group-by.ts";

export interface MannKendallTest {
  /** Pairs in which the later value is larger, minus pairs in which it is smaller. */
  readonly score: number;
  /** Kendall's correlation with time, ties counted in the denominator (tau-b); null when all values agree. */
  readonly tau: number | null;
  /** Two-sided. */
  readonly pValue: number;
  /** "exact": all orders counted; "normal": large n, or ties. */
  readonly method: "exact" | "normal";
}

/** Up to here all n! orders are counted, as R does for fewer than 50 values. */
const mostForExact = 49;

/**
 * Do values rise or fall in the order they came, whatever the shape of their distribution? Mann–Kendall test: score
 * S = Σ sign(later − earlier) over all pairs. Without ties and up to 49 values p is the exact share of orders with a
 * score at least as far from 0; otherwise it is normal with the variance corrected for ties and |S| − 1 (continuity).
 *
 * @param values at least 3 finite numbers in time order
 * @returns with 4 values p is never below 0.083, so it cannot reject at 5 %
 * @throws NumericalError with fewer than 3 values or one that is not finite
 * Source Mann 1945, Econometrica 13, 245–259; Kendall 1975, Rank Correlation Methods, 4th edition, chapters 4 and 5
 * @example mannKendall([1, 3, 2, 5, 4, 6, 7]).score // -> 17
 */
export function mannKendall(values: readonly number[]): MannKendallTest {
  check(values);
  const n = values.length;
  const score = scoreOf(values);
  const ties = tieSizes(values);
  const pairs = (n * (n - 1)) / 2;
  const tiedPairs = ties.reduce((sum, size) => sum + (size * (size - 1)) / 2, 0);
  const tau = tiedPairs === pairs ? null : score / Math.sqrt(pairs * (pairs - tiedPairs));
  if (ties.length === 0 && n <= mostForExact)
    return { score, tau, pValue: exactTwoSided(score, n), method: "exact" };

  const ofTies = ties.reduce((sum, size) => sum + size * (size - 1) * (2 * size + 5), 0);
  const variance = (n * (n - 1) * (2 * n + 5) - ofTies) / 18;
  const distance = Math.max(0, Math.abs(score) - 1);
  const pValue = variance > 0 ? 2 * normalUpperTail(distance / Math.sqrt(variance)) : 1;
  return { score, tau, pValue, method: "normal" };
}

function scoreOf(values: readonly number[]): number {
  let score = 0;
  values.forEach((later, j) => {
    for (let i = 0; i < j; i++) score += Math.sign(later - at(values, i));
  });
  return score;
}

/** Sizes of the groups of equal values, groups of one left out. */
function tieSizes(values: readonly number[]): number[] {
  const sizes = Array.from(groupBy(values, (value) => value).values(), ({ length }) => length);
  return sizes.filter((size) => size > 1);
}

/**
 * Share of the n! orders whose score is at least as far from 0. A score S means (pairs − S)/2 inversions, and orders of
 * n values by inversions are those of n − 1 values with the newest put in any of n places.
 */
function exactTwoSided(score: number, n: number): number {
  let shares = Float64Array.of(1);
  for (let size = 2; size <= n; size++) {
    const next = new Float64Array(shares.length + size - 1);
    shares.forEach((share, inversions) => {
      for (let more = 0; more < size; more++)
        next[inversions + more] = at(next, inversions + more) + share / size;
    });
    shares = next;
  }
  const pairs = shares.length - 1;
  return Math.min(
    1,
    shares.reduce(
      (sum, share, inversions) =>
        Math.abs(pairs - 2 * inversions) >= Math.abs(score) ? sum + share : sum,
      0,
    ),
  );
}

function check(values: readonly number[]): void {
  if (values.length < 3)
    throw new NumericalError(
      `mannKendall: ${values.length} values; at least 3 are needed for a trend.`,
    );
  values.forEach((value, i) => {
    requireFinite("mannKendall", `value ${i + 1}`, value);
  });
}
