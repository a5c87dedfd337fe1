import { remembered } from "../data/remembered.ts";

const isoParts =
  /^(\d{4})-(\d\d)-(\d\d)(?:T(\d\d):(\d\d)(?::(\d\d))?(?:[.,]\d+)?(?:Z|([+-])(\d\d):?(\d\d)?)?)?$/;

/**
 * An ISO 8601 date as milliseconds, for ordering. A date without an offset counts as UTC, because the offset of the
 * computer that reads the file would make the order depend on where it is read.
 *
 * @returns null without a date, or for text that is none
 */
export function instantOf(takenAt: string | null): number | null {
  return takenAt === null ? null : instantIn(takenAt);
}

const instantIn = remembered((text) => {
  const parts = isoParts.exec(text);
  if (parts === null) return null;
  const part = (i: number) => Number(parts[i] ?? 0);
  const local = Date.UTC(part(1), part(2) - 1, part(3), part(4), part(5), part(6));
  const offsetMinutes = (parts[7] === "-" ? -1 : 1) * (60 * part(8) + part(9));
  return local - 60_000 * offsetMinutes;
});

/** Something with a place in the order of fills. */
export interface Numbered {
  /** Of its season. */
  readonly number: number;
  /** Place of the season among those of the log. */
  readonly seasonRank: number;
  readonly takenAt: string | null;
}

/** Below 0: the first comes before the second, by season and, within it, number. */
export function bySeasonAndNumber(
  a: Pick<Numbered, "number" | "seasonRank">,
  b: Pick<Numbered, "number" | "seasonRank">,
): number {
  return a.seasonRank - b.seasonRank || a.number - b.number;
}

/** Fills of one meter in order of time: by date where all have one, else by season and number. */
export function inTimeOrder<F extends Numbered>(fills: readonly F[]): readonly F[] {
  const numbered = fills.toSorted(bySeasonAndNumber);
  const placed = numbered.flatMap((fill) => {
    const instant = instantOf(fill.takenAt);
    return instant === null ? [] : [{ fill, instant }];
  });
  if (placed.length < numbered.length) return numbered;
  return placed.toSorted((a, b) => a.instant - b.instant).map(({ fill }) => fill);
}
