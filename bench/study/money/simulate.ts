import { at } from "../../../src/errors/at.ts";
import type { FillPrices } from "../../../src/model/fill-prices.ts";
import { halfWidthNow } from "../../../src/model/known-width.ts";
import { normalLowerTail } from "../../../src/numeric/distributions/normal.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import type { Lent } from "./lent.ts";
import { alwaysThree, costOf, knowing, money, type Rule, withinTolerance } from "./rules.ts";
import { drawSeason, type Season } from "./season.ts";

export const rules: readonly Rule[] = [money, withinTolerance, alwaysThree];

/** A fill to be drilled: how large, and what a percent of rate error costs a hectare, either way. */
export interface Job {
  readonly hectares: number;
  readonly perPercent: number;
}

export interface JobOutcome extends Job {
  readonly rule: string;
  /** Mean cost over that of somebody who knows the scatter, less 1. */
  readonly above: number;
  readonly meanCost: number;
  readonly meanCatches: number;
  /** Share of fills left uncaught. */
  readonly skipped: number;
  /** Share of caught fills whose 95 % half-width, as it stood when the catches ended, held the truth; null: none caught. */
  readonly coverage: number | null;
}

/** A catch for 4 and setting up for 8, in any currency. */
export function pricesOf({ hectares, perPercent }: Job): FillPrices {
  return {
    currency: null,
    response: {
      kind: "linear",
      heavyCostPerHectarePerPercent: perPercent,
      lightCostPerHectarePerPercent: perPercent,
    },
    hectares,
    perCatch: 4,
    toSetUp: 8,
  };
}

/**
 * What every rule costs on every job after so many earlier fills, on the same meters and catches. Given the scatter the mean
 * of catches does not depend on where they end, so costs and coverage are expected ones by the true standard deviations,
 * without the noise of a drawn error.
 */
export function simulateMoney(
  fills: number,
  lent: Lent,
  jobs: readonly Job[],
  replicates: number,
  seed: number,
): readonly JobOutcome[] {
  const stream = randomStream(seed);
  const seasons = Array.from({ length: replicates }, () => drawSeason(fills, lent, stream));
  return jobs.flatMap((job) => {
    const prices = pricesOf(job);
    const least = costOfRule(seasons, knowing, prices);
    return rules.map((rule) => {
      const counts = seasons.map((season) => rule.catches(season, prices));
      const meanCost = mean(counts.map((count, i) => costOf(at(seasons, i), count, prices)));
      const caught = counts.flatMap((count, i) =>
        count === 0 ? [] : coverageOf(at(seasons, i), count),
      );
      return {
        ...job,
        rule: rule.name,
        above: meanCost / least - 1,
        meanCost,
        meanCatches: mean(counts),
        skipped: mean(counts.map((count) => (count === 0 ? 1 : 0))),
        coverage: caught.length === 0 ? null : mean(caught),
      };
    });
  });
}

function costOfRule(seasons: readonly Season[], rule: Rule, prices: FillPrices): number {
  return mean(seasons.map((season) => costOf(season, rule.catches(season, prices), prices)));
}

function coverageOf({ states, catchError }: Season, catches: number): number | [] {
  const halfWidth = halfWidthNow(at(states, catches), { level: 0.95, phi: 1 });
  if (halfWidth === null) return [];
  return 2 * normalLowerTail((halfWidth * Math.sqrt(catches)) / catchError) - 1;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
