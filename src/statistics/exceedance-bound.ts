import { chiSquaredQuantile } from "../numeric/distributions/chi-squared.ts";
import { noncentralTUpperTail } from "../numeric/distributions/noncentral-t.ts";
import { normalQuantile, normalUpperTail } from "../numeric/distributions/normal.ts";
import { requireFinite, requireProbability } from "../numeric/domain.ts";
import { findRoot } from "../numeric/roots.ts";
import { type NormalSample, requireNormalSample } from "./normal-sample.ts";

/** Standard deviations beyond which a normal tail is no number any more, or a whole one. */
const nothingBeyond = 45;
const everythingBeyond = 20;
/** What the two errors together may move the noncentrality beyond either alone: a quarter at most, over all that was tried. */
const slack = 1;
/** Of a noncentrality; what it leaves of a chance is below its last digits. */
const tolerance = 1e-12;

/**
 * How large a share of a normal population may lie above a limit? Upper confidence bound, mean and spread both unknown.
 *
 * With K = (limit − mean)/s, K·√n is noncentral t on df degrees of freedom about ζ·√n, where ζ = (limit − μ)/σ is what
 * the share depends on: 1 − Φ(ζ). A small share makes K large, so the bound belongs to the smallest ζ not refuted: the
 * one at which a K this large or larger has chance 1 − confidence. It is the tolerance limit read backwards: where K is
 * the one-sided tolerance factor of a content, the bound is 1 − content.
 *
 * @param confidence  0 < confidence < 1
 * @returns           0 to 1; exact for normal observations
 * @throws            NumericalError when an argument is out of range
 * Source             Owen & Hua, Communications in Statistics B6 (1977) 285; Hahn & Meeker, Statistical Intervals, 4.5
 */
export function shareAboveBound(sample: NormalSample, limit: number, confidence: number): number {
  requireNormalSample("shareAboveBound", sample);
  requireFinite("shareAboveBound", "limit", limit);
  requireProbability("shareAboveBound", "confidence", confidence);
  const { mean, standardDeviation, n, df } = sample;
  const root = Math.sqrt(n);
  const t = ((limit - mean) / standardDeviation) * root;
  // What the noncentrality would be if the sampling error of the mean were nothing.
  const refuted = t > 0 ? 1 - confidence : confidence;
  const guess = t * Math.sqrt(chiSquaredQuantile(refuted, df) / df);
  if (guess > nothingBeyond * root) return 0;
  if (guess < -everythingBeyond * root) return 1;
  const excess = (noncentrality: number) =>
    noncentralTUpperTail(t, df, noncentrality) - (1 - confidence);
  // Nor does the sampling error of the mean move it further than it would by itself.
  const ofMean = normalQuantile(confidence);
  const lowest = guess - Math.max(ofMean, 0) - slack;
  const highest = guess - Math.min(ofMean, 0) + slack;
  return normalUpperTail(findRoot(excess, lowest, highest, { tolerance }) / root);
}

/** The same below a limit: above its negative for the population turned round. */
export function shareBelowBound(sample: NormalSample, limit: number, confidence: number): number {
  return shareAboveBound({ ...sample, mean: -sample.mean }, -limit, confidence);
}

/**
 * How large a share of a normal population may lie beyond ±limit? The bounds of both sides added, each with half of what
 * the confidence leaves (Bonferroni), so that together they hold with at least the confidence. Unlike a bound that only
 * widens the spread, it stays a bound where the mean is off centre.
 *
 * @param limit       0 or more, in the unit of the mean
 * @param confidence  0 < confidence < 1
 */
export function shareBeyondBound(sample: NormalSample, limit: number, confidence: number): number {
  const ofSide = (1 + confidence) / 2;
  const above = shareAboveBound(sample, limit, ofSide);
  return Math.min(1, above + shareBelowBound(sample, -limit, ofSide));
}
