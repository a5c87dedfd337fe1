import { at, lastOf } from "../../../src/errors/at.ts";
import { usualBorrowing } from "../../../src/model/lenders.ts";
import type { Meter } from "../../../src/model/meters.ts";
import {
  estimateOf,
  fitModel,
  type MeterModel,
  type ModelOptions,
} from "../../../src/model/model.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import type { Estimate } from "../../../src/results/estimate.ts";
import { catchesOf } from "./meters.ts";
import { nextFillLog, outcomeOf, usualNextFill } from "./next-fill.ts";
import { bandOf, level, type Outcome } from "./outcomes.ts";
import { outcomeOfToday, type TodayPlan, todayLog, usualToday } from "./today.ts";

/** What one log ends with when the whole program reads it, catches screened and changes looked for. */
export interface WholeOutcome extends Outcome {
  /** The same from its fills as they are. */
  readonly plain: Outcome;
}

/** What is asked of a log. */
type Question = (meter: MeterModel, options: ModelOptions) => Estimate;

const today: Question = (meter, options) =>
  estimateOf(meter, lastOf(meter.fills), options).estimate;
const nextFill: Question = ({ across }) => across.nextFill;

/** Bands for today's fill after so many catches of it. */
export function wholeToday(
  given: Partial<TodayPlan>,
  catches: number,
  replicates: number,
  random: RandomStream,
): readonly WholeOutcome[] {
  const plan = { ...usualToday, ...given };
  return Array.from({ length: replicates }, () => {
    const log = todayLog(plan, catches, random);
    return {
      trueSpread: log.scatter,
      ...bothWays(log, today, log.delivery),
      plain: outcomeOfToday(log, plan.divisionKg),
    };
  });
}

/** Bands for the next fill after so many. */
export function wholeNextFill(
  fills: number,
  replicates: number,
  random: RandomStream,
): readonly WholeOutcome[] {
  return Array.from({ length: replicates }, () => {
    const log = nextFillLog(usualNextFill, fills, random);
    return {
      trueSpread: log.spread,
      ...bothWays(log, nextFill, at(log.deliveries, fills)),
      plain: outcomeOf(log, null),
    };
  });
}

function bothWays(
  { own, others }: { readonly own: Meter; readonly others: readonly Meter[] },
  question: Question,
  truth: number,
): Pick<Outcome, "lent" | "alone"> {
  const catches = catchesOf([own, ...others]);
  const bandWith = (borrow: typeof usualBorrowing.borrow) => {
    const { meters, options } = fitModel(
      catches,
      { level },
      { borrowing: { ...usualBorrowing, borrow } },
    );
    return bandOf(question(at(meters, 0), options), truth);
  };
  return { lent: bandWith("other bins"), alone: bandWith("none") };
}
