import type { Catch, CatchLog } from "../../src/data/types.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { inventedFills } from "./simulated-fills.ts";

/** What is wrong with a meter of an invented fleet: factors on what it delivers, and on how its catches and fills scatter. */
export interface Planted {
  readonly delivery?: number;
  readonly scatter?: number;
  readonly spread?: number;
}

export interface FleetPlan {
  readonly meters: number;
  readonly products: readonly string[];
  /** How far meters of a product lie apart, relative. */
  readonly between: number;
  /** Standard deviation of ln σ from meter to meter. */
  readonly unlikeSpreads: number;
  /** By the place of the meter, from 0. */
  readonly planted: Readonly<Record<number, Planted>>;
  readonly nameOf: (place: number) => string;
  /** What a catch of a fill has beside. */
  readonly beside: (place: number, fill: number) => Partial<Catch>;
  readonly fills: (place: number) => number;
}

const usual: FleetPlan = {
  meters: 60,
  products: ["wheat", "barley", "peas", "oats"],
  between: 0.03,
  unlikeSpreads: 0.3,
  planted: {},
  nameOf: (place) => `${place + 1}`,
  beside: () => ({}),
  fills: (place) => 4 + (place % 4),
};

/** Catches of an invented fleet, products in turn; the same seed gives the same catches. */
export function inventedFleet(seed: number, given: Partial<FleetPlan> = {}): CatchLog {
  const plan = { ...usual, ...given };
  const stream = randomStream(seed);
  const catches = Array.from({ length: plan.meters }, (_, place) => {
    const ill = plan.planted[place] ?? {};
    const wild = () => Math.exp(plan.unlikeSpreads * stream.normal());
    const product = plan.products[place % plan.products.length] ?? "wheat";
    const ofProduct = 0.2 + 0.05 * (place % plan.products.length);
    const delivery = ofProduct * Math.exp(plan.between * stream.normal()) * (ill.delivery ?? 1);
    return inventedFills(
      {
        bin: plan.nameOf(place),
        fills: plan.fills(place),
        catches: 3,
        delivery,
        spread: 0.02 * wild() * (ill.spread ?? 1),
        scatter: 0.012 * wild() * (ill.scatter ?? 1),
      },
      stream,
    ).map((row) => ({ ...row, product, ...plan.beside(place, row.fill) }));
  }).flat();
  return {
    source: "fleet.csv",
    massUnit: "kg",
    catches: catches.map((row, i) => ({ ...row, row: i + 2 })),
    cautions: [],
  };
}

/** Three meters that something is wrong with: one delivers 25 % more, one scatters, the fills of one differ. */
export const threePlanted: Readonly<Record<number, Planted>> = {
  7: { delivery: 1.25 },
  22: { scatter: 9 },
  41: { spread: 9 },
};
