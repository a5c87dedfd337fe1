import { at } from "../../errors/at.ts";
import { integratePanel } from "../quadrature.ts";
import { logOnePlusMinus, stirlingRemainder } from "../special-functions.ts";

/** The density is followed down to e^−80 of its peak, far below any tail that is asked for. */
const depth = 80;

/** Panels that add less than this share of the total end the walk to their side. */
const negligible = 1e-18;

/**
 * Mean of g(S) over the estimated standard deviation S of normal values with true deviation 1, that is S²·df is
 * chi-squared with df degrees of freedom: what is to be expected of something that depends on an estimated scatter.
 *
 * Integrates over u = ln S by Gauss–Legendre panels walked outwards from the peak of the density.
 *
 * @param g function of S > 0, nowhere negative; density times g must have a single peak
 * @param df degrees of freedom, finite and above 0
 * @param breaks values of S at which g has a kink or changes fast; those that are not above 0 are passed over
 */
export function chiMean(
  g: (deviation: number) => number,
  df: number,
  breaks: readonly number[],
): number {
  const integrand = (u: number) => Math.exp(df * chiLogShape(u)) * g(Math.exp(u));
  const edges = panelEdges(df, breaks);
  const peak = edges.indexOf(0);
  let total = 0;
  const worthwhile = (from: number, to: number) => {
    const part = integratePanel(integrand, at(edges, from), at(edges, to));
    total += part;
    return part >= negligible * total;
  };
  for (let i = peak; i + 1 < edges.length && worthwhile(i, i + 1); i++);
  for (let i = peak; i > 0 && worthwhile(i - 1, i); i--);
  return chiScale(df) * total;
}

/** Density of u = ln S at its peak u = 0: √(df/π)·e^−r, r being Stirling's remainder at df/2. */
export function chiScale(df: number): number {
  return Math.sqrt(df / Math.PI) * Math.exp(-stirlingRemainder(0.5 * df));
}

/** ln of the density of u = ln S over its peak, for one df: u − (e^2u − 1)/2, near 0 without cancellation. */
export function chiLogShape(u: number): number {
  const excess = Math.expm1(2 * u);
  return Math.abs(u) < 0.2 ? 0.5 * logOnePlusMinus(excess) : u - 0.5 * excess;
}

/** Ascending edges, 0 among them. */
function panelEdges(df: number, breaks: readonly number[]): Float64Array {
  const width = Math.min(1.5 / Math.sqrt(df), 0.75);
  const edges = [0];
  let upper = 0;
  while (-df * chiLogShape(upper) < depth) {
    upper += width;
    edges.push(upper);
  }
  let lower = 0;
  // Far left the density is a plain exponential of rate df, so panels may grow while df is small.
  let step = width;
  while (-df * chiLogShape(lower) < depth) {
    lower -= step;
    edges.push(lower);
    step = Math.max(width, Math.min(1.5 * step, 4 / df));
  }
  for (const at of breaks) {
    const u = at > 0 ? Math.log(at) : 0;
    if (u > lower && u < upper && u !== 0) edges.push(u);
  }
  return Float64Array.from(edges).sort();
}
