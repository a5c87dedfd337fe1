import { requirePositive } from "../numeric/domain.ts";
import { keptWith } from "../numeric/kept.ts";
import { type ErrorLaw, type ExpectedSides, expectedSides } from "./expected-loss.ts";
import { type NormalSample, requireNormalSample } from "./normal-sample.ts";
import { possibleSpreads } from "./possible-spreads.ts";

/** Scatter of measurement that is inside the spread of a sample: what it adds to the spread of single observations. */
export interface InnerScatter {
  /** Above zero, in the unit of the sample. */
  readonly standardDeviation: number;
  /** Degrees of freedom behind it, above zero. */
  readonly df: number;
}

/** A law with the weight it has in a mean. */
export interface WeightedLaw {
  readonly law: ErrorLaw;
  readonly weight: number;
}

/**
 * A spread taken apart, given spread and scatter: the variance of the true values, not below zero, and the variance of
 * the mean of n observations, to which the scatter belongs. Scatter that came out larger than the whole spread is the
 * better figure for what the mean errs by.
 */
export function withoutScatter(
  spread: number,
  scatter: number,
  n: number,
): { readonly own: number; readonly ofMean: number } {
  return {
    own: Math.max(0, spread ** 2 - scatter ** 2),
    ofMean: Math.max(spread ** 2, scatter ** 2) / n,
  };
}

/**
 * How the true value of the next observation may be distributed, scatter of measurement taken out of the spread: normal
 * laws with weights that add up to 1, over what spread σ² = s²ν/χ²(ν) and scatter c² = s_c²ν_c/χ²(ν_c) may be. Each has the
 * variance max(0, σ² − c²) + max(σ², c²)/n: the component and the uncertainty of the mean, so that none is without width.
 *
 * A component estimated by itself is zero in many samples and claims more than they tell: where the scatter is most of
 * the spread, it states two thirds of the true mean error (reports/skipping-study.md). Over all that the component may be
 * it keeps some width. As the scatter vanishes, the mixture becomes Student's t on the degrees of freedom of the spread.
 *
 * Source  Weerahandi, JASA 88 (1993) 899 (generalized pivotal quantity of a variance component)
 */
export function lawsWithoutScatter(
  sample: NormalSample,
  scatter: InnerScatter,
): readonly WeightedLaw[] {
  requireNormalSample("lawsWithoutScatter", sample);
  requirePositive("lawsWithoutScatter", "scatter", scatter.standardDeviation);
  requirePositive("lawsWithoutScatter", "df of scatter", scatter.df);
  const scatters = possibleSpreads(scatter.standardDeviation, scatter.df, "coarse");
  return possibleSpreads(sample.standardDeviation, sample.df).flatMap((spread) =>
    scatters.map((one) => {
      const { own, ofMean } = withoutScatter(spread.value, one.value, sample.n);
      return {
        law: {
          location: sample.mean,
          scale: Math.sqrt(own + ofMean),
          df: Number.POSITIVE_INFINITY,
        },
        weight: spread.weight * one.weight,
      };
    }),
  );
}

/** The mean of a figure over weighted laws; null where it does not exist for one of them. */
export function meanOver(
  laws: readonly WeightedLaw[],
  figure: (law: ErrorLaw) => number | null,
): number | null {
  let total = 0;
  for (const { law, weight } of laws) {
    const one = figure(law);
    if (one === null) return null;
    total += weight * one;
  }
  return total;
}

/** The means of excess and shortfall over weighted laws; null where they do not exist for one of them. */
export const meanSidesOver = keptWith((laws: readonly WeightedLaw[]): ExpectedSides | null => {
  let [excess, shortfall] = [0, 0];
  for (const { law, weight } of laws) {
    const sides = expectedSides(law);
    if (sides === null) return null;
    excess += weight * sides.excess;
    shortfall += weight * sides.shortfall;
  }
  return { excess, shortfall };
});
