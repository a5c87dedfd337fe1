import { at } from "../../../src/errors/at.ts";
import { outsideVotes, usualBorrowing } from "../../../src/model/lenders.ts";
import type { Meter } from "../../../src/model/meters.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { firstAlarm, historyWith, isAlarm, share } from "./judge.ts";
import { recordOf } from "./library.ts";
import { fillErrors, fillsBefore, type SeasonPlan, seasonOf, usualSeason } from "./season.ts";

/** Bins of one log that all do the same and lend each other how much their fills differ. */
export interface TogetherPlan extends Partial<SeasonPlan> {
  readonly bins: number;
  /** Correlation between the bins' fills of one time: one lot, one weather. */
  readonly shared: number;
}

export interface TogetherCell extends TogetherPlan {
  readonly logs: number;
  /** Share of meters of which something was found by the last fill, and within three fills of the change. */
  readonly found: number;
  readonly withinThree: number;
  /** Share of meters of which something was found with a fill on the day it came. */
  readonly onTheDay: number;
  /** Share of logs in which something was found of any meter. */
  readonly anyOfLog: number;
}

/**
 * Asked after every fill of all bins, of the log as it then stood: what the others lend grows with it, so that this is what a
 * person would have read on the day. What is found of an earlier fill, once the others lend better, counts from that day on.
 */
export function togetherTable(
  plans: readonly TogetherPlan[],
  logs: number,
  seed: number,
): readonly TogetherCell[] {
  return plans.map((plan, i) => {
    const random = randomStream(seed + i);
    const whole = { ...usualSeason, fills: 12, ...plan };
    const perLog = Array.from({ length: logs }, () => whatWasRead(whole, random));
    const truth = fillsBefore(whole) + 1;
    const perMeter = perLog.flat();
    return {
      ...plan,
      logs,
      found: share(perMeter.map(({ first }) => first !== null)),
      withinThree: share(perMeter.map(({ first }) => first !== null && first <= truth + 2)),
      onTheDay: share(perMeter.map(({ onTheDay }) => onTheDay)),
      anyOfLog: share(perLog.map((meters) => meters.some(({ first }) => first !== null))),
    };
  });
}

/** Of one meter. */
interface Read {
  /** Fills of the log when something of it was first found; null: nothing was. */
  first: number | null;
  onTheDay: boolean;
}

function whatWasRead(plan: SeasonPlan & TogetherPlan, random: RandomStream): readonly Read[] {
  const meters = binsOf(plan, random);
  const read = meters.map((): Read => ({ first: null, onTheDay: false }));
  for (let fills = 1; fills <= plan.fills; fills++) {
    const cut = meters.map((meter) => ({ ...meter, fills: meter.fills.slice(0, fills) }));
    const votes = outsideVotes(cut.map(recordOf), "spread", usualBorrowing);
    cut.forEach((meter, i) => {
      const history = historyWith(meter, at(votes, i));
      const one = at(read, i);
      if (firstAlarm(history) !== null) one.first ??= fills;
      if (isAlarm(at(history.steps, fills - 1))) one.onTheDay = true;
    });
  }
  return read;
}

function binsOf(plan: SeasonPlan & TogetherPlan, random: RandomStream): readonly Meter[] {
  const common = fillErrors(plan, random);
  const shared = Array.from({ length: plan.fills + 1 }, common);
  return Array.from({ length: plan.bins }, () => {
    const own = fillErrors(plan, random);
    const inTurn = shared.values();
    const next = () =>
      Math.sqrt(plan.shared) * (inTurn.next().value ?? 0) + Math.sqrt(1 - plan.shared) * own();
    return seasonOf(plan, random, next).meter;
  });
}
