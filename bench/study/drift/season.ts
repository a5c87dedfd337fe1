import type { Catch } from "../../../src/data/types.ts";
import { type Fill, metersOf } from "../../../src/model/meters.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import { aCatch } from "../../../test/support/catches.ts";

/** A season to be invented. Spreads are relative to a delivery of 0.3 kg/turn, catches have 20 turns. */
export interface SeasonPlan {
  readonly fills: number;
  /** Catches of each fill, or a range from which each fill draws its own number. */
  readonly catches: number | readonly [fewest: number, most: number];
  /** Fill-to-fill spread. */
  readonly spread: number;
  /** Scatter of one catch. */
  readonly scatter: number;
  /** Correlation of the deliveries of neighbouring fills. */
  readonly correlation: number;
  /** Relative shift from the middle of the season on. */
  readonly shift: number;
  /** Relative change from fill to fill. */
  readonly perFill: number;
}

export const usualSeason: SeasonPlan = {
  fills: 8,
  catches: 3,
  spread: 0.02,
  scatter: 0.015,
  correlation: 0,
  shift: 0,
  perFill: 0,
};

const delivery = 0.3;
const turns = 20;

/** Number of fills before a shift. */
export function fillsBefore(fills: number): number {
  return Math.floor(fills / 2);
}

/** Catches of one season. */
export function seasonCatches(plan: SeasonPlan, random: RandomStream): Catch[] {
  let wander = random.normal();
  return Array.from({ length: plan.fills }, (_, f) => {
    const { correlation, spread, shift, perFill } = plan;
    if (f > 0) wander = correlation * wander + Math.sqrt(1 - correlation ** 2) * random.normal();
    const moved = f < fillsBefore(plan.fills) ? 1 : 1 + shift;
    const ofFill = delivery * (1 + spread * wander) * moved * (1 + perFill * f);
    const catches =
      typeof plan.catches === "number" ? plan.catches : random.integer(...plan.catches);
    return Array.from({ length: catches }, (_, c) =>
      aCatch({
        fill: f + 1,
        catch: c + 1,
        turns,
        netKg: ofFill * turns + delivery * turns * plan.scatter * random.normal(),
      }),
    );
  }).flat();
}

/** The same as fills of a meter. */
export function seasonFills(plan: SeasonPlan, random: RandomStream): readonly Fill[] {
  return metersOf(seasonCatches(plan, random))[0]?.fills ?? [];
}
