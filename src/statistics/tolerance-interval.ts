import { chiSquaredQuantile, chiSquaredUpperTail } from "../numeric/distributions/chi-squared.ts";
import { noncentralTQuantile } from "../numeric/distributions/noncentral-t.ts";
import { normalDensity, normalLowerTail, normalQuantile } from "../numeric/distributions/normal.ts";
import { requirePositive, requireProbability, requireWhole } from "../numeric/domain.ts";
import { integratePanels } from "../numeric/quadrature.ts";
import { findRoot } from "../numeric/roots.ts";

/** A tolerance interval mean ± factor·s is to hold `content` of a normal population with `confidence`. */
export interface ToleranceAim {
  /** Share of the population to be held, 0 < content < 1. */
  readonly content: number;
  /** Chance that the interval holds it, 0 < confidence < 1. */
  readonly confidence: number;
}

/** What the mean and the standard deviation rest on. */
export interface ToleranceSample {
  /** Observations behind the mean, at least 1. */
  readonly n: number;
  /** Degrees of freedom behind the standard deviation; n − 1 unless it comes from elsewhere. */
  readonly df: number;
}

/**
 * Factor of the two-sided tolerance interval by Howe's approximation: √(ν·(1 + 1/n)·z²((1 + content)/2) / χ²(1 −
 * confidence, ν)). Against the exact factor for 95 % content with 95 % confidence it is 5 % too wide at n = 2, 2 % at
 * n = 3, and within 1 % from n = 4.
 *
 * Source: Howe, JASA 64 (1969) 610; NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3
 * @example howeToleranceFactor({ n: 43, df: 42 }, { content: 0.9, confidence: 0.99 }) // -> 2.217
 */
export function howeToleranceFactor(sample: ToleranceSample, aim: ToleranceAim): number {
  check("howeToleranceFactor", sample, aim);
  const { n, df } = sample;
  const z = normalQuantile((1 + aim.content) / 2);
  return z * Math.sqrt((df * (1 + 1 / n)) / chiSquaredQuantile(1 - aim.confidence, df));
}

/**
 * Exact factor of the two-sided tolerance interval. The interval holds the content when s is at least r(x)/factor, x
 * being the distance of the mean from the true one and r(x) the half-width that holds the content there; the chance of
 * that, averaged over x ~ N(0, 1/n), is set to the confidence.
 *
 * Source: Odeh & Owen, Tables for Normal Tolerance Limits (1980); ISO 16269-6
 */
export function exactToleranceFactor(sample: ToleranceSample, aim: ToleranceAim): number {
  check("exactToleranceFactor", sample, aim);
  const { n, df } = sample;
  const farthest = 8.5;
  const edges = Array.from({ length: 9 }, (_, i) => (i * farthest) / 8);
  const half = memoized((u: number) => halfWidthHolding(aim.content, u / Math.sqrt(n)));
  // u = x·√n is standard normal; the integrand is even in u.
  const confidence = (factor: number) =>
    2 *
    integratePanels(
      (u) => normalDensity(u) * chiSquaredUpperTail(df * (half(u) / factor) ** 2, df),
      edges,
      12,
    );
  const guess = howeToleranceFactor(sample, aim);
  const excess = (logFactor: number) => confidence(Math.exp(logFactor)) - aim.confidence;
  return Math.exp(findRoot(excess, Math.log(guess / 3), Math.log(guess * 3)));
}

/**
 * Exact factor of the one-sided tolerance limit mean + factor·s: a noncentral t quantile,
 * t(confidence; df, z(content)·√n)/√n.
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3; Odeh & Owen (1980)
 * @example oneSidedToleranceFactor({ n: 43, df: 42 }, { content: 0.9, confidence: 0.99 }) // -> 1.8740
 */
export function oneSidedToleranceFactor(sample: ToleranceSample, aim: ToleranceAim): number {
  check("oneSidedToleranceFactor", sample, aim);
  const root = Math.sqrt(sample.n);
  const noncentrality = normalQuantile(aim.content) * root;
  return noncentralTQuantile(aim.confidence, sample.df, noncentrality) / root;
}

/** Half-width r about `distance` that holds the content of a standard normal population. */
function halfWidthHolding(content: number, distance: number): number {
  const held = (r: number) =>
    normalLowerTail(distance + r) - normalLowerTail(distance - r) - content;
  return findRoot(held, 0, distance + normalQuantile((1 + content) / 2) + 1);
}

/** The nodes of the integral stay where they are while the factor is searched. */
function memoized(f: (x: number) => number): (x: number) => number {
  const known = new Map<number, number>();
  return (x) => {
    const value = known.get(x) ?? f(x);
    known.set(x, value);
    return value;
  };
}

function check(routine: string, { n, df }: ToleranceSample, aim: ToleranceAim): void {
  requireWhole(routine, "n", n, 1);
  requirePositive(routine, "df", df);
  requireProbability(routine, "content", aim.content);
  requireProbability(routine, "confidence", aim.confidence);
}
