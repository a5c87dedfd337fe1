import { sum } from "simple-statistics";
import type { Estimate } from "../results/estimate.ts";
import { noPrior } from "../statistics/spread-prior.ts";
import {
  type AgainstVote,
  type EstimatedVariance,
  priorOfVote,
  unlikeVote,
} from "../statistics/spread-votes.ts";
import { spreadWithin } from "../statistics/spread-within.ts";
import { mean } from "../statistics/summary.ts";
import { type PooledScatter, standardDeviationInterval } from "./catch-scatter.ts";
import { divisionsOf } from "./fill-sums.ts";
import type { MeterRecord, OutsideVote } from "./lenders.ts";
import { seenVariance, unlikeLimit } from "./lent-scatter.ts";
import { deliveriesOf, type Fill } from "./meters.ts";
import { readingVariance } from "./reading.ts";

/** How much fills of one meter of one level differ. */
export interface FillSpread {
  /** "own": from this meter's fills alone; "lent": other meters, or an assumption, speak too; "none": unknown. */
  readonly source: "own" | "lent" | "none";
  /** Standard deviation of the fills' deliveries, catch scatter included; interval about "fill-to-fill spread". */
  readonly standardDeviation: Estimate<"kg/turn"> | null;
  /** The same relative to the mean delivery. */
  readonly relative: number | null;
  /** ν0 + Σ(k − 1) over the stretches of one level, ν0 being lent. */
  readonly df: number;
  /** Σ(k − 1): this meter's own part of them. */
  readonly ownDf: number;
  /** Own fills behind it. */
  readonly fills: number;
  /** Who lends; null: nobody. */
  readonly lentBy: Pick<OutsideVote, "from" | "meters" | "library" | "sameProduct"> | null;
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

/** Divisions of all catches over their turns, kg/turn; an unknown one counts as none. */
export function readingPerTurn(
  { catches, totals, sums }: Pick<Fill, "catches" | "totals" | "sums">,
  divisionKg: number | null,
): number {
  if (sums !== undefined) return (divisionsOf(sums, divisionKg ?? 0) ?? 0) / totals.turns;
  return sum(catches.map((row) => row.divisionKg ?? divisionKg ?? 0)) / totals.turns;
}

/**
 * What a meter's fills can tell other meters of the spread, relative to the level: within stretches of one level, so that what
 * moves a meter is not lent as spread.
 *
 * @returns null when no stretch has two fills, or fills agree exactly and no division says how well they could differ
 */
export function lentSpread(
  stretches: readonly (readonly Fill[])[],
  divisionKg: number | null,
): EstimatedVariance | null {
  const usable = stretches.filter((fills) => fills.length >= 2);
  const { variance, df } = spreadWithin(
    usable.map((fills) => {
      const deliveries = deliveriesOf(fills);
      const center = mean(deliveries);
      return deliveries.map((delivery) => delivery / center);
    }),
    noPrior,
  );
  const readings = usable
    .flat()
    .map((fill) => readingVariance(readingPerTurn(fill, divisionKg) / fill.delivery));
  return seenVariance(variance, df, readings.length === 0 ? null : mean(readings));
}

/**
 * Spread of fills within stretches of one level, together with what others say of it.
 *
 * @param center   level to which others' relative spread is scaled, kg/turn
 * @param outside  null: this meter alone
 */
export function fillSpread(
  stretches: readonly (readonly Fill[])[],
  center: number,
  level: number,
  outside: OutsideVote | null,
): FillSpread {
  const { nu0, s0Squared } = outside === null ? noPrior : priorOfVote(outside);
  const deliveries = stretches.map(deliveriesOf);
  const ownDf = spreadWithin(deliveries, noPrior).df;
  const { variance, df } = spreadWithin(deliveries, { nu0, s0Squared: s0Squared * center ** 2 });
  const source = outside !== null ? "lent" : ownDf > 0 ? "own" : "none";
  const fills = stretches.filter((own) => own.length >= 2).flat().length;
  const lentBy = outside === null ? null : lenderOf(outside);
  if (variance === null)
    return { source, df, ownDf, fills, lentBy, standardDeviation: null, relative: null };
  const sd = Math.sqrt(variance);
  return {
    source,
    df,
    ownDf,
    fills,
    lentBy,
    relative: sd / center,
    standardDeviation: {
      value: sd,
      unit: "kg/turn",
      standardError: null,
      df,
      interval: standardDeviationInterval(sd, df, level, "fill-to-fill spread"),
    },
  };
}

function lenderOf({ center, variance, ...lender }: OutsideVote): FillSpread["lentBy"] {
  return lender;
}

/** @param sd  spread of the fills, kg/turn; null is returned without any catch scatter to take out of it */
export function betweenComponent(
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

/** Whether a meter's fills differ unlike those of the other meters; null: they do not, or nobody else tells. */
export function spreadAgainstOthers(
  { spread }: MeterRecord,
  outside: OutsideVote | null,
): AgainstVote | null {
  return spread === null || outside?.from !== "other bins"
    ? null
    : unlikeVote(spread, outside, unlikeLimit);
}
