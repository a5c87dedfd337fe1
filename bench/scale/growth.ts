import { at } from "../../src/errors/at.ts";

/** Seconds on the clock, and of all processors together, which a busy machine lengthens less. */
export interface Took {
  readonly seconds: number;
  readonly processors: number;
}

/** What one size of log took. */
export interface Measured {
  readonly rows: number;
  readonly meters: number;
  readonly fills: number;
  readonly actions: Readonly<Record<string, number>>;
  readonly reading: Took;
  /** From the catches to the table of meters. */
  readonly deciding: Took;
  readonly peakMegabytes: number;
  /** The same file by others, by their names. */
  readonly beside: Readonly<Record<string, Beside>>;
}

/** What another program took for the same file. */
export interface Beside extends Took {
  readonly fills: number;
  /** Of all fills together, kg/turn: the same sum by every program. */
  readonly deliveries: number;
  readonly peakMegabytes: number;
  readonly version: string;
}

/** How something grows from one size to the next: 1 is in proportion, 2 with the square. */
export function exponents<One extends { readonly rows: number }>(
  measured: readonly One[],
  of: (one: One) => number,
): readonly number[] {
  return measured.slice(1).map((larger, i) => {
    const smaller = at(measured, i);
    return Math.log(of(larger) / of(smaller)) / Math.log(larger.rows / smaller.rows);
  });
}

/** What a size is meant to take at most, by its rows; null: nothing is promised. */
export function aimOf(
  rows: number,
): { readonly seconds: number; readonly megabytes: number } | null {
  if (rows <= 100_000) return { seconds: 3, megabytes: 1000 };
  return rows <= 1_000_000 ? { seconds: 15, megabytes: 1000 } : null;
}

/** The run that took neither longest nor shortest, of an odd number. */
export function middleOf<One extends Pick<Measured, "reading" | "deciding">>(
  runs: readonly One[],
): One {
  const sorted = runs.toSorted((one, other) => together(one).seconds - together(other).seconds);
  return at(sorted, (runs.length - 1) / 2);
}

/** Up to so many rows a log is measured three times: whatever else the machine does lengthens a short run most. */
export const mostThrice = 100_000;

/** Seconds of an empty Node where the aims were set: a machine on which it takes longer is allowed so much more. */
export const emptyNodeOfAims = 0.067;

/** How much longer than where the aims were set everything takes, by an empty Node. */
export function paceOf(emptyNode: number): number {
  return emptyNode / emptyNodeOfAims;
}

/** Reading and deciding. */
export function together({ reading, deciding }: Pick<Measured, "reading" | "deciding">): Took {
  return {
    seconds: reading.seconds + deciding.seconds,
    processors: reading.processors + deciding.processors,
  };
}
