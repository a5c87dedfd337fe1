import { quantileSorted } from "simple-statistics";
import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import { normalQuantile } from "../numeric/distributions/normal.ts";
import { requireProbability } from "../numeric/domain.ts";
import type { ErrorLaw } from "./expected-loss.ts";
import { type NormalSample, requireNormalSample } from "./normal-sample.ts";

const spreads = 60;
const means = 61;
const meanQuantiles = middles(means).map(normalQuantile);

/**
 * Normal laws a sample may be from, all equally probable: σ* = s·√(ν/χ²) and μ* = mean − σ*·z/√n over a grid of equally
 * probable χ² and z. A function of the laws has its generalized confidence limits at the quantiles of its values.
 *
 * A grid instead of random draws, so that the same sample always has the same limits.
 *
 * Source  Weerahandi, Generalized confidence intervals, JASA 88 (1993) 899
 */
export function possibleLaws(sample: NormalSample): readonly ErrorLaw[] {
  requireNormalSample("possibleLaws", sample);
  const { mean, standardDeviation, n, df } = sample;
  return middles(spreads).flatMap((p) => {
    const scale = standardDeviation * Math.sqrt(df / chiSquaredQuantile(p, df));
    return meanQuantiles.map((z) => ({
      location: mean - (z * scale) / Math.sqrt(n),
      scale,
      df: Number.POSITIVE_INFINITY,
    }));
  });
}

/**
 * Generalized confidence limit of a figure that depends on mean and spread of a normal population: what the figure stays
 * below with that confidence. Nominal where the figure rises or falls with the mean; near a least value in the mean the
 * limits lie high, and a lower one then holds less often than it says.
 *
 * @param figures     of every possible law
 * @param confidence  0 < confidence < 1; below one half it is a lower limit
 */
export function generalizedLimit(figures: readonly number[], confidence: number): number {
  requireProbability("generalizedLimit", "confidence", confidence);
  return quantileSorted(
    [...figures].sort((a, b) => a - b),
    confidence,
  );
}

/** Middles of so many equal parts of the probability scale. */
function middles(parts: number): readonly number[] {
  return Array.from({ length: parts }, (_, i) => (i + 0.5) / parts);
}
