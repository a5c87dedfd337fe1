import { at } from "../../src/errors/at.ts";

/** What one size of log took. */
export interface Measured {
  readonly rows: number;
  readonly meters: number;
  readonly fills: number;
  readonly actions: Readonly<Record<string, number>>;
  readonly readSeconds: number;
  readonly tableSeconds: number;
  /** Seconds of all processors together, which a busy machine lengthens less. */
  readonly processors: number;
  readonly peakMegabytes: number;
  /** The same file by others, by their names. */
  readonly beside: Readonly<Record<string, Beside>>;
}

/** What another program took for the same file. */
export interface Beside {
  readonly fills: number;
  /** Of all fills together, kg/turn: the same sum by every program. */
  readonly deliveries: number;
  readonly seconds: number;
  readonly processors: number;
  readonly peakMegabytes: number;
  readonly version: string;
}

/** How something grows from one size to the next: 1 is in proportion, 2 with the square. */
export function exponents(
  measured: readonly Measured[],
  of: (one: Measured) => number,
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

export function wholeSeconds({ readSeconds, tableSeconds }: Measured): number {
  return readSeconds + tableSeconds;
}
