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

/** Below this p the fills are taken to scatter differently. */
const homogeneityLimit = 0.01;

/**
 * Pools the catch scatter of a meter's fills: s_w² = Σ SS_f / Σ(n_f − 1), and on the relative scale
 * q = Σ (SS_f/b_f²) / Σ(n_f − 1).
 * Source: Cochran, Sampling Techniques (pooled within-stratum variance); ISO 5725-2 (repeatability variance).
 */
export function pooledScatter(fills: readonly Pick<Fill, "totals">[]): PooledScatter {
  return pooledTotals(
    fills.map(({ totals }) => totals),
    true,
  );
}

/** @param isTested  whether anybody will ask if the fills scatter alike; else `homogeneity` is null */
export function pooledTotals(all: readonly FillTotals[], isTested: boolean): PooledScatter {
  const groups = all.filter(({ catches }) => catches > 1);
  const df = sum(groups.map(dfOf));
  // What rounding leaves of no scatter would be the least of all to the test.
  const scattering = () => groups.filter((one) => !agreeExactly(one));
  return {
    variance: df > 0 ? sum(groups.map(({ scatterSum }) => scatterSum)) / df : null,
    relative: df > 0 ? sum(groups.map(relativeSquares)) / df : null,
    df,
    fills: groups.length,
    homogeneity: isTested
      ? bartlettTest(
          scattering().map((one) => ({ sumOfSquares: relativeSquares(one), df: dfOf(one) })),
        )
      : null,
  };
}

/** Whether Bartlett's test says that the fills of a meter scatter differently. */
export function scatterDiffers(pooled: PooledScatter): boolean {
  return pooled.homogeneity !== null && pooled.homogeneity.pValue < homogeneityLimit;
}

/** Degrees of freedom that a fill's catches bring. */
export function dfOf({ catches }: FillTotals): number {
  return Math.max(0, catches - 1);
}

/** Scatter sum relative to the square of the delivery, in turns. */
export function relativeSquares(totals: FillTotals): number {
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
