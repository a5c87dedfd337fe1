import type { Catch } from "./types.ts";

/** What a catch cannot be without. */
export type CatchEssentials = Pick<Catch, "bin" | "product" | "fill" | "catch" | "turns" | "netKg">;

/**
 * A catch made in a program instead of read from a file: what is not said is not known. Nothing is checked; a file is.
 *
 * @param given  bin, product, fill, catch, turns, net mass in kg, and whatever else is known
 * @example
 * makeCatch({ bin: "1", product: "wheat", fill: 1, catch: 1, turns: 20, netKg: 6.1 }).tareKg // -> null
 */
export function makeCatch(given: CatchEssentials & Partial<Catch>): Catch {
  return {
    row: 0,
    grossKg: null,
    tareKg: null,
    divisionKg: null,
    takenAt: null,
    meterRpm: null,
    bulkDensityKgPerM3: null,
    moisturePercent: null,
    binLevelPercent: null,
    outlet: null,
    operator: null,
    note: null,
    checked: null,
    leftOut: null,
    extra: {},
    ...given,
  };
}
