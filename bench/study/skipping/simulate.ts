import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { lossOf, lossWhenSkipping } from "../../../src/questions/cost/loss.ts";
import { priceRules } from "../../../src/questions/cost/options.ts";
import { chancesOfError } from "../../../src/questions/skipping/distribution.ts";
import { resolve } from "../../../src/results/options.ts";
import { chanceBeyond } from "../../../src/statistics/expected-loss.ts";
import { chanceAnyBeyond } from "../../../src/statistics/repeated-exceedance.ts";
import { type Season, simulatedSeason } from "./season.ts";

/** Seasons of one kind: so many fills of three catches each, the true spread of fills drawn anew for each season. */
export interface SeasonPlan {
  readonly fills: number;
  /** Relative spread of fills, log-uniform between the two; equal ends: always the same. */
  readonly spreadFrom: number;
  readonly spreadTo: number;
  readonly limit: number;
}

/** What was said of the next fill after one season, and what was true. */
export interface SeasonOutcome {
  /** The chance of an error beyond the limit as reckoned, also where so small a one is not stated. */
  readonly stated: number;
  /** The same chance for someone who knows the true mean and spread. */
  readonly happened: number;
}

/** Seasons with one true spread. */
export interface BoundPlan extends Season {
  readonly limit: number;
}

/** The 90 % bound of the chance beside the true chance. */
export interface BoundOutcome {
  readonly bound: number;
  readonly happened: number;
}

/** The 80 % range of the loss, money/ha, beside the loss for someone who knows the true mean and spread. */
export interface RangeOutcome {
  readonly lower: number;
  readonly upper: number;
  readonly happened: number;
}

/** The same for several fills in a row. */
export interface RowOutcome {
  readonly stated: number;
  readonly happened: number;
}

/** Invented: too light costs twice as much as too heavy. */
const prices = resolve(priceRules, {
  response: {
    kind: "linear",
    heavyCostPerHectarePerPercent: 0.9,
    lightCostPerHectarePerPercent: 1.8,
  },
});

/** Simulated seasons, the drive then left at the mean of fills; the true mean delivery is 1. */
export function simulateSeasons(
  plan: SeasonPlan,
  seasons: number,
  seed: number,
): readonly SeasonOutcome[] {
  const stream = randomStream(seed);
  return Array.from({ length: seasons }, () => {
    const { error, known } = leftAtMean(plan, stream);
    const happened = chanceBeyond(known, plan.limit).either;
    return { stated: chanceBeyond(error.law, plan.limit).either, happened };
  });
}

/** How the bound of the chance fares, season by season. */
export function simulateBounds(
  plan: BoundPlan,
  seasons: number,
  seed: number,
): readonly BoundOutcome[] {
  const stream = randomStream(seed);
  return Array.from({ length: seasons }, () => {
    const { error, known } = simulatedSeason(plan, stream);
    const [chance] = chancesOfError(error, [plan.limit]);
    return {
      bound: chance?.upperBound ?? 0,
      happened: chanceBeyond(known, plan.limit).either,
    };
  });
}

/** How the range of the loss fares, season by season. */
export function simulateRanges(
  plan: BoundPlan,
  seasons: number,
  seed: number,
): readonly RangeOutcome[] {
  const stream = randomStream(seed);
  return Array.from({ length: seasons }, () => {
    const { error, known } = simulatedSeason(plan, stream);
    const { lowerPerHectare, upperPerHectare } = lossWhenSkipping(error, prices);
    return {
      lower: lowerPerHectare ?? 0,
      upper: upperPerHectare ?? 0,
      happened: lossOf(known, prices).perHectare ?? 0,
    };
  });
}

/** Simulated seasons, followed by several fills without a catch. */
export function simulateRows(
  plan: SeasonPlan,
  fillsInRow: number,
  seasons: number,
  seed: number,
): readonly RowOutcome[] {
  const stream = randomStream(seed);
  return Array.from({ length: seasons }, () => {
    const { error, known } = leftAtMean(plan, stream);
    const { law } = error;
    const one = chanceBeyond(known, plan.limit).either;
    const own = law.scale / Math.sqrt(1 + 1 / plan.fills);
    const repeated = { ...law, spread: own, sharedVariance: 1 / plan.fills };
    return {
      stated: chanceAnyBeyond(repeated, plan.limit)(fillsInRow),
      happened: 1 - (1 - one) ** fillsInRow,
    };
  });
}

function leftAtMean(plan: SeasonPlan, stream: RandomStream) {
  const spread = drawnSpread(plan, stream);
  return simulatedSeason({ fills: plan.fills, spread, offCentre: "mean of fills" }, stream);
}

/** A spread log-uniform between the two of the plan. */
export function drawnSpread(
  { spreadFrom, spreadTo }: Pick<SeasonPlan, "spreadFrom" | "spreadTo">,
  stream: RandomStream,
): number {
  return spreadFrom * (spreadTo / spreadFrom) ** stream.uniform();
}
