import { mean, sampleStandardDeviation, sum } from "simple-statistics";
import type { About, Estimate } from "../results/estimate.ts";
import { fitRandomEffects, type RandomEffectsFit } from "../statistics/random-effects.ts";
import { type PooledScatter, standardDeviationInterval } from "./catch-scatter.ts";
import type { Fill, Meter } from "./meters.ts";
import { tEstimate } from "./t-estimate.ts";

/** How much fills of one meter differ. */
export interface FillSpread {
  /** "own": from this meter's fills; "borrowed": from other meters, on the relative scale; "none": unknown. */
  readonly source: "own" | "borrowed" | "none";
  /** Standard deviation of the fills' deliveries, catch scatter included; interval about "fill-to-fill spread". */
  readonly standardDeviation: Estimate<"kg/turn"> | null;
  /** The same relative to the mean delivery. */
  readonly relative: number | null;
  readonly df: number;
  /** Fills behind it. */
  readonly fills: number;
}

/** The part of the spread that catch scatter does not explain: √max(0, s_b² − s_w²·mean(1/T)). */
export interface BetweenComponent {
  readonly value: number;
  readonly unit: "kg/turn";
  /** True: estimated as zero, which means "not told apart from catch scatter", never "no variation". */
  readonly atBoundary: boolean;
  /** Share of the variance of one catch of typical turns that is the fill's. */
  readonly intraclassCorrelation: number;
}

/** What a meter's fills say together about the mean over fills and about the next fill. */
export interface AcrossFills {
  readonly fills: number;
  readonly catches: number;
  /** Mean of one estimate a fill; interval about "mean over fills". */
  readonly mean: Estimate<"kg/turn">;
  /** The same value with the interval that a new fill's true delivery is expected in; about "next fill". */
  readonly nextFill: Estimate<"kg/turn">;
  readonly spread: FillSpread;
  readonly between: BetweenComponent | null;
  /** t interval that takes every catch as an observation of its own. For a caution only: it covers 57–87 %. */
  readonly ignoringFills: Estimate<"kg/turn"> | null;
}

/** A spread relative to the mean with its degrees of freedom, from meters other than the one asked about. */
export interface RelativeSpread {
  readonly relative: number;
  readonly df: number;
  readonly fills: number;
}

/**
 * Two-stage analysis of fills: one estimate a fill, then t on k − 1 degrees of freedom.
 * mean ± t·s_b/√k; next fill ± t·s_b·√(1 + 1/k).
 *
 * @param borrowed  spread to use when there is one fill only; null: then nothing is said about other fills
 * @returns         estimates in kg/turn; standardError and interval null for a lone fill with nothing to borrow.
 *                  A borrowed spread gives the next-fill interval only: one fill says nothing of the mean's error
 *                  beyond it
 * Source           Hahn & Meeker, Statistical Intervals, ch. 4; coverage in reports/coverage.md
 */
export function acrossFills(
  fills: readonly Fill[],
  scatter: PooledScatter,
  level: number,
  borrowed: RelativeSpread | null,
): AcrossFills {
  const deliveries = fills.map(({ delivery }) => delivery);
  const center = mean(deliveries);
  const spread = fillSpread(deliveries, level, borrowed);
  const k = fills.length;
  const sd = spread.standardDeviation?.value ?? null;
  const estimate = (variancePerSpread: number, about: About, usable: boolean) =>
    tEstimate(
      center,
      "kg/turn",
      usable && sd !== null ? sd * Math.sqrt(variancePerSpread) : null,
      spread.df,
      level,
      about,
    );
  return {
    fills: k,
    catches: sum(fills.map(({ totals }) => totals.catches)),
    mean: estimate(1 / k, "mean over fills", spread.source === "own"),
    nextFill: estimate(1 + 1 / k, "next fill", true),
    spread,
    between: spread.source === "own" && sd !== null ? betweenComponent(fills, sd, scatter) : null,
    ignoringFills: ignoringFills(fills, level),
  };
}

/**
 * The same fills by restricted maximum likelihood with small-sample adjusted error, the named alternative.
 *
 * @returns null below two fills, or without any catch scatter to compare with
 */
export function remlAcrossFills(fills: readonly Fill[]): RandomEffectsFit | null {
  return fills.length >= 2 ? fitRandomEffects(fills.map(asGroup)) : null;
}

/** Pools the fill-to-fill spread of meters with two or more fills on the relative scale; null when there is none. */
export function relativeSpreadOf(meters: readonly Meter[]): RelativeSpread | null {
  const usable = meters.map(({ fills }) => fills).filter((fills) => fills.length >= 2);
  if (usable.length === 0) return null;
  const df = sum(usable.map((fills) => fills.length - 1));
  const squares = usable.map((fills) => {
    const deliveries = fills.map(({ delivery }) => delivery);
    return (fills.length - 1) * (sampleStandardDeviation(deliveries) / mean(deliveries)) ** 2;
  });
  return { relative: Math.sqrt(sum(squares) / df), df, fills: sum(usable.map((f) => f.length)) };
}

function fillSpread(
  deliveries: readonly number[],
  level: number,
  borrowed: RelativeSpread | null,
): FillSpread {
  const center = mean([...deliveries]);
  const of = (sd: number, df: number): Estimate<"kg/turn"> => ({
    value: sd,
    unit: "kg/turn",
    standardError: null,
    df,
    interval: standardDeviationInterval(sd, df, level, "fill-to-fill spread"),
  });
  if (deliveries.length >= 2) {
    const sd = sampleStandardDeviation([...deliveries]);
    const df = deliveries.length - 1;
    return {
      source: "own",
      standardDeviation: of(sd, df),
      relative: sd / center,
      df,
      fills: deliveries.length,
    };
  }
  if (borrowed === null)
    return { source: "none", standardDeviation: null, relative: null, df: 0, fills: 0 };
  return {
    source: "borrowed",
    standardDeviation: of(borrowed.relative * center, borrowed.df),
    relative: borrowed.relative,
    df: borrowed.df,
    fills: borrowed.fills,
  };
}

function betweenComponent(
  fills: readonly Fill[],
  sd: number,
  scatter: PooledScatter,
): BetweenComponent | null {
  if (scatter.variance === null) return null;
  const ofCatches = scatter.variance * mean(fills.map(({ totals }) => 1 / totals.turns));
  const variance = Math.max(0, sd ** 2 - ofCatches);
  const turnsPerCatch =
    sum(fills.map(({ totals }) => totals.turns)) / sum(fills.map(({ totals }) => totals.catches));
  const whole = variance + scatter.variance / turnsPerCatch;
  return {
    value: Math.sqrt(variance),
    unit: "kg/turn",
    atBoundary: variance === 0,
    intraclassCorrelation: whole > 0 ? variance / whole : 0,
  };
}

function ignoringFills(fills: readonly Fill[], level: number): Estimate<"kg/turn"> | null {
  const catches = sum(fills.map(({ totals }) => totals.catches));
  if (fills.length < 2 || catches < 2) return null;
  const turns = sum(fills.map(({ totals }) => totals.turns));
  const value = sum(fills.map(({ totals }) => totals.massKg)) / turns;
  const scatterSum = sum(
    fills.map(({ totals, delivery }) => totals.scatterSum + totals.turns * (delivery - value) ** 2),
  );
  const standardError = Math.sqrt(scatterSum / (catches - 1) / turns);
  return tEstimate(value, "kg/turn", standardError, catches - 1, level, "mean over fills");
}

function asGroup({ delivery, totals }: Fill) {
  return {
    estimate: delivery,
    information: totals.turns,
    sumOfSquares: totals.scatterSum,
    df: totals.catches - 1,
  };
}
