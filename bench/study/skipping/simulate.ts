import { mean, sampleStandardDeviation } from "simple-statistics";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { chancesOfError } from "../../../src/questions/skipping/distribution.ts";
import { chanceBeyond } from "../../../src/statistics/expected-loss.ts";
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
  /** The chance of an error beyond the limit as stated, and its 90 % bound. */
  readonly stated: number;
  readonly bound: number;
  /** The same chance for someone who knows the true mean and spread. */
  readonly happened: number;
}

/** The same for several fills in a row. */
export interface RowOutcome {
  readonly stated: number;
  readonly happened: number;
}

const catchScatter = 0.015;
const catchesPerFill = 3;

/** Simulated seasons, the drive then left at the mean of fills; the true mean delivery is 1. */
export function simulateSeasons(
  plan: SeasonPlan,
  seasons: number,
  seed: number,
): readonly SeasonOutcome[] {
  const stream = randomStream(seed);
  return Array.from({ length: seasons }, () => {
    const { spread, setTo, law } = oneSeason(plan, stream);
    const [chance] = chancesOfError(law, [plan.limit]);
    const happened = chanceBeyond(truth(spread, setTo), plan.limit).either;
    return { stated: chance?.either ?? 0, bound: chance?.upperBound ?? 0, happened };
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
  const scale = (sampleStandardDeviation(deliveries) * Math.sqrt(1 + 1 / fills)) / setTo;
  return { spread, setTo, law: { location: 0, scale, df: fills - 1 } };
}

function truth(spread: number, setTo: number) {
  return { location: 1 / setTo - 1, scale: spread / setTo, df: Number.POSITIVE_INFINITY };
}
