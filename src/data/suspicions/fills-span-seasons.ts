import { caution } from "../../results/caution.ts";
import type { Catch } from "../types.ts";
import { placeOfFill, type Suspicion } from "./suspect.ts";
import { isPlausible, yearOf } from "./years-look-wrong.ts";

/**
 * A fill is sown in hours, and a bin that rests over a wet spell in weeks. After three months another season has come, whose
 * numbers began again from 1.
 */
const longestDays = 90;
const dayInMs = 86_400_000;

/** Catches of one fill that lie months apart: two fills that share a number. */
export const fillsSpanSeasons: Suspicion = (log) =>
  log.meters.flatMap(({ fills }) =>
    fills.flatMap((fill) => {
      const dated = firstAndLast(fill);
      if (dated === null) return [];
      const [first, last] = dated;
      const apart = (Date.parse(last) - Date.parse(first)) / dayInMs;
      return apart > longestDays
        ? caution("fill-spans-seasons", placeOfFill(fill, log), { first, last, days: apart })
        : [];
    }),
  );

/** The first and the last day of a fill; null: it has one, or none. ISO dates stand in the order of their letters. */
function firstAndLast(fill: readonly Catch[]): readonly [string, string] | null {
  let first: string | null = null;
  let last: string | null = null;
  for (const row of fill) {
    const { takenAt } = row;
    if (takenAt === null || !isPlausible(yearOf(row) ?? 0)) continue;
    if (first === null || takenAt < first) first = takenAt;
    if (last === null || takenAt > last) last = takenAt;
  }
  const [from, to] = [first?.slice(0, 10), last?.slice(0, 10)];
  return from === undefined || to === undefined || from === to ? null : [from, to];
}
