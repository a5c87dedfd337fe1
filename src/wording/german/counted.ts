import type { Format } from "../format.ts";

/** Counts a noun that keeps its form in every case, as these do. */
function counter(one: string, more: string): (count: number) => string {
  return (count) => `${count} ${count === 1 ? one : more}`;
}

export const catchesWords = counter("Probe", "Proben");
export const fillsWords = counter("Füllung", "Füllungen");

/** "7,3 Freiheitsgrade". */
export function degrees(df: number, format: Format): string {
  return `${format.plain(df)} ${df === 1 ? "Freiheitsgrad" : "Freiheitsgrade"}`;
}

/** "mit 7,3 Freiheitsgraden". */
export function withDegrees(df: number, format: Format): string {
  return `mit ${format.plain(df)} ${df === 1 ? "Freiheitsgrad" : "Freiheitsgraden"}`;
}

/** "mit 2 Umdrehungen". */
export function withTurns(turns: number, format: Format): string {
  return `mit ${format.plain(turns)} ${turns === 1 ? "Umdrehung" : "Umdrehungen"}`;
}
