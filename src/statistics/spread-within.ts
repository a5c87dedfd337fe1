import type { SpreadPrior } from "./shift-evidence.ts";
import { mean } from "./summary.ts";

/** A spread, and what it rests on. */
export interface SpreadWithin {
  /** s̃²; null without a degree of freedom. */
  readonly variance: number | null;
  /** ν0 + Σ(k_s − 1). */
  readonly df: number;
}

/** Sum of squares about the mean, and its degrees of freedom. */
export function squaresWithin(values: readonly number[]): { squares: number; df: number } {
  const center = mean(values);
  const squares = values.reduce((sum, value) => sum + (value - center) ** 2, 0);
  return { squares, df: values.length - 1 };
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
