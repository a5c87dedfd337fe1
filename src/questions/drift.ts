import type { Meter } from "../model/meters.ts";
import type { MeterModel } from "../model/model.ts";
import { driftBy, foundBy } from "./drift/answer.ts";
import { looksOverFills } from "./drift/looks.ts";
import type { Drift, DriftOptions } from "./drift/result.ts";

export type { Drift, DriftFill, DriftOptions, DriftStretch } from "./drift/result.ts";

/**
 * Has this meter moved since earlier fills: since when, how much, and what to do about it?
 *
 * The decision is the model's, one after every fill (`historyOf`): averaged evidence of a lasting shift, told as trending
 * when a straight line explains more; else the newest fill at p ≤ .002, which the next fill settles. Beside it stand, as
 * explanation, tests that look once, at the end: least-squares slope on the order, t(k − 2), and the largest pooled
 * two-sample |t| over the splits, adjusted together by Holm's method; and charts of scores.
 *
 * @param meter    one bin × product of a fitted model
 * @param options  tolerance for the tolerance lines; level of sizes' intervals and of the explaining tests;
 *                 shiftOfInterest as its comment says
 * @param meters   all meters of the log, or of the bin, to know what else was in it
 * @param asked    of how many meters it is asked whether a column splits their fills; default: as many as are given
 * @returns        sizes as fractions, with intervals; verdict and steps as literal words
 * Null when       as the fields say; fills that agree exactly leave nothing to judge by (caution fills-agree-exactly)
 * Assumes         near-normal fills of one spread, which earlier levels share, and about which other meters tell where they
 *                 lend. A steady meter is called moved, trending or differing in 1 of 20 seasons of 12 fills, more often where
 *                 neighbouring fills are alike or differ more than those of the meters that lend: reports/drift-study.md
 * Source          Hawkins 1977, JASA 72, 180; Worsley 1986, Biometrika 73, 91; Jeffreys 1961, Theory of Probability, 5.2;
 *                 Quesenberry 1991, J. Quality Technology 23, 213; Holm 1979
 */
export function drift(
  meter: MeterModel,
  options: DriftOptions,
  meters: readonly Meter[] = [],
  asked = Math.max(1, meters.length),
): Drift {
  return driftBy(looksOverFills, meter, options, meters, asked);
}

/** The findings of `drift`, and what they are made from, without what is drawn. */
export function driftInBrief(
  meter: MeterModel,
  options: DriftOptions,
  meters: readonly Meter[] = [],
  asked = Math.max(1, meters.length),
) {
  return foundBy(looksOverFills, meter, options, meters, asked);
}
