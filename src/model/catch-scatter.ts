import { sum } from "simple-statistics";
import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import type { Interval } from "../results/estimate.ts";
import { type BartlettTest, bartlettTest } from "../statistics/bartlett.ts";
import type { Fill } from "./meters.ts";
import { agreeExactly, deliveryOf, type FillTotals } from "./totals.ts";

/** What the fills of one meter say together about how much catches of one fill scatter. */
export interface PooledScatter {
  /** Error variance of a one-turn catch, kg²/turn; null when no fill has two catches. A t-turn catch has t times it. */
  readonly variance: number | null;
  /** The same relative to the square of each fill's own delivery, in turns: what one fill can lend another. */
  readonly relative: number | null;
  /** Σ(n − 1) over fills. */
  readonly df: number;
  /** Fills with at least two catches. */
  readonly fills: number;
  /** Bartlett's test that the fills scatter alike; null when fewer than two can be compared. */
  readonly homogeneity: BartlettTest | null;
}

/** The scatter a fill's interval rests on, and why that one. */
export interface ChosenScatter {
  readonly source: "own" | "pooled" | "none";
  readonly variance: number | null;
  readonly df: number;
  /** Fills behind it. */
  readonly fills: number;
  /** True when pooling was given up because fills scatter differently. */
  readonly fellBack: boolean;
}

/** Below this p the fills are taken to scatter differently (a caution, and own scatter where a fill can carry it). */
const homogeneityLimit = 0.01;
const fewestPooledDf = 2;
const fewestCatchesForOwn = 4;

/**
 * Pools the catch scatter of a meter's fills: s_w² = Σ SS_f / Σ(n_f − 1), and on the relative scale
 * q = Σ (SS_f/b_f²) / Σ(n_f − 1).
 * Source: Cochran, Sampling Techniques (pooled within-stratum variance); ISO 5725-2 (repeatability variance).
 */
export function pooledScatter(fills: readonly Pick<Fill, "totals">[]): PooledScatter {
  const groups = fills.map(({ totals }) => totals).filter(({ catches }) => catches > 1);
  const df = sum(groups.map(dfOf));
  // What rounding leaves of no scatter would be the least of all to the test.
  const scattering = groups.filter((one) => !agreeExactly(one));
  return {
    variance: df > 0 ? sum(groups.map(({ scatterSum }) => scatterSum)) / df : null,
    relative: df > 0 ? sum(groups.map(relativeSquares)) / df : null,
    df,
    fills: groups.length,
    homogeneity: bartlettTest(
      scattering.map((one) => ({ sumOfSquares: relativeSquares(one), df: dfOf(one) })),
    ),
  };
}

/** The pooled scatter at a delivery, kg²/turn: that of a fill which has no catches yet. */
export function scatterAt(
  delivery: number,
  { relative, df }: PooledScatter,
): Pick<PooledScatter, "variance" | "df"> {
  return { variance: relative === null ? null : relative * delivery ** 2, df };
}

export const nothingPooled: PooledScatter = pooledScatter([]);

/** Whether Bartlett's test says that the fills of a meter scatter differently. */
export function scatterDiffers(pooled: PooledScatter): boolean {
  return pooled.homogeneity !== null && pooled.homogeneity.pValue < homogeneityLimit;
}

/** Catch scatter that other fills lend to one. */
export interface LentScatter {
  /** Relative variance of a one-turn catch, in turns. */
  readonly relative: number;
  readonly df: number;
  /** Fills behind it. */
  readonly fills: number;
  /** True when it is not used, because fills scatter differently and this one can speak for itself. */
  readonly givenUp: boolean;
}

/** What of a fill its scatter is chosen by. */
export type ScatteringFill = Pick<Fill, "totals" | "scatterTotals" | "delivery">;

/**
 * What the other fills of a meter lend to one: the pooled scatter without what this fill put into it.
 *
 * @param pooled  of all the meter's fills, each with the catches that may speak for others
 * @returns       null when the others know none, or so little that it and the fill's own catches make up less than two
 *                degrees of freedom
 */
export function scatterLentTo(
  { totals, scatterTotals }: ScatteringFill,
  pooled: PooledScatter,
): LentScatter | null {
  const put = dfOf(scatterTotals);
  const df = pooled.df - put;
  if (pooled.relative === null || df <= 0 || df + dfOf(totals) < fewestPooledDf) return null;
  const squares = pooled.relative * pooled.df - (put > 0 ? relativeSquares(scatterTotals) : 0);
  return {
    relative: Math.max(0, squares) / df,
    df,
    fills: pooled.fills - (put > 0 ? 1 : 0),
    givenUp: scatterDiffers(pooled) && totals.catches >= fewestCatchesForOwn,
  };
}

/**
 * Which scatter speaks for one fill: its own catches together with what other fills lend; its own alone where fills
 * scatter differently and it has 4 or more catches, or where nothing is lent; none when a single catch stands alone.
 *
 * @returns  variance (ν₀·q·b² + SS)/(ν₀ + n − 1) in kg²/turn, q being lent on ν₀ degrees of freedom and b the delivery
 */
export function chooseScatter(fill: ScatteringFill, pooled: PooledScatter): ChosenScatter {
  const { totals, delivery } = fill;
  const ownDf = dfOf(totals);
  const lent = scatterLentTo(fill, pooled);
  const fellBack = lent?.givenUp ?? false;
  if (lent !== null && !fellBack) {
    const df = lent.df + ownDf;
    const squares = lent.df * lent.relative * delivery ** 2 + totals.scatterSum;
    const fills = lent.fills + (ownDf > 0 ? 1 : 0);
    return { source: "pooled", variance: squares / df, df, fills, fellBack };
  }
  if (ownDf > 0)
    return { source: "own", variance: totals.scatterSum / ownDf, df: ownDf, fills: 1, fellBack };
  return { source: "none", variance: null, df: 0, fills: 0, fellBack };
}

function dfOf({ catches }: FillTotals): number {
  return Math.max(0, catches - 1);
}

function relativeSquares(totals: FillTotals): number {
  return totals.scatterSum / deliveryOf(totals) ** 2;
}

/**
 * χ² interval for a standard deviation: s·√(ν/χ²(upper)) … s·√(ν/χ²(lower)).
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.3.1.
 */
export function standardDeviationInterval(
  standardDeviation: number,
  df: number,
  level: number,
  about: Interval["about"],
): Interval {
  const tail = (1 - level) / 2;
  return {
    lower: standardDeviation * Math.sqrt(df / chiSquaredQuantile(1 - tail, df)),
    upper: standardDeviation * Math.sqrt(df / chiSquaredQuantile(tail, df)),
    level,
    about,
  };
}
