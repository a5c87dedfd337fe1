import { mean } from "../../../src/statistics/summary.ts";
import { type Bands, coverage, medianHalfWidth } from "../lending/outcomes.ts";
import { bins, type Change } from "./logs.ts";
import { job, type MorningOutcome } from "./mornings.ts";
import { looks, type SeasonOutcome } from "./seasons.ts";

export const changes: readonly { readonly name: string; readonly change: Change | null }[] = [
  { name: "steady", change: null },
  { name: "5 % more from fill 7 on", change: { by: 0.05, fromFill: 7 } },
  { name: "8 % more from fill 4 on", change: { by: 0.08, fromFill: 4 } },
];

/** A band over seasons; null: there was none in most of them. */
export interface BandKept {
  readonly fills: number;
  readonly known: number;
  readonly coverage: number | null;
  readonly medianHalfWidth: number | null;
}

export interface SeasonsOf {
  readonly library: string;
  readonly name: string;
  /** Share of seasons in which the meter was not let be: in a steady one at any fill, else from the change on. */
  readonly alarmed: number;
  readonly today: readonly BandKept[];
  readonly nextFill: readonly BandKept[];
}

export interface MorningsOf {
  readonly library: string;
  readonly rule: string;
  readonly earlierFills: number;
  readonly meanCatches: number;
  readonly coverage: number;
  readonly meanError: number;
  readonly meanCost: number;
}

export interface Study {
  readonly replicates: number;
  readonly seed: number;
  readonly seasons: readonly SeasonsOf[];
  readonly mornings: readonly MorningsOf[];
}

export function ofSeasons(
  library: string,
  name: string,
  change: Change | null,
  found: readonly SeasonOutcome[],
): SeasonsOf {
  const from = change?.fromFill ?? 1;
  return {
    library,
    name,
    alarmed: share(found, ({ alarms }) => alarms.some((fill) => fill >= from)),
    today: bandsKept(found.map(({ today }) => today)),
    nextFill: bandsKept(found.map(({ nextFill }) => nextFill)),
  };
}

function bandsKept(found: readonly Bands[]): readonly BandKept[] {
  if (found.every((one) => one.length === 0)) return [];
  return looks.map((fills, i) => {
    const bands = found.map((one) => one[i] ?? null);
    const known = share(bands, (band) => band !== null);
    const few = known < 0.5;
    return {
      fills,
      known,
      coverage: few ? null : coverage(bands),
      medianHalfWidth: few ? null : medianHalfWidth(bands),
    };
  });
}

export function ofMornings(
  library: string,
  rule: string,
  earlierFills: number,
  found: readonly MorningOutcome[],
): MorningsOf {
  const meanOf = (of: (one: MorningOutcome) => number) => mean(found.map(of));
  return {
    library,
    rule,
    earlierFills,
    meanCatches: meanOf(({ catches }) => catches),
    coverage: share(found, ({ held }) => held),
    meanError: meanOf(({ error }) => error),
    meanCost: meanOf(({ cost }) => cost),
  };
}

function share<T>(found: readonly T[], holds: (one: T) => boolean): number {
  return found.filter(holds).length / found.length;
}

export const setupWithPrices = {
  name: "setup.json",
  text: JSON.stringify({
    money: {
      area_per_fill_ha: job.hectares,
      cost_per_catch: job.perCatch,
      cost_to_set_up: job.toSetUp,
    },
    bins: bins.map((bin) => ({
      bin,
      product: "wheat",
      money: {
        response: {
          kind: "linear",
          heavy_cost_per_ha_per_percent: job.perPercent,
          light_cost_per_ha_per_percent: job.perPercent,
        },
      },
    })),
  }),
};
