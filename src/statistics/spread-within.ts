import { requirePositive } from "../numeric/domain.ts";
import { logMinusDigamma } from "../numeric/special-functions.ts";
import type { SpreadPrior } from "./spread-prior.ts";
import { squaresWithin } from "./summary.ts";

/** A spread, and what it rests on. */
export interface SpreadWithin {
  /** s̃²; null without a degree of freedom. */
  readonly variance: number | null;
  /** ν0 + Σ(k_s − 1). */
  readonly df: number;
}

/**
 * Spread of values within stretches of one level each: s̃² = (ν0·s0² + Σ SS_s)/(ν0 + Σ(k_s − 1)).
 *
 * @param stretches each of one value or more
 * @param prior     in the square of the values' unit
 */
export function spreadWithin(
  stretches: readonly (readonly number[])[],
  { nu0, s0Squared }: SpreadPrior,
): SpreadWithin {
  const parts = stretches.map(squaresWithin);
  const df = parts.reduce((sum, part) => sum + part.df, nu0);
  const squares = parts.reduce((sum, part) => sum + part.squares, nu0 * s0Squared);
  return { variance: df > 0 ? squares / df : null, df };
}

/**
 * Standard deviation in the middle of those that leave an estimate s on so many degrees of freedom likely: the centre of
 * ln σ², exp(½·(ln s² − ψ(ν/2) + ln(ν/2))). The estimate itself sits low, the more so the fewer its degrees of freedom.
 *
 * @param standardDeviation above 0
 * @param df                above 0
 * @throws NumericalError when an argument is out of range
 * Source Bartlett & Kendall 1946 (distribution of ln s²)
 */
export function typicalSpread(standardDeviation: number, df: number): number {
  requirePositive("typicalSpread", "standardDeviation", standardDeviation);
  requirePositive("typicalSpread", "df", df);
  return standardDeviation * Math.exp(logMinusDigamma(df / 2) / 2);
}
