import { rangeTail } from "../numeric/distributions/normal-range.ts";
import { requireWhole } from "../numeric/domain.ts";
import { integratePanels } from "../numeric/quadrature.ts";
import { logGamma } from "../numeric/special-functions.ts";

/** A range of normal values beyond this many standard deviations has no weight left. */
const widestRange = 20;
const panels = Array.from({ length: 41 }, (_, i) => (i * widestRange) / 40);

/**
 * Expected range of n standard normal values, the factor d2 of control charts: ∫ P(range > w) dw.
 *
 * @param n whole number from 2 to 200
 * @throws NumericalError when n is not such a number
 * Source Tippett 1925, Biometrika 17, 364–387
 */
export function meanRange(n: number): number {
  requireWhole("meanRange", "n", n, 2);
  return integratePanels(rangeTail(n, "upper"), panels);
}

/**
 * Standard deviation of the range of n standard normal values, the factor d3: √(2 ∫ w P(range > w) dw − d2²).
 *
 * @param n whole number from 2 to 200
 * @throws NumericalError when n is not such a number
 */
export function standardDeviationOfRange(n: number): number {
  requireWhole("standardDeviationOfRange", "n", n, 2);
  const upperTail = rangeTail(n, "upper");
  const meanSquare = integratePanels((width) => 2 * width * upperTail(width), panels);
  return Math.sqrt(meanSquare - meanRange(n) ** 2);
}

/**
 * Expected sample standard deviation of n standard normal values, the factor c4: √(2/(n−1)) Γ(n/2)/Γ((n−1)/2). It is below
 * 1 because a standard deviation of few values comes out too small on average.
 *
 * @param n whole number of at least 2
 * @throws NumericalError when n is not such a number
 */
export function meanStandardDeviation(n: number): number {
  requireWhole("meanStandardDeviation", "n", n, 2);
  return Math.sqrt(2 / (n - 1)) * Math.exp(logGamma(n / 2) - logGamma((n - 1) / 2));
}
