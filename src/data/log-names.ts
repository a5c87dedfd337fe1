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
  const known = namesOf.get(catches);
  if (known !== undefined) return known;
  const names = namesIn(catches);
  namesOf.set(catches, names);
  return names;
}

/** Asked for by every part of an analysis, of the same catches. */
const namesOf = new WeakMap<readonly Keys[], LogNames>();

function namesIn(catches: readonly Keys[]): LogNames {
  const { farms, machines, seasons: found } = keysIn(catches);
  const seasons = orderedSeasons([...found]);
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
function keysIn(catches: readonly Keys[]) {
  const farms = new Set<string | null>();
  const machines = new Set<string | null>();
  const seasons = new Set<string | null>();
  let last: Keys | null = null;
  for (const row of catches) {
    const { farm, machine, season } = row;
    if (last !== null && last.farm === farm && last.machine === machine && last.season === season)
      continue;
    last = row;
    farms.add(farm);
    machines.add(machine);
    seasons.add(season);
  }
  return { farms, machines, seasons };
}

function orderedSeasons(found: readonly (string | null)[]): readonly (string | null)[] {
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
