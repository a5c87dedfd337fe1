import { quantile } from "simple-statistics";
import { relativeHalfWidth } from "../../../src/model/t-estimate.ts";
import type { Estimate } from "../../../src/results/estimate.ts";
import { mean, median } from "../../../src/statistics/summary.ts";

/** Every band of the study is meant to hold so often. */
export const level = 0.95;

/** A band against the truth. */
export interface Band {
  readonly holds: boolean;
  /** Relative. */
  readonly halfWidth: number;
}

/** Of each simulated log its band; null: it gave none. */
export type Bands = readonly (Band | null)[];

/** The two bands that one simulated log ends with, and the meter they are about. */
export interface Outcome {
  /** True spread of the meter's fills, or true scatter of its catches: what others lend it an opinion of. */
  readonly trueSpread: number;
  /** With what other meters lend. */
  readonly lent: Band | null;
  /** With nobody but the meter itself. */
  readonly alone: Band | null;
}

export function bandOf(estimate: Estimate, truth: number): Band | null {
  const halfWidth = relativeHalfWidth(estimate);
  if (estimate.interval === null || halfWidth === null) return null;
  const { lower, upper } = estimate.interval;
  return { holds: (lower ?? -Infinity) <= truth && truth <= (upper ?? Infinity), halfWidth };
}

export function lentOf(outcomes: readonly Outcome[]): Bands {
  return outcomes.map(({ lent }) => lent);
}

export function aloneOf(outcomes: readonly Outcome[]): Bands {
  return outcomes.map(({ alone }) => alone);
}

/** Share that holds the truth, of the bands given; null: none was. */
export function coverage(bands: Bands): number | null {
  const given = bands.filter((band) => band !== null);
  return given.length === 0 ? null : mean(given.map(({ holds }) => (holds ? 1 : 0)));
}

/** Of the bands given; null: none was. */
export function medianHalfWidth(bands: Bands): number | null {
  const given = bands.filter((band) => band !== null);
  return given.length === 0 ? null : median(given.map(({ halfWidth }) => halfWidth));
}

/** Median width with what is lent over median width by itself; null: one of them is never given. */
export function shrinkage(outcomes: readonly Outcome[]): number | null {
  const [lent, alone] = [medianHalfWidth(lentOf(outcomes)), medianHalfWidth(aloneOf(outcomes))];
  return lent === null || alone === null ? null : lent / alone;
}

/** Widths of one band over those of another of the same log, where both are given. */
export function widthRatios(over: Bands, under: Bands): readonly number[] {
  return over.flatMap((band, i) => {
    const other = under[i] ?? null;
    return band === null || other === null ? [] : band.halfWidth / other.halfWidth;
  });
}

/** What a share of the values stays within. */
export function point(values: readonly number[], share: number): number | null {
  return values.length === 0 ? null : quantile([...values], share);
}

/** Fifths of the meters by what is true of them, the calmest first. */
export function fifths(outcomes: readonly Outcome[]): readonly (readonly Outcome[])[] {
  const ordered = outcomes.toSorted((a, b) => a.trueSpread - b.trueSpread);
  const cut = (i: number) => Math.round((i * ordered.length) / 5);
  return [0, 1, 2, 3, 4].map((i) => ordered.slice(cut(i), cut(i + 1)));
}

/** Two standard errors of a share, with two successes and two failures added (Agresti & Coull 1998). */
export function errorOfShare(share: number, of: number): number {
  const p = (share * of + 2) / (of + 4);
  return 2 * Math.sqrt((p * (1 - p)) / (of + 4));
}
