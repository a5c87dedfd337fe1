import { sum } from "simple-statistics";
import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import type { Interval } from "../results/estimate.ts";
import { type BartlettTest, bartlettTest } from "../statistics/bartlett.ts";
import type { Fill } from "./meters.ts";

/** What the fills of one meter say together about how much catches of one fill scatter. */
export interface PooledScatter {
  /** Error variance of a one-turn catch, kg²/turn; null when no fill has two catches. A t-turn catch has t times it. */
  readonly variance: number | null;
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
export const homogeneityLimit = 0.01;
const fewestPooledDf = 2;
const fewestCatchesForOwn = 4;

/**
 * Pools the catch scatter of a meter's fills: s_w² = Σ SS_f / Σ(n_f − 1).
 * Source: Cochran, Sampling Techniques (pooled within-stratum variance); ISO 5725-2 (repeatability variance).
 */
export function pooledScatter(fills: readonly Pick<Fill, "totals">[]): PooledScatter {
  const groups = fills
    .map(({ totals }) => ({ sumOfSquares: totals.scatterSum, df: totals.catches - 1 }))
    .filter(({ df }) => df > 0);
  const df = sum(groups.map((group) => group.df));
  return {
    variance: df > 0 ? sum(groups.map((group) => group.sumOfSquares)) / df : null,
    df,
    fills: groups.length,
    homogeneity: bartlettTest(groups),
  };
}

/** Whether Bartlett's test says that the fills of a meter scatter differently. */
export function scatterDiffers(pooled: PooledScatter): boolean {
  return pooled.homogeneity !== null && pooled.homogeneity.pValue < homogeneityLimit;
}

/**
 * Which scatter speaks for one fill: the pooled one where at least one other fill contributes and it has 2 or more
 * degrees of freedom; the fill's own where fills scatter differently and it has 4 or more catches, or where nothing
 * can be pooled; none when a single catch stands alone.
 */
export function chooseScatter(fill: Pick<Fill, "totals">, pooled: PooledScatter): ChosenScatter {
  const ownDf = fill.totals.catches - 1;
  const othersContribute = pooled.df > ownDf;
  const fellBack =
    othersContribute && scatterDiffers(pooled) && fill.totals.catches >= fewestCatchesForOwn;
  if (othersContribute && pooled.df >= fewestPooledDf && !fellBack)
    return {
      source: "pooled",
      variance: pooled.variance,
      df: pooled.df,
      fills: pooled.fills,
      fellBack,
    };
  if (ownDf > 0) {
    const variance = fill.totals.scatterSum / ownDf;
    return { source: "own", variance, df: ownDf, fills: 1, fellBack };
  }
  return { source: "none", variance: null, df: 0, fills: 0, fellBack };
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
