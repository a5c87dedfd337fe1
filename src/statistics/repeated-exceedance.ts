import { at } from "../errors/at.ts";
import { normalDensity, normalLowerTail } from "../numeric/distributions/normal.ts";
import {
  requireFinite,
  requirePositive,
  requirePositiveOrInfinite,
  requireWhole,
} from "../numeric/domain.ts";
import { gaussLegendreRule } from "../numeric/quadrature.ts";
import { possibleSpreads, type Weighted } from "./possible-spreads.ts";

/** Errors e_i = location + shared + own_i of several future cases that hang together. */
export interface RepeatedLaw {
  /** Expected error of every case. */
  readonly location: number;
  /** Estimated standard deviation of a case's own part, above zero. */
  readonly spread: number;
  /** Degrees of freedom of that estimate; Infinity: known. */
  readonly df: number;
  /** Variance of the part all cases share, in units of spread²: 1/k for a mean of k, 1 for a single earlier case. */
  readonly sharedVariance: number;
}

/** The shared part is followed this many of its standard deviations out. */
const farthest = 6.5;
const sharedNodes = 40;
/** A pair of spread and shared part that weighs less is passed over: all of them, a third, come to 2e-9 of chance. */
const hardlyAny = 1e-11;

/**
 * Chance that at least one of several future cases has an error beyond ±limit. The cases are independent once the true
 * spread and the shared part are given; neither is known, so the chance is averaged over both:
 * 1 − E[(Φ((δ − μ)/σ − a) − Φ((−δ − μ)/σ − a))^count], a ~ N(0, sharedVariance), σ = spread·√(ν/χ²(ν)).
 * For one case it is the t chance with scale spread·√(1 + sharedVariance).
 *
 * @param law    location and spread in the unit of the limit
 * @param limit  above zero
 * @returns      the chance as a function of the number of cases, good to about 5e-6 up to 20 cases and 5e-5
 *               up to 50; the work is done once, for all counts
 */
export function chanceAnyBeyond(law: RepeatedLaw, limit: number): (count: number) => number {
  check(law, limit);
  const parts = sharedParts(law.sharedVariance);
  const spreads = possibleSpreads(law.spread, law.df);
  const logs = new Float64Array(spreads.length * parts.length);
  const weights = new Float64Array(logs.length);
  let pairs = 0;
  for (const { value: sigma, weight } of spreads) {
    for (const part of parts) {
      const weightOfPair = weight * part.weight;
      if (weightOfPair < hardlyAny) continue;
      logs[pairs] = logChanceInside(law.location / sigma + part.value, limit / sigma);
      weights[pairs++] = weightOfPair;
    }
  }
  return (count) => {
    requireWhole("chanceAnyBeyond", "count", count, 1);
    let total = 0;
    // −expm1 keeps the digits of small chances.
    for (let i = 0; i < pairs; i++) total -= at(weights, i) * Math.expm1(count * at(logs, i));
    return Math.min(1, total);
  };
}

/** ln of the chance that one case stays inside, everything in units of the spread. */
function logChanceInside(center: number, limit: number): number {
  return Math.log1p(
    -Math.min(1, normalLowerTail(-limit - center) + normalLowerTail(center - limit)),
  );
}

/** Values the shared part may have, in units of the spread. */
function sharedParts(variance: number): readonly Weighted[] {
  const { nodes, weights } = gaussLegendreRule(sharedNodes);
  return Array.from(nodes, (node, i) => ({
    value: Math.sqrt(variance) * farthest * node,
    weight: farthest * at(weights, i) * normalDensity(farthest * node),
  }));
}

function check({ location, spread, df, sharedVariance }: RepeatedLaw, limit: number): void {
  requireFinite("chanceAnyBeyond", "location", location);
  requirePositive("chanceAnyBeyond", "spread", spread);
  requirePositiveOrInfinite("chanceAnyBeyond", "df", df);
  requirePositive("chanceAnyBeyond", "sharedVariance", sharedVariance);
  requirePositive("chanceAnyBeyond", "limit", limit);
}
