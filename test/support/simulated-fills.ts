import type { Catch } from "../../src/data/types.ts";
import { type RandomStream, randomStream } from "../../src/numeric/random.ts";
import { aCatch } from "./catches.ts";

/** Fills to be invented for a test; spread and scatter relative, scatter that of one catch of `turns` turns. */
export interface InventedFills {
  readonly fills: number;
  readonly catches: number;
  readonly spread: number;
  readonly scatter: number;
  readonly delivery?: number;
  readonly turns?: number;
  readonly bin?: string;
  /** Number of the first fill, default 1. */
  readonly firstFill?: number;
}

/** Catches of invented fills; the same seed gives the same catches. */
export function inventedFills(plan: InventedFills, source: number | RandomStream): Catch[] {
  const stream = typeof source === "number" ? randomStream(source) : source;
  const { delivery = 0.3, turns = 20, bin = "1", firstFill = 1 } = plan;
  return Array.from({ length: plan.fills }, (_, f) => {
    const ofFill = delivery * (1 + plan.spread * stream.normal());
    return Array.from({ length: plan.catches }, (_, c) =>
      aCatch({
        row: 2 + f * plan.catches + c,
        bin,
        fill: firstFill + f,
        catch: c + 1,
        turns,
        netKg: ofFill * turns * (1 + plan.scatter * stream.normal()),
      }),
    );
  }).flat();
}
