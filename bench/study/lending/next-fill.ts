import { at } from "../../../src/errors/at.ts";
import { type FillsTogether, fillsTogether } from "../../../src/model/across-fills.ts";
import { pooledScatter } from "../../../src/model/catch-scatter.ts";
import { lentSpread } from "../../../src/model/fill-spread.ts";
import {
  type MeterRecord,
  type OutsideVote,
  outsideVotes,
  usualBorrowing,
} from "../../../src/model/lenders.ts";
import type { Meter } from "../../../src/model/meters.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import {
  after,
  type CatchPlan,
  type Departure,
  departureOf,
  type FarOff,
  meterOf,
  ofOneMeter,
  usualCatches,
  usualDelivery,
} from "./meters.ts";
import { bandOf, level, type Outcome } from "./outcomes.ts";

/** A meter and others that lend it how much fills differ. */
export interface NextFillPlan {
  readonly others: number;
  /** Fills of each of them; "as many": as the meter itself has at the time. */
  readonly fillsOfOthers: number | "as many";
  /** Typical spread of fills, relative. */
  readonly spread: number;
  /** Standard deviation of its logarithm between meters, as it truly is. */
  readonly heterogeneity: number;
  /** The meter's own spread is so many times the typical one; null: it differs from that as those of the others do. */
  readonly times: number | null;
  /** How fills depart from the level. */
  readonly departure: Departure;
  /** Correlation of neighbouring fills of one meter. */
  readonly correlation: number;
  /** Correlation of fills of one number between meters. */
  readonly shared: number;
  readonly catches: CatchPlan["catches"];
  readonly catchesOfOthers: CatchPlan["catches"];
  /** Level of every meter, kg/turn. */
  readonly delivery: number;
  /** Of the scale, kg, one bag being used for all catches of a meter; null: read to the last digit. */
  readonly divisionKg: number | null;
}

export const usualNextFill: NextFillPlan = {
  others: 2,
  fillsOfOthers: 9,
  spread: 0.03,
  heterogeneity: 0.5,
  times: null,
  departure: "normal",
  correlation: 0,
  shared: 0,
  catches: 3,
  catchesOfOthers: 3,
  delivery: usualDelivery,
  divisionKg: null,
};

const farFills: FarOff = { share: 0.1, by: 4 };

/** A meter with its others, and what its fills and the one still to come truly deliver. */
export interface NextFillLog {
  /** Relative spread of the meter's fills. */
  readonly spread: number;
  /** One more than there are fills. */
  readonly deliveries: readonly number[];
  readonly own: Meter;
  readonly others: readonly Meter[];
}

/** @param fills  of the meter itself */
export function nextFillLog(plan: NextFillPlan, fills: number, random: RandomStream): NextFillLog {
  const fillsOfOthers = plan.fillsOfOthers === "as many" ? fills : plan.fillsOfOthers;
  const most = Math.max(fills + 1, fillsOfOthers);
  const common = departures(plan, most, random);
  const deliver = (spread: number) =>
    departures(plan, most, random).map((departure, i) => {
      const both = Math.sqrt(plan.shared) * at(common, i) + Math.sqrt(1 - plan.shared) * departure;
      return plan.delivery * (1 + spread * both);
    });
  const caught = (bin: number, deliveries: readonly number[], catches: CatchPlan["catches"]) => {
    const catchPlan = { ...usualCatches, catches, divisionKg: plan.divisionKg, oneBag: true };
    return meterOf(`${bin}`, deliveries, plan.delivery, catchPlan, random);
  };
  const spreadOfOne = () => ofOneMeter(plan.spread, plan.heterogeneity, random);
  const spread = plan.times === null ? spreadOfOne() : plan.times * plan.spread;
  const deliveries = deliver(spread).slice(0, fills + 1);
  return {
    spread,
    deliveries,
    own: caught(1, deliveries.slice(0, fills), plan.catches),
    others: Array.from({ length: plan.others }, (_, i) =>
      caught(i + 2, deliver(spreadOfOne()).slice(0, fillsOfOthers), plan.catchesOfOthers),
    ),
  };
}

function departures(
  { departure, correlation }: Pick<NextFillPlan, "departure" | "correlation">,
  count: number,
  random: RandomStream,
): readonly number[] {
  const fresh = () => departureOf(departure, farFills, random);
  let now = fresh();
  return Array.from({ length: count }, () => {
    const given = now;
    now = correlation * now + Math.sqrt(1 - correlation ** 2) * fresh();
    return given;
  });
}

/** Bands for the next fill after each of so many fills, of the same meter and its others. */
export function nextFillOutcomes(
  given: Partial<NextFillPlan>,
  counts: readonly number[],
  replicates: number,
  random: RandomStream,
): readonly (readonly Outcome[])[] {
  const plan = { ...usualNextFill, ...given };
  const logs = Array.from({ length: replicates }, () => {
    const log = nextFillLog(plan, Math.max(...counts), random);
    return counts.map((fills) => {
      const others = log.others.map((other) =>
        plan.fillsOfOthers === "as many" ? after(fills, other) : other,
      );
      return outcomeOf({ ...log, own: after(fills, log.own), others }, plan.divisionKg);
    });
  });
  return counts.map((_, i) => logs.map((outcomes) => at(outcomes, i)));
}

/** The bands that such a log ends with where nothing in it is set aside or called a change. */
export function outcomeOf(log: NextFillLog, divisionKg: number | null): Outcome {
  const truth = at(log.deliveries, log.own.fills.length);
  const outside = spreadVoteOf(log, divisionKg);
  return {
    trueSpread: log.spread,
    lent: bandOf(togetherWith(log.own, outside, divisionKg).nextFill, truth),
    alone: bandOf(togetherWith(log.own, null, divisionKg).nextFill, truth),
  };
}

/** What the other meters say of the spread of this one's fills. */
export function spreadVoteOf(
  { own, others }: Pick<NextFillLog, "own" | "others">,
  divisionKg: number | null,
): OutsideVote | null {
  const recordOf = ({ product, fills }: Meter): MeterRecord => ({
    product,
    spread: lentSpread([fills], divisionKg),
    scatter: null,
  });
  return at(outsideVotes([own, ...others].map(recordOf), "spread", usualBorrowing), 0);
}

export function togetherWith(
  { fills }: Meter,
  outside: OutsideVote | null,
  divisionKg: number | null,
): FillsTogether {
  const scatter = pooledScatter(fills);
  return fillsTogether([fills], { level, scatter, outside, divisionKg, inTimeOrder: true });
}
