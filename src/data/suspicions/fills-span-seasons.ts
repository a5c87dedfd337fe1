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
      const [first, last] = firstAndLast(fill);
      const apart = (Date.parse(last) - Date.parse(first)) / dayInMs;
      return apart > longestDays
        ? caution("fill-spans-seasons", placeOfFill(fill, log), { first, last, days: apart })
        : [];
    }),
  );

/** The first and the last day of a fill; empty: it has none. */
function firstAndLast(fill: readonly Catch[]): readonly [string, string] {
  let [first, last] = ["", ""];
  for (const row of fill) {
    if (!isPlausible(yearOf(row) ?? 0)) continue;
    const day = row.takenAt?.slice(0, 10) ?? "";
    if (first === "" || day < first) first = day;
    if (day > last) last = day;
  }
  return [first, last];
}
