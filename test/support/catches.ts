import { makeCatch } from "../../src/data/make-catch.ts";
import type { Catch, CatchLog } from "../../src/data/types.ts";

const plain = makeCatch({ bin: "1", product: "wheat", fill: 1, catch: 1, turns: 20, netKg: 6 });

/** A catch for a test; only what matters need be said. Figures may lie beyond those of any farm. */
export function aCatch(given: Partial<Catch> & Pick<Catch, "turns" | "netKg">): Catch {
  return { ...plain, row: 2, ...given };
}

/** Catches of one fill, numbered in order, from [turns, net mass] pairs. */
export function aFill(
  pairs: readonly (readonly [turns: number, netKg: number])[],
  given: Partial<Catch> = {},
): Catch[] {
  return pairs.map(([turns, netKg], i) =>
    aCatch({ row: i + 2, catch: i + 1, turns, netKg, ...given }),
  );
}

/** Catches as if read from a file. */
export function aLog(catches: readonly Catch[]): CatchLog {
  return { source: "catches.csv", massUnit: "kg", catches, cautions: [] };
}
