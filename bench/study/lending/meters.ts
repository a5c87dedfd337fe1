import type { Catch } from "../../../src/data/types.ts";
import type { Fill, Meter } from "../../../src/model/meters.ts";
import { deliveryOf, totalsOf } from "../../../src/model/totals.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import { aCatch } from "../../../test/support/catches.ts";
import { noises } from "../coverage/season.ts";
import { drawn, type Law } from "../drift/season.ts";
import { read } from "../outliers/simulate.ts";

/** What meters deliver, kg/turn, unless a table says otherwise. */
export const usualDelivery = 0.3;
export const usualTurns = 20;
/** Relative scatter of a catch of so many turns. */
export const usualScatter = 0.015;

/** How fills depart from their level, or catches from their fill. */
export type Departure = Law | "two humps" | "some far off" | "some far too high";

/** What being far off means: so often, by so many standard deviations. */
export interface FarOff {
  readonly share: number;
  readonly by: number;
}

const farCatches: FarOff = { share: 0.05, by: 4 };

/** Mean 0, standard deviation 1; those that are far off come on top of it. */
export function departureOf(departure: Departure, far: FarOff, random: RandomStream): number {
  switch (departure) {
    case "two humps":
      return noises.twoHumps(random);
    case "some far off":
    case "some far too high": {
      const side = departure === "some far off" && random.uniform() < 0.5 ? -1 : 1;
      return random.normal() + (random.uniform() < far.share ? side * far.by : 0);
    }
    default:
      return drawn(departure, random);
  }
}

/** How the fills of a meter are caught. */
export interface CatchPlan {
  /** Of each fill, or a range from which each fill draws its own number. */
  readonly catches: number | readonly [fewest: number, most: number];
  /** Scatter of one catch, relative, where a fill is typical of its meter. */
  readonly scatter: number;
  /** Standard deviation of its logarithm between the meter's fills. */
  readonly variesBy: number;
  readonly departure: Departure;
  /** Of the scale, kg; null: read to the last digit. */
  readonly divisionKg: number | null;
  /** False: each catch has a bag of its own, which falls anywhere between two marks of the scale. */
  readonly oneBag: boolean;
}

export const usualCatches: CatchPlan = {
  catches: 3,
  scatter: usualScatter,
  variesBy: 0,
  departure: "normal",
  divisionKg: null,
  oneBag: false,
};

/** Something of a meter that differs from what is typical of meters by a lognormal factor. */
export function ofOneMeter(typical: number, heterogeneity: number, random: RandomStream): number {
  return typical * Math.exp(heterogeneity * random.normal());
}

/**
 * A meter that was caught.
 *
 * @param deliveries  what its fills truly deliver, kg/turn
 * @param level       that its catches scatter by a share of, kg/turn
 */
export function meterOf(
  bin: string,
  deliveries: readonly number[],
  level: number,
  plan: CatchPlan,
  random: RandomStream,
): Meter {
  const oneBag = bagOf(plan, random);
  const fills = deliveries.map((delivery, i) => {
    const scatter = plan.scatter * Math.exp(plan.variesBy * random.normal());
    const count = typeof plan.catches === "number" ? plan.catches : random.integer(...plan.catches);
    const catches = Array.from({ length: count }, (_, c) => {
      const error = level * scatter * departureOf(plan.departure, farCatches, random);
      const bag = plan.oneBag ? oneBag : bagOf(plan, random);
      const netKg = weighed((delivery + error) * usualTurns, bag, plan);
      return aCatch({ bin, fill: i + 1, catch: c + 1, turns: usualTurns, netKg });
    });
    return fillOf(catches, bin, i + 1);
  });
  return { bin, place: { farm: null, machine: null, bin }, product: "wheat", fills };
}

const bagKg = 0.4;

function bagOf({ divisionKg }: CatchPlan, random: RandomStream): number {
  return bagKg + (divisionKg ?? 0) * (random.uniform() - 0.5);
}

function weighed(massKg: number, bag: number, { divisionKg }: CatchPlan): number {
  if (divisionKg === null) return massKg;
  return read(massKg + bag, { divisionKg }) - read(bag, { divisionKg });
}

/** The fill that the model makes of such catches where it sets none aside. */
export function fillOf(catches: readonly Catch[], bin: string, fill: number): Fill {
  const totals = totalsOf(catches);
  return {
    bin,
    product: "wheat",
    fill,
    number: fill,
    season: null,
    seasonRank: 0,
    takenAt: null,
    catches,
    weighings: catches,
    leftOut: [],
    totals,
    notLent: [],
    scatterTotals: totals,
    delivery: deliveryOf(totals),
  };
}

/** The meter as it was after so many of its fills. */
export function after(fills: number, meter: Meter): Meter {
  return { ...meter, fills: meter.fills.slice(0, fills) };
}

/** All that was caught, as a log has it. */
export function catchesOf(meters: readonly Meter[]): readonly Catch[] {
  return meters.flatMap(({ fills }) => fills.flatMap(({ catches }) => catches));
}
