import { at } from "../errors/at.ts";
import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import { gaussLegendreRule } from "../numeric/quadrature.ts";

/** A value of something unknown, with the weight it has in a mean. */
export interface Weighted {
  readonly value: number;
  readonly weight: number;
}

/** Panels of probability, fine towards both ends; with eight nodes each a chance averaged over spreads errs by less than 1e-6. */
const fine = [0, 1e-6, 1e-4, 3e-3, 0.05, 0.3, 0.7, 0.95, 0.997, 0.9999, 0.999999, 1];
/** For a spread on degrees of freedom enough that its far tails hardly count. */
const coarse = [0, 0.01, 0.1, 0.5, 0.9, 0.99, 1];
const nodesPerPanel = { fine: 8, coarse: 3 };

/**
 * Values a true standard deviation may have, weighted: s·√(ν/χ²(ν)) by Gauss-Legendre quadrature over the probability
 * of χ². The weights add up to 1.
 *
 * @param standardDeviation  the estimate, above zero
 * @param df                 behind it; Infinity: it is known
 * @param how                "coarse": 18 nodes instead of 88, for what is itself only one factor of a mean
 */
export function possibleSpreads(
  standardDeviation: number,
  df: number,
  how: "fine" | "coarse" = "fine",
): readonly Weighted[] {
  if (df === Number.POSITIVE_INFINITY) return [{ value: standardDeviation, weight: 1 }];
  const panels = how === "fine" ? fine : coarse;
  const { nodes, weights } = gaussLegendreRule(nodesPerPanel[how]);
  return panels.slice(1).flatMap((upper, i) => {
    const half = (upper - at(panels, i)) / 2;
    return Array.from(nodes, (node, j) => ({
      value: standardDeviation * Math.sqrt(df / chiSquaredQuantile(upper - half + half * node, df)),
      weight: half * at(weights, j),
    }));
  });
}
