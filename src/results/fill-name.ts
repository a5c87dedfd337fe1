/**
 * What a fill is called: its number; in a log of several seasons number/season, such as "3/2026", since each season may count
 * from 1.
 */
export type FillName = number | string;

/** The name of a fill of a season. */
export function fillNameIn(season: string, number: number): FillName {
  return `${number}/${season}`;
}

/** The number of a fill within its season. */
export function numberInSeason(name: FillName): number {
  return typeof name === "number" ? name : Number(name.slice(0, name.indexOf("/")));
}
