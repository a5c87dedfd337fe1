import { lentSpread } from "../../../src/model/fill-spread.ts";
import { historyOf } from "../../../src/model/history.ts";
import {
  lendersOf,
  type MeterRecord,
  type OutsideVote,
  voteOfOtherMeters,
} from "../../../src/model/lenders.ts";
import type { Meter } from "../../../src/model/meters.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import { type SeasonPlan, seasonOf } from "./season.ts";

/** Other meters, of other seasons, that lend how much their fills differ. */
export interface Library {
  readonly meters: number;
  readonly fills: number;
  /** Standard deviation of the logarithm of the spread between meters. */
  readonly heterogeneity: number;
  /** How many times as much as their middle the meter's own fills differ; null: it is one of them, drawn like them. */
  readonly timesAsWild: number | null;
}

export const twoByNine: Library = { meters: 2, fills: 9, heterogeneity: 0.5, timesAsWild: null };

/** A meter to be judged: its spread, and what others say of it. */
export interface Lent {
  readonly spread: number;
  readonly outside: OutsideVote | null;
}

/**
 * The library is never centred on the meter's own spread: that spread is drawn from the middle of the meters as theirs are,
 * or, where it is fixed, the middle is drawn from it.
 *
 * @param own  whether the meter's spread is drawn, about the plan's; otherwise it is the plan's
 */
export function lentBy(
  library: Library | null,
  plan: SeasonPlan,
  own: "drawn" | "fixed",
  random: RandomStream,
): Lent {
  const heterogeneity = library?.heterogeneity ?? twoByNine.heterogeneity;
  const factor = library?.timesAsWild ?? Math.exp(heterogeneity * random.normal());
  const spread = own === "drawn" ? plan.spread * factor : plan.spread;
  if (library === null) return { spread, outside: null };
  const records = Array.from({ length: library.meters }, () =>
    recordOf(
      seasonOf(
        {
          ...plan,
          fills: library.fills,
          spread: (spread / factor) * Math.exp(heterogeneity * random.normal()),
          shift: 0,
          perFill: 0,
        },
        random,
      ).meter,
    ),
  );
  return { spread, outside: voteOfOtherMeters(lendersOf(records, "spread"), nothing, "spread") };
}

const nothing: MeterRecord = { product: "wheat", spread: null, scatter: null };
const level = 0.95;

/** What a meter lends: its spread within the levels that its own fills show. */
export function recordOf(meter: Meter): MeterRecord {
  const stretches = historyOf(meter, level).stretches.map(({ fills }) => fills);
  return { ...nothing, spread: lentSpread(stretches, null) };
}
