import { type FillName, fillNameIn } from "../results/fill-name.ts";
import type { BinPlace } from "./identity.ts";
import type { Catch } from "./types.ts";

type Keys = Pick<Catch, "farm" | "machine" | "season">;

/** What the bins and fills of a log are called on every surface, and how its seasons follow one another. */
export interface LogNames {
  /** The bin alone, or bin/machine, bin/farm, bin/machine/farm where the log holds several machines or farms. */
  readonly bin: (row: BinPlace) => string;
  /** The number alone, or number/season where the log holds several seasons. */
  readonly fill: (row: Pick<Catch, "season" | "fill">) => FillName;
  /** Place of a season among those of the log, from 0. */
  readonly seasonRank: (season: string | null) => number;
}

/**
 * Names for the bins and fills of a log. What the log has one of is not said, so that a log of one machine and one season
 * reads as if the columns were not there.
 *
 * Seasons follow one another by the year in their name where each has another one, else in the order of the file; rows
 * without a season come before all others.
 */
export function logNames(catches: readonly Keys[]): LogNames {
  const farms = distinct(catches, "farm");
  const machines = distinct(catches, "machine");
  const seasons = orderedSeasons(distinct(catches, "season"));
  const ranks = new Map(seasons.map((season, rank) => [season, rank]));
  return {
    bin: ({ bin, machine, farm }) =>
      [bin, machines.size > 1 ? machine : null, farms.size > 1 ? farm : null]
        .filter((part) => part !== null)
        .join("/"),
    fill: ({ season, fill }) =>
      seasons.length > 1 && season !== null ? fillNameIn(season, fill) : fill,
    seasonRank: (season) => ranks.get(season) ?? -1,
  };
}

/** What the rows name, in their order; neighbours mostly name the same. */
function distinct(catches: readonly Keys[], key: keyof Keys): ReadonlySet<string | null> {
  const found = new Set<string | null>();
  let last: string | null | undefined;
  for (const row of catches) {
    if (row[key] === last) continue;
    last = row[key];
    found.add(last);
  }
  return found;
}

function orderedSeasons(all: ReadonlySet<string | null>): readonly (string | null)[] {
  const found = [...all];
  const named = found.filter((season) => season !== null);
  const years = new Map(named.map((season) => [season, yearIn(season)]));
  const yearOf = (season: string) => years.get(season) ?? Number.NaN;
  const told =
    new Set(years.values()).size === named.length &&
    !named.some((season) => yearIn(season) === null);
  const ordered = told ? named.toSorted((a, b) => yearOf(a) - yearOf(b)) : named;
  return found.includes(null) ? [null, ...ordered] : ordered;
}

function yearIn(season: string): number | null {
  const year = /\d{4}/.exec(season)?.[0];
  return year === undefined ? null : Number(year);
}
