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
  const farms = new Set(catches.map(({ farm }) => farm));
  const machines = new Set(catches.map(({ machine }) => machine));
  const seasons = orderedSeasons(catches);
  return {
    bin: ({ bin, machine, farm }) =>
      [bin, machines.size > 1 ? machine : null, farms.size > 1 ? farm : null]
        .filter((part) => part !== null)
        .join("/"),
    fill: ({ season, fill }) =>
      seasons.length > 1 && season !== null ? fillNameIn(season, fill) : fill,
    seasonRank: (season) => seasons.indexOf(season),
  };
}

function orderedSeasons(catches: readonly Keys[]): readonly (string | null)[] {
  const found = [...new Set(catches.map(({ season }) => season))];
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
