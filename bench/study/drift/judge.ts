import { type FillsTogether, fillsTogether } from "../../../src/model/across-fills.ts";
import { type HistoryChoices, historyOf, type MeterHistory } from "../../../src/model/history.ts";
import type { OutsideVote } from "../../../src/model/lenders.ts";
import { nothingLent } from "../../../src/model/lent-scatter.ts";
import type { Meter } from "../../../src/model/meters.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { noPrior } from "../../../src/statistics/spread-prior.ts";
import { priorOfVote } from "../../../src/statistics/spread-votes.ts";
import { type Lent, type Library, lentBy } from "./library.ts";
import { type Season, type SeasonPlan, seasonOf, usualSeason } from "./season.ts";

const level = 0.95;

/** A season that is asked, and who lends. */
export interface AskedPlan extends Partial<SeasonPlan> {
  /** Null or missing: the meter speaks by itself. */
  readonly library?: Library | null;
  /** Whether the meter's spread is drawn about the plan's, as those of the library are; default it is the plan's. */
  readonly own?: "drawn" | "fixed";
}

export interface AskedSeason extends Season, Lent {
  readonly plan: SeasonPlan;
}

/** Every season of a plan, reduced to what is counted. */
export function over<T>(
  { library = null, own = "fixed", ...given }: AskedPlan,
  seasons: number,
  seed: number,
  count: (season: AskedSeason) => T,
): readonly T[] {
  const random = randomStream(seed);
  const plan = { ...usualSeason, fills: 12, ...given };
  return Array.from({ length: seasons }, () => count(asked(plan, library, own, random)));
}

function asked(
  plan: SeasonPlan,
  library: Library | null,
  own: "drawn" | "fixed",
  random: RandomStream,
): AskedSeason {
  const lent = lentBy(library, plan, own, random);
  const withSpread = { ...plan, spread: lent.spread };
  return { ...lent, plan: withSpread, ...seasonOf(withSpread, random) };
}

/** What the model finds in fills whose catches are all as they should be: then nothing is set aside beforehand. */
export function historyWith(
  meter: Meter,
  outside: OutsideVote | null,
  choices: HistoryChoices = {},
): MeterHistory {
  const prior = outside === null ? noPrior : priorOfVote(outside);
  return historyOf(meter, level, { ...choices, prior });
}

/** What the model says of the fills together. */
export function togetherBy(
  { stretches }: Pick<MeterHistory, "stretches">,
  outside: OutsideVote | null,
): FillsTogether {
  return fillsTogether(
    stretches.map(({ fills }) => fills),
    { level, scatter: nothingLent, outside, divisionKg: null, inTimeOrder: true },
  );
}

const alarming = ["differs", "moved", "trending"];

/** Whether something is found with a fill. */
export function isAlarm({ outcome }: MeterHistory["steps"][number]): boolean {
  return alarming.includes(outcome);
}

/** Place of the first fill with which something was found, from 1; null: nothing was. */
export function firstAlarm({ steps }: Pick<MeterHistory, "steps">): number | null {
  const place = steps.findIndex(isAlarm);
  return place === -1 ? null : place + 1;
}

export function share(list: readonly boolean[]): number {
  return list.filter((one) => one).length / Math.max(1, list.length);
}

export function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}
