import type { Catch } from "../data/types.ts";
import { type FillTotals, mergeTotals, noTotals } from "./totals.ts";

/**
 * All that one fill's catches say where the catches themselves are elsewhere, in a database or on another machine. Two
 * records merge in any order: catches may be added up where they lie.
 */
export interface FillSums extends FillTotals {
  /** Σ of the scale divisions that catches name, kg. */
  readonly divisionsKg: number;
  /** Catches that name none: the scale of the setup counts for them. */
  readonly withoutDivision: number;
  /** Turns of the shortest catch and of the longest. */
  readonly fewestTurns: number;
  readonly mostTurns: number;
}

export const noSums: FillSums = {
  ...noTotals,
  divisionsKg: 0,
  withoutDivision: 0,
  fewestTurns: Number.POSITIVE_INFINITY,
  mostTurns: 0,
};

/** Sums of catches; outlets of one catch are to be added up before. */
export function sumsOf(catches: Iterable<Pick<Catch, "turns" | "netKg" | "divisionKg">>): FillSums {
  let sums = noSums;
  for (const { turns, netKg, divisionKg } of catches)
    sums = mergeSums(sums, {
      catches: 1,
      turns,
      massKg: netKg,
      scatterSum: 0,
      divisionsKg: divisionKg ?? 0,
      withoutDivision: divisionKg === null ? 1 : 0,
      fewestTurns: turns,
      mostTurns: turns,
    });
  return sums;
}

/** Sums of two sets of catches of one fill taken together; see `mergeTotals` for the scatter. */
export function mergeSums(a: FillSums, b: FillSums): FillSums {
  return {
    ...mergeTotals(a, b),
    divisionsKg: a.divisionsKg + b.divisionsKg,
    withoutDivision: a.withoutDivision + b.withoutDivision,
    fewestTurns: Math.min(a.fewestTurns, b.fewestTurns),
    mostTurns: Math.max(a.mostTurns, b.mostTurns),
  };
}

/** Σ of the divisions of all catches, kg; null where one of them is not known. */
export function divisionsOf(
  { divisionsKg, withoutDivision }: FillSums,
  divisionKg: number | null,
): number | null {
  if (withoutDivision === 0) return divisionsKg;
  return divisionKg === null ? null : divisionsKg + withoutDivision * divisionKg;
}
