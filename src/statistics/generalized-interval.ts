import { quantileSorted } from "simple-statistics";
import { at } from "../errors/at.ts";
import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import { normalQuantile } from "../numeric/distributions/normal.ts";
import { requireProbability } from "../numeric/domain.ts";
import type { ErrorLaw } from "./expected-loss.ts";
import { type NormalSample, requireNormalSample } from "./normal-sample.ts";
import { type InnerScatter, withoutScatter } from "./without-scatter.ts";

const spreads = 60;
const means = 61;
const meanQuantiles = middles(means).map(normalQuantile);
/** Its multiples, less their whole part, fall evenly over any stretch of the numbers counted. */
const goldenRatio = (Math.sqrt(5) - 1) / 2;
/** A law needs some width; this share of the spread is none. */
const noWidth = 1e-6;

/**
 * Normal laws a sample may be from, all equally probable: σ* = s·√(ν/χ²) and μ* = mean − σ*·z/√n over a grid of equally
 * probable χ² and z. A function of the laws has its generalized confidence limits at the quantiles of its values.
 *
 * A grid instead of random draws, so that the same sample always has the same limits.
 *
 * @param scatter  of measurement, to be taken out: σ*² is then max(0, σ² − c²), with c* = s_c·√(ν_c/χ²) as uncertain as
 *                 the rest, while μ* stays as uncertain as the scatter makes it; null: none
 * Source          Weerahandi, Generalized confidence intervals, JASA 88 (1993) 899
 */
export function possibleLaws(
  sample: NormalSample,
  scatter: InnerScatter | null = null,
): readonly ErrorLaw[] {
  requireNormalSample("possibleLaws", sample);
  const { mean, standardDeviation, n, df } = sample;
  const scatters = scatter === null ? null : scattersOf(scatter);
  return middles(spreads).flatMap((p, i) => {
    const spread = standardDeviation * Math.sqrt(df / chiSquaredQuantile(p, df));
    return meanQuantiles.map((z, j) => {
      const { own, ofMean } = withoutScatter(spread, scatters?.(i * means + j) ?? 0, n);
      return {
        location: mean - z * Math.sqrt(ofMean),
        scale: Math.max(Math.sqrt(own), noWidth * spread),
        df: Number.POSITIVE_INFINITY,
      };
    });
  });
}

/** A scatter for every number of a count, together as they may be, and none in step with what is counted. */
function scattersOf({ standardDeviation, df }: InnerScatter): (number: number) => number {
  const possible = middles(spreads).map(
    (p) => standardDeviation * Math.sqrt(df / chiSquaredQuantile(p, df)),
  );
  return (number) => at(possible, Math.floor(((number * goldenRatio) % 1) * spreads));
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
  return quantileSorted([...Float64Array.from(figures).sort()], confidence);
}

/** Middles of so many equal parts of the probability scale. */
function middles(parts: number): readonly number[] {
  return Array.from({ length: parts }, (_, i) => (i + 0.5) / parts);
}
