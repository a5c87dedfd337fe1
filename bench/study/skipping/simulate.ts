import { mean, sampleStandardDeviation } from "simple-statistics";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { lossOf } from "../../../src/questions/cost/loss.ts";
import { priceRules } from "../../../src/questions/cost/options.ts";
import { chancesOfError } from "../../../src/questions/skipping/distribution.ts";
import { resolve } from "../../../src/results/options.ts";
import { chanceBeyond } from "../../../src/statistics/expected-loss.ts";
import type { NormalSample } from "../../../src/statistics/normal-sample.ts";
import { chanceAnyBeyond } from "../../../src/statistics/repeated-exceedance.ts";

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
  /** The chance of an error beyond the limit as stated. */
  readonly stated: number;
  /** The same chance for someone who knows the true mean and spread. */
  readonly happened: number;
}

/** Seasons with one true spread; the drive left at the mean of fills, or at a figure that the fills miss by so much. */
export interface BoundPlan {
  readonly fills: number;
  readonly spread: number;
  readonly offCentre: number | "mean of fills";
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

const catchScatter = 0.015;
const catchesPerFill = 3;
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
    const { spread, setTo, law } = oneSeason(plan, stream);
    const happened = chanceBeyond(truth(spread, setTo), plan.limit).either;
    return { stated: chanceBeyond(law, plan.limit).either, happened };
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
    const { law, sample, known } = oneSetting(plan, stream);
    const [chance] = chancesOfError(law, sample, [plan.limit]);
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
    const { law, sample, known } = oneSetting(plan, stream);
    const { lowerPerHectare, upperPerHectare } = lossOf(law, prices, sample);
    return {
      lower: lowerPerHectare ?? 0,
      upper: upperPerHectare ?? 0,
      happened: lossOf(known, prices).perHectare ?? 0,
    };
  });
}

function oneSetting({ fills, spread, offCentre }: BoundPlan, stream: RandomStream) {
  const season = oneSeason({ fills, spreadFrom: spread, spreadTo: spread, limit: 0 }, stream);
  const setTo = offCentre === "mean of fills" ? season.setTo : 1 / (1 + offCentre);
  const sample: NormalSample = {
    mean: season.setTo / setTo - 1,
    standardDeviation: season.deviation / setTo,
    n: fills,
    df: fills - 1,
  };
  const law = {
    location: sample.mean,
    scale: sample.standardDeviation * Math.sqrt(1 + 1 / fills),
    df: sample.df,
  };
  return { law, sample, known: truth(spread, setTo) };
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
    const { spread, setTo, law } = oneSeason(plan, stream);
    const one = chanceBeyond(truth(spread, setTo), plan.limit).either;
    const own = law.scale / Math.sqrt(1 + 1 / plan.fills);
    const repeated = { ...law, spread: own, sharedVariance: 1 / plan.fills };
    return {
      stated: chanceAnyBeyond(repeated, plan.limit)(fillsInRow),
      happened: 1 - (1 - one) ** fillsInRow,
    };
  });
}

function oneSeason({ fills, spreadFrom, spreadTo }: SeasonPlan, stream: RandomStream) {
  const spread = spreadFrom * (spreadTo / spreadFrom) ** stream.uniform();
  const ofCatches = catchScatter / Math.sqrt(catchesPerFill);
  const deliveries = Array.from(
    { length: fills },
    () => 1 + spread * stream.normal() + ofCatches * stream.normal(),
  );
  const setTo = mean(deliveries);
  const deviation = sampleStandardDeviation(deliveries);
  const scale = (deviation * Math.sqrt(1 + 1 / fills)) / setTo;
  return { spread, setTo, deviation, law: { location: 0, scale, df: fills - 1 } };
}

function truth(spread: number, setTo: number) {
  return { location: 1 / setTo - 1, scale: spread / setTo, df: Number.POSITIVE_INFINITY };
}
