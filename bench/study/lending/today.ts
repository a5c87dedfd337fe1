import { at, lastOf } from "../../../src/errors/at.ts";
import { estimateFill } from "../../../src/model/fill-estimate.ts";
import { usualBorrowing } from "../../../src/model/lenders.ts";
import { byItself, type MeterScatter } from "../../../src/model/lent-scatter.ts";
import type { Meter } from "../../../src/model/meters.ts";
import { scattersOf } from "../../../src/model/screening/lending.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import {
  type CatchPlan,
  fillOf,
  meterOf,
  ofOneMeter,
  usualCatches,
  usualDelivery,
} from "./meters.ts";
import { bandOf, level, type Outcome } from "./outcomes.ts";

/** Today's fill of a meter, its earlier ones, and other meters that lend it how much catches scatter. */
export interface TodayPlan extends Omit<CatchPlan, "catches"> {
  readonly others: number;
  /** Fills of each of them. */
  readonly fillsOfOthers: number;
  /** Earlier fills of the meter itself. */
  readonly earlier: number;
  /** Spread of fills, relative. */
  readonly spread: number;
  /** Standard deviation of the logarithm of the scatter between meters, as it truly is. */
  readonly heterogeneity: number;
  /** The meter's own scatter is so many times the typical one; null: it differs from that as those of the others do. */
  readonly times: number | null;
}

export const usualToday: TodayPlan = {
  ...usualCatches,
  others: 2,
  fillsOfOthers: 1,
  earlier: 0,
  spread: 0.03,
  heterogeneity: 0.5,
  times: null,
};

/** A meter with its others; its last fill is today's. */
export interface TodayLog {
  /** Relative scatter of the meter's catches. */
  readonly scatter: number;
  /** What today's fill truly delivers, kg/turn. */
  readonly delivery: number;
  readonly own: Meter;
  readonly others: readonly Meter[];
}

const catchesOfOtherFills = usualCatches.catches;

/** @param most  catches of today's fill */
export function todayLog(plan: TodayPlan, most: number, random: RandomStream): TodayLog {
  const scatterOfOne = () => ofOneMeter(plan.scatter, plan.heterogeneity, random);
  const deliver = (fills: number) =>
    Array.from({ length: fills }, () => usualDelivery * (1 + plan.spread * random.normal()));
  const caught = (
    bin: number,
    deliveries: readonly number[],
    scatter: number,
    catches: CatchPlan["catches"],
  ) => meterOf(`${bin}`, deliveries, usualDelivery, { ...plan, scatter, catches }, random);
  const scatter = plan.times === null ? scatterOfOne() : plan.times * plan.scatter;
  const deliveries = deliver(plan.earlier + 1);
  const earlier = caught(1, deliveries.slice(0, -1), scatter, catchesOfOtherFills);
  const today = caught(1, deliveries.slice(-1), scatter, most);
  const { catches } = lastOf(today.fills);
  const fill = plan.earlier + 1;
  return {
    scatter,
    delivery: lastOf(deliveries),
    own: {
      ...earlier,
      fills: [
        ...earlier.fills,
        fillOf(
          catches.map((row) => ({ ...row, fill })),
          "1",
          fill,
        ),
      ],
    },
    others: Array.from({ length: plan.others }, (_, i) =>
      caught(i + 2, deliver(plan.fillsOfOthers), scatterOfOne(), catchesOfOtherFills),
    ),
  };
}

/** The meter when its last fill had so many catches. */
export function withCatchesToday(meter: Meter, catches: number): Meter {
  const today = lastOf(meter.fills);
  const now = fillOf(today.catches.slice(0, catches), today.bin, today.number);
  return { ...meter, fills: [...meter.fills.slice(0, -1), now] };
}

/** Bands for today's fill with each of so many catches, of the same fill. */
export function todayOutcomes(
  given: Partial<TodayPlan>,
  counts: readonly number[],
  replicates: number,
  random: RandomStream,
): readonly (readonly Outcome[])[] {
  const plan = { ...usualToday, ...given };
  const logs = Array.from({ length: replicates }, () => {
    const log = todayLog(plan, Math.max(...counts), random);
    return counts.map((catches) =>
      outcomeOfToday({ ...log, own: withCatchesToday(log.own, catches) }, plan.divisionKg),
    );
  });
  return counts.map((_, i) => logs.map((outcomes) => at(outcomes, i)));
}

/** The bands that such a log ends with where none of its catches is set aside. */
export function outcomeOfToday(
  { scatter, delivery, own, others }: TodayLog,
  divisionKg: number | null,
): Outcome {
  const lent = at(scattersOf([own, ...others], { divisionKg, borrowing: usualBorrowing }, true), 0);
  const bandWith = (said: MeterScatter) => {
    const options = { level, scaleDivisionKg: divisionKg };
    return bandOf(estimateFill(lastOf(own.fills), said, options).estimate, delivery);
  };
  return {
    trueSpread: scatter,
    lent: bandWith(lent),
    alone: bandWith(byItself(lent, lent.floor)),
  };
}
