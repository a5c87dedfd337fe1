import { at } from "../errors/at.ts";
import { requireWhole } from "./domain.ts";

/** Points in (−1, 1) and weights that sum to 2. */
export interface QuadratureRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/** Rules made so far; so few that whoever asks for ever new ones does not fill the memory. */
const rules = new Map<number, QuadratureRule>();
const mostKept = 32;

/**
 * Gauss–Legendre rule: exact for polynomials up to degree 2·points − 1.
 * The nodes are the roots of the Legendre polynomial, found by Newton's method; the last few rules are kept.
 *
 * @param points whole number of at least 1
 * @throws NumericalError when points is not such a number
 * Source Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 25.4.29
 */
export function gaussLegendreRule(points: number): QuadratureRule {
  requireWhole("gaussLegendreRule", "points", points, 1);
  const known = rules.get(points);
  if (known !== undefined) return known;
  const nodes = new Float64Array(points);
  const weights = new Float64Array(points);
  for (let i = 0; i < points; i++) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (points + 0.5));
    let slope = 1;
    // Newton doubles the correct digits each time from this start; six rounds are more than enough.
    for (let round = 0; round < 6; round++) {
      const [value, derivative] = legendre(points, x);
      slope = derivative;
      x -= value / derivative;
    }
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  const rule = { nodes, weights };
  if (rules.size === mostKept) rules.clear();
  rules.set(points, rule);
  return rule;
}

/**
 * Integral of `f` from `lower` to `upper` by one Gauss–Legendre rule.
 *
 * @param f integrand, smooth on the panel
 * @param points nodes of the rule, default 16
 */
export function integratePanel(
  f: (x: number) => number,
  lower: number,
  upper: number,
  points = 16,
): number {
  const { nodes, weights } = gaussLegendreRule(points);
  const half = 0.5 * (upper - lower);
  const middle = lower + half;
  let sum = 0;
  for (let i = 0; i < points; i++) sum += at(weights, i) * f(middle + half * at(nodes, i));
  return half * sum;
}

/** Legendre polynomial of the degree and its derivative at x, by the three-term recurrence. */
function legendre(degree: number, x: number): readonly [value: number, derivative: number] {
  let previous = 1;
  let value = x;
  for (let k = 2; k <= degree; k++) {
    [previous, value] = [value, ((2 * k - 1) * x * value - (k - 1) * previous) / k];
  }
  return [value, (degree * (x * value - previous)) / (x * x - 1)];
}
