import { sum } from "simple-statistics";
import { isDust } from "../numeric/rounding-dust.ts";
import { defaults } from "../results/defaults.ts";
import type { Estimate } from "../results/estimate.ts";
import type { FillName } from "../results/fill-name.ts";
import { fitRandomEffects, type RandomEffectsFit } from "../statistics/random-effects.ts";
import { mean } from "../statistics/summary.ts";
import type { PooledScatter } from "./catch-scatter.ts";
import {
  type BetweenComponent,
  betweenComponent,
  type FillSpread,
  fillSpread,
  readingPerTurn,
} from "./fill-spread.ts";
import { halfWidthOf } from "./known-width.ts";
import { type OutsideVote, voteOfAssumption } from "./lenders.ts";
import { deliveriesOf, type Fill } from "./meters.ts";
import { readingVariance } from "./reading.ts";
import { intervalAround, relativeHalfWidth, tEstimate, unknownEstimate } from "./t-estimate.ts";

/** A value with the interval that another spread gives it. */
export interface OtherBand {
  readonly nextFill: Estimate<"kg/turn">;
  /** Half-width relative to the value. */
  readonly halfWidth: number | null;
}

/** What a meter's fills say together about the mean over fills and about the next fill. */
export interface FillsTogether {
  /** Fills of the level in force, on which mean and next fill rest; earlier levels speak for the spread only. */
  readonly fills: number;
  /** Their catches. */
  readonly catches: number;
  /** First of them, where fills before it are of another level; null: no earlier level. */
  readonly sinceFill: FillName | null;
  /**
   * Mean of one estimate a fill; interval about "mean over fills", wide enough for neighbouring fills that are alike up to a
   * correlation of 0.5.
   */
  readonly mean: Estimate<"kg/turn">;
  /** The same value with the interval it would have if fills were independent. */
  readonly meanIfIndependent: Estimate<"kg/turn">;
  /** The same value with the interval that a new fill's true delivery is expected in; about "next fill". */
  readonly nextFill: Estimate<"kg/turn">;
  /** The next fill with nobody but this meter speaking for its spread; null: nobody else does. */
  readonly byItself: OtherBand | null;
  /** The next fill with a typical spread taken for granted, where two or three fills speak alone; decides nothing. */
  readonly ifTypical: OtherBand | null;
  readonly spread: FillSpread;
  readonly between: BetweenComponent | null;
  /** t interval that takes every catch as an observation of its own. For a caution only: it covers 57–87 %. */
  readonly ignoringFills: Estimate<"kg/turn"> | null;
}

/** What the mean and the spread of fills are made from, beside the fills. */
export interface AcrossGround {
  readonly level: number;
  readonly scatter: PooledScatter;
  /** What others say of the spread; null: nobody does. */
  readonly outside: OutsideVote | null;
  /** Of the scale for catches that name none, kg; null: unknown. */
  readonly divisionKg: number | null;
  /** False where fills were caught in an order drawn by lot, as in a trial with blocks. */
  readonly inTimeOrder: boolean;
}

/**
 * The mean over fills in order of time is widened so many times: the factor that makes a correlation of 0.5 between
 * neighbouring fills exact, whatever their number from 3 to 12. By simulation; reports/lending-study.md
 */
const widenedForLikeness = 1.86;
/** From so many fills a meter by itself says as much as an assumption would. */
const mostToAssume = 3;

/**
 * Two-stage analysis of fills: one estimate a fill. Level from the k fills of the stretch in force; spread within all
 * stretches together with what other meters lend, s² = (ν0·s0² + Σ SS)/ν on ν = ν0 + Σ(k − 1) degrees of freedom. Next fill
 * ± t(ν)·s·√(1 + 1/k). Mean: H² = (1.86·t(ν)·s/√k)² + (z·reading)²; reading the scale is not averaged over fills of one
 * turn level, which round alike. Only the spread is lent, never the level.
 *
 * @param stretches fills of one level after another, the last one in force; one stretch where nothing changed
 * @returns         estimates in kg/turn; standardError and interval null for a lone fill with nobody to lend. One fill says
 *                  nothing of the error of a mean over fills
 * Source           Hahn & Meeker, Statistical Intervals, ch. 4; Smyth 2004 (moderated variance); coverage in
 *                  reports/coverage.md, with what others lend in reports/lending-study.md, after changes of level in
 *                  reports/drift-study.md
 */
export function fillsTogether(
  stretches: readonly (readonly Fill[])[],
  ground: AcrossGround,
): FillsTogether {
  const inForce = stretches.at(-1) ?? [];
  const center = mean(deliveriesOf(inForce));
  const { level, scatter, outside } = ground;
  const spread = fillSpread(stretches, center, level, outside);
  const k = inForce.length;
  const nextWith = (one: FillSpread) =>
    tEstimate(center, "kg/turn", times(one, Math.sqrt(1 + 1 / k)), one.df, level, "next fill");
  const band = (vote: OutsideVote | null): OtherBand => {
    const nextFill = nextWith(fillSpread(stretches, center, level, vote));
    return { nextFill, halfWidth: relativeHalfWidth(nextFill) };
  };
  const over = meanOverFills(inForce, center, spread, ground);
  const assumes = spread.source === "own" && k <= mostToAssume;
  return {
    fills: k,
    catches: sum(inForce.map(({ totals }) => totals.catches)),
    sinceFill: stretches.length > 1 ? (inForce[0]?.fill ?? null) : null,
    mean: over.mean,
    meanIfIndependent: over.meanIfIndependent,
    nextFill: nextWith(spread),
    byItself: outside === null ? null : band(null),
    ifTypical: assumes ? band(typicalSpreadVote) : null,
    spread,
    between:
      spread.ownDf > 0 && spread.standardDeviation !== null
        ? betweenComponent(stretches.flat(), spread.standardDeviation.value, scatter)
        : null,
    ignoringFills: ignoringFills(inForce, level),
  };
}

const typicalSpreadVote = voteOfAssumption(defaults.assumedSpread ** 2);

function times({ standardDeviation }: FillSpread, factor: number): number | null {
  return standardDeviation === null ? null : standardDeviation.value * factor;
}

/** Of a lone fill nothing is said. */
function meanOverFills(
  fills: readonly Fill[],
  center: number,
  spread: FillSpread,
  { level, divisionKg, inTimeOrder }: AcrossGround,
): Pick<FillsTogether, "mean" | "meanIfIndependent"> {
  const error = fills.length < 2 ? null : times(spread, 1 / Math.sqrt(fills.length));
  const unknown = unknownEstimate(center, "kg/turn");
  if (error === null || isDust(error, center)) return { mean: unknown, meanIfIndependent: unknown };
  const reading = readingVariance(mean(fills.map((fill) => readingPerTurn(fill, divisionKg))));
  const about = "mean over fills";
  const withFactor = (factor: number): Estimate<"kg/turn"> => {
    const variance = { scatter: (factor * error) ** 2, reading };
    const half = halfWidthOf(variance, { nu: spread.df, own: false }, { level, phi: 1 });
    return {
      value: center,
      unit: "kg/turn",
      standardError: Math.sqrt(variance.scatter + reading),
      df: spread.df,
      interval: intervalAround(center, half, level, about),
    };
  };
  return {
    mean: withFactor(inTimeOrder ? widenedForLikeness : 1),
    meanIfIndependent: withFactor(1),
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
