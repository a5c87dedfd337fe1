import type { Fill, Meter } from "../../../src/model/meters.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";

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
  readonly meter: Meter;
  readonly nextDelivery: number;
}

/** @param next  errors of the fills about their level, one after another, of mean 0 and standard deviation 1 */
export function seasonOf(
  plan: SeasonPlan,
  random: RandomStream,
  next: () => number = fillErrors(plan, random),
): Season {
  const deliveryOf = (f: number) => {
    const level = levelOf(plan, f);
    return delivery * (level + plan.spread * next() * (plan.spreadGrows ? level : 1));
  };
  const fills = Array.from({ length: plan.fills }, (_, f) => {
    const ofFill = deliveryOf(f);
    const catches =
      typeof plan.catches === "number" ? plan.catches : random.integer(...plan.catches);
    const error = (delivery * plan.scatter * random.normal()) / Math.sqrt(catches);
    return fillOf(f + 1, ofFill + error, catches);
  });
  return {
    meter: {
      bin: "1",
      place: { farm: null, machine: null, bin: "1" },
      product: "wheat",
      fills,
    },
    nextDelivery: deliveryOf(plan.fills),
  };
}

export function fillErrors(
  { law, correlation }: Pick<SeasonPlan, "law" | "correlation">,
  random: RandomStream,
): () => number {
  let wander = drawn(law, random);
  return () => {
    const now = wander;
    wander = correlation * wander + Math.sqrt(1 - correlation ** 2) * drawn(law, random);
    return now;
  };
}

/** A fill by what it delivers and how many catches say so: the order of fills asks for no more. */
function fillOf(fill: number, ofFill: number, catches: number): Fill {
  const total = catches * turns;
  const totals = { catches, turns: total, massKg: ofFill * total, scatterSum: 0 };
  return {
    bin: "1",
    product: "wheat",
    fill,
    number: fill,
    season: null,
    seasonRank: 0,
    takenAt: null,
    catches: [],
    weighings: [],
    leftOut: [],
    totals,
    notLent: [],
    scatterTotals: totals,
    delivery: ofFill,
  };
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
