import { at } from "../../../src/errors/at.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import { after } from "./meters.ts";
import {
  type NextFillPlan,
  nextFillLog,
  spreadVoteOf,
  togetherWith,
  usualNextFill,
} from "./next-fill.ts";
import { type Band, bandOf } from "./outcomes.ts";

/** Bands for the level of a meter, which its fills scatter about, that one simulated log ends with. */
export interface MeanOutcome {
  /** With what other meters lend. */
  readonly lent: Band | null;
  /** With nobody but the meter itself. */
  readonly alone: Band | null;
  /** The same as if the scale had no division. */
  readonly readingIgnored: Band | null;
}

/** Bands for the mean over each of so many fills, of the same meter and its others. */
export function meanOutcomes(
  given: Partial<NextFillPlan>,
  counts: readonly number[],
  replicates: number,
  random: RandomStream,
): readonly (readonly MeanOutcome[])[] {
  const plan = { ...usualNextFill, ...given };
  const { divisionKg, delivery } = plan;
  const logs = Array.from({ length: replicates }, () => {
    const { own, others } = nextFillLog(plan, Math.max(...counts), random);
    return counts.map((fills): MeanOutcome => {
      const now = after(fills, own);
      const vote = spreadVoteOf({ own: now, others }, divisionKg);
      return {
        lent: bandOf(togetherWith(now, vote, divisionKg).mean, delivery),
        alone: bandOf(togetherWith(now, null, divisionKg).mean, delivery),
        readingIgnored: bandOf(togetherWith(now, null, null).mean, delivery),
      };
    });
  });
  return counts.map((_, i) => logs.map((outcomes) => at(outcomes, i)));
}
