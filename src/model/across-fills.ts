import { sum } from "simple-statistics";
import type { About, Estimate } from "../results/estimate.ts";
import { fitRandomEffects, type RandomEffectsFit } from "../statistics/random-effects.ts";
import { noPrior } from "../statistics/spread-prior.ts";
import { spreadWithin } from "../statistics/spread-within.ts";
import { mean } from "../statistics/summary.ts";
import { type PooledScatter, standardDeviationInterval } from "./catch-scatter.ts";
import type { MeterHistory } from "./history.ts";
import { deliveriesOf, type Fill } from "./meters.ts";
import { tEstimate } from "./t-estimate.ts";

/** How much fills of one meter of one level differ. */
export interface FillSpread {
  /** "own": from this meter's fills; "borrowed": from other meters, on the relative scale; "none": unknown. */
  readonly source: "own" | "borrowed" | "none";
  /** Standard deviation of the fills' deliveries, catch scatter included; interval about "fill-to-fill spread". */
  readonly standardDeviation: Estimate<"kg/turn"> | null;
  /** The same relative to the mean delivery. */
  readonly relative: number | null;
  /** Σ(k − 1) over the stretches of one level. */
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
  /** What was taken out: the standard deviation that catch scatter adds to the fills' deliveries, kg/turn. */
  readonly catchScatter: { readonly value: number; readonly df: number };
}

/** What a meter's fills say together about the mean over fills and about the next fill. */
export interface FillsTogether {
  /** Fills of the level in force, on which mean and next fill rest; earlier levels speak for the spread only. */
  readonly fills: number;
  /** Their catches. */
  readonly catches: number;
  /** First of them, where fills before it are of another level; null: no earlier level. */
  readonly sinceFill: number | null;
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
 * Two-stage analysis of fills: one estimate a fill. Level from the k fills of the stretch in force; spread within all
 * stretches, s² = Σ SS/Σ(k − 1), on ν = Σ(k − 1) degrees of freedom. Mean ± t(ν)·s/√k; next fill ± t(ν)·s·√(1 + 1/k).
 *
 * @param stretches fills of one level after another, the last one in force; one stretch where nothing changed
 * @param borrowed  spread to use when no stretch has two fills; null: then nothing is said about other fills
 * @returns         estimates in kg/turn; standardError and interval null for a lone fill with nothing to borrow.
 *                  A borrowed spread gives the next-fill interval only: one fill says nothing of the mean's error
 *                  beyond it
 * Source           Hahn & Meeker, Statistical Intervals, ch. 4; coverage in reports/coverage.md, after changes of level in
 *                  reports/drift-study.md
 */
export function fillsTogether(
  stretches: readonly (readonly Fill[])[],
  scatter: PooledScatter,
  level: number,
  borrowed: RelativeSpread | null,
): FillsTogether {
  const inForce = stretches.at(-1) ?? [];
  const center = mean(deliveriesOf(inForce));
  const spread = fillSpread(stretches, center, level, borrowed);
  const k = inForce.length;
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
    catches: sum(inForce.map(({ totals }) => totals.catches)),
    sinceFill: stretches.length > 1 ? (inForce[0]?.fill ?? null) : null,
    mean: estimate(1 / k, "mean over fills", spread.source === "own"),
    nextFill: estimate(1 + 1 / k, "next fill", true),
    spread,
    between:
      spread.source === "own" && sd !== null
        ? betweenComponent(stretches.flat(), sd, scatter)
        : null,
    ignoringFills: ignoringFills(inForce, level),
  };
}

/**
 * The same fills by restricted maximum likelihood with small-sample adjusted error, the named alternative.
 *
 * @param fills of one level
 * @returns null below two fills, or without any catch scatter to compare with
 */
export function remlAcrossFills(fills: readonly Fill[]): RandomEffectsFit | null {
  return fills.length >= 2 ? fitRandomEffects(fills.map(asGroup)) : null;
}

/**
 * Pools the fill-to-fill spread of meters on the relative scale, within their stretches of one level; null when no
 * stretch has two fills. What moves all meters together, or one of them, is not lent as spread.
 */
export function relativeSpreadOf(
  meters: readonly { readonly history: Pick<MeterHistory, "stretches"> }[],
): RelativeSpread | null {
  const usable = meters
    .flatMap(({ history }) => history.stretches.map(({ fills }) => fills))
    .filter((fills) => fills.length >= 2);
  const { variance, df } = spreadWithin(
    usable.map((fills) => {
      const deliveries = deliveriesOf(fills);
      const center = mean(deliveries);
      return deliveries.map((delivery) => delivery / center);
    }),
    noPrior,
  );
  return variance === null
    ? null
    : { relative: Math.sqrt(variance), df, fills: usable.flat().length };
}

function fillSpread(
  stretches: readonly (readonly Fill[])[],
  center: number,
  level: number,
  borrowed: RelativeSpread | null,
): FillSpread {
  const of = (sd: number, df: number): Estimate<"kg/turn"> => ({
    value: sd,
    unit: "kg/turn",
    standardError: null,
    df,
    interval: standardDeviationInterval(sd, df, level, "fill-to-fill spread"),
  });
  const { variance, df } = spreadWithin(stretches.map(deliveriesOf), noPrior);
  if (variance !== null) {
    const sd = Math.sqrt(variance);
    const fills = stretches.filter((own) => own.length >= 2).flat().length;
    return { source: "own", standardDeviation: of(sd, df), relative: sd / center, df, fills };
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
    catchScatter: { value: Math.sqrt(ofCatches), df: scatter.df },
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
