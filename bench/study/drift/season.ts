import type { Catch } from "../../../src/data/types.ts";
import { type Fill, metersOf } from "../../../src/model/meters.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import { aCatch } from "../../../test/support/catches.ts";

/** How the deliveries of fills scatter about their level, with the same standard deviation. */
export type Law = "normal" | "heavy tails" | "skewed";

/** A season to be invented. Spreads are relative to a delivery of 0.3 kg/turn, catches have 20 turns. */
export interface SeasonPlan {
  readonly fills: number;
  /** Catches of each fill, or a range from which each fill draws its own number. */
  readonly catches: number | readonly [fewest: number, most: number];
  /** Fill-to-fill spread. */
  readonly spread: number;
  readonly law: Law;
  /** Scatter of one catch. */
  readonly scatter: number;
  /** Correlation of the deliveries of neighbouring fills. */
  readonly correlation: number;
  /** Relative shift. */
  readonly shift: number;
  /** First fill that has it; null: the middle of the season. */
  readonly from: number | null;
  /** Whether that fill alone has it. */
  readonly once: boolean;
  /** Relative change from fill to fill. */
  readonly perFill: number;
  /** Whether a higher level spreads more; otherwise the spread stays what it is in kg. */
  readonly spreadGrows: boolean;
}

export const usualSeason: SeasonPlan = {
  fills: 8,
  catches: 3,
  spread: 0.02,
  law: "normal",
  scatter: 0.015,
  correlation: 0,
  shift: 0,
  from: null,
  once: false,
  perFill: 0,
  spreadGrows: false,
};

const delivery = 0.3;
const turns = 20;

/** Number of fills before a shift. */
export function fillsBefore({ fills, from }: Pick<SeasonPlan, "fills" | "from">): number {
  return from === null ? Math.floor(fills / 2) : from - 1;
}

/** A season and what its next fill would truly deliver, kg/turn. */
export interface Season {
  readonly catches: readonly Catch[];
  readonly nextDelivery: number;
}

export function seasonOf(plan: SeasonPlan, random: RandomStream): Season {
  const { correlation, spread, law } = plan;
  let wander = drawn(law, random);
  const next = () => {
    const now = wander;
    wander = correlation * wander + Math.sqrt(1 - correlation ** 2) * drawn(law, random);
    return now;
  };
  const deliveryOf = (f: number) => {
    const level = levelOf(plan, f);
    return delivery * (level + spread * next() * (plan.spreadGrows ? level : 1));
  };
  const catches = Array.from({ length: plan.fills }, (_, f) => {
    const ofFill = deliveryOf(f);
    const count = typeof plan.catches === "number" ? plan.catches : random.integer(...plan.catches);
    return Array.from({ length: count }, (_, c) =>
      aCatch({
        fill: f + 1,
        catch: c + 1,
        turns,
        netKg: ofFill * turns + delivery * turns * plan.scatter * random.normal(),
      }),
    );
  }).flat();
  return { catches, nextDelivery: deliveryOf(plan.fills) };
}

/** Fills of one season. */
export function seasonFills(plan: SeasonPlan, random: RandomStream): readonly Fill[] {
  return metersOf(seasonOf(plan, random).catches)[0]?.fills ?? [];
}

function levelOf(plan: SeasonPlan, f: number): number {
  const before = fillsBefore(plan);
  const shifted = plan.once ? f === before : f >= before;
  return (shifted ? 1 + plan.shift : 1) * (1 + plan.perFill * f);
}

/** Mean 0, standard deviation 1. */
export function drawn(law: Law, random: RandomStream): number {
  switch (law) {
    case "normal":
      return random.normal();
    case "heavy tails": {
      // Student's t on 4 degrees of freedom has variance 2.
      const squares = [1, 2, 3, 4].reduce((sum) => sum + random.normal() ** 2, 0);
      return random.normal() / Math.sqrt(squares / 4) / Math.SQRT2;
    }
    case "skewed":
      return -Math.log(1 - random.uniform()) - 1;
  }
}
