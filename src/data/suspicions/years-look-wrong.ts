import { caution } from "../../results/caution.ts";
import type { Catch } from "../types.ts";
import { placeOfFill, type Suspicion } from "./suspect.ts";

/**
 * Years in which nobody weighs a catch. They are fixed, since the answer to a file may not turn on the day on which it is asked.
 */
const plausibleYears = { first: 1980, last: 2049 } as const;

/** Nobody lets a meter rest so long between two catches of one log. */
const longestRest = 10;

export function yearOf({ takenAt }: Pick<Catch, "takenAt">): number | null {
  return takenAt === null ? null : Number(takenAt.slice(0, 4));
}

export function isPlausible(year: number): boolean {
  return year >= plausibleYears.first && year <= plausibleYears.last;
}

/**
 * A year that is none for a catch, or stands alone far from the others: 2062, 0000, 2206. Fills follow one another by their dates, so
 * that another year makes another fill the newest.
 */
export const yearsLookWrong: Suspicion = (log) => {
  const counts = yearsIn(log.catches);
  const wrong = wrongAmong(counts);
  if (wrong.size === 0) return [];
  return log.meters.flatMap(({ fills, where }) =>
    fills.flatMap((fill) => {
      const years = [...new Set(fill.flatMap((row) => yearOf(row) ?? []))];
      return years
        .filter((year) => wrong.has(year))
        .map((year) =>
          caution("year-looks-wrong", where, { year, fill: placeOfFill(fill, log).fill ?? 0 }),
        );
    }),
  );
};

function yearsIn(catches: readonly Catch[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const row of catches) {
    const year = yearOf(row);
    if (year !== null) counts.set(year, (counts.get(year) ?? 0) + 1);
  }
  return counts;
}

function wrongAmong(counts: ReadonlyMap<number, number>): ReadonlySet<number> {
  const years = [...counts.keys()].filter(isPlausible).sort((a, b) => a - b);
  const dated = years.reduce((sum, year) => sum + (counts.get(year) ?? 0), 0);
  const alone = years.filter((year, i) => {
    const rests = [years[i - 1], years[i + 1]].flatMap((one) =>
      one === undefined ? [] : Math.abs(year - one),
    );
    const few = 2 * (counts.get(year) ?? 0) < dated;
    return few && rests.every((rest) => rest >= longestRest);
  });
  return new Set([...alone, ...[...counts.keys()].filter((year) => !isPlausible(year))]);
}
