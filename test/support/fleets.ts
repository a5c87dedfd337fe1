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

const people = ["Anna", "Ben", "Cem"];

/** Fleets in which everything is said that is said of a fleet. */
export const fleets: readonly (readonly [string, CatchLog])[] = [
  [
    "a fleet with three ill meters, and operators in turn",
    inventedFleet(3, {
      planted: threePlanted,
      meters: 44,
      beside: (place, fill) => ({
        operator: people[(place + fill) % 3] ?? "",
        extra: { scale: "old" },
      }),
    }),
  ],
  [
    "a fleet with a slow meter and slow operators, a product in two meters only",
    withSlowOperators(
      inventedFleet(4, {
        meters: 14,
        products: ["wheat", "wheat", "wheat", "wheat", "peas"],
        planted: { 2: { delivery: 0.6 } },
        beside: (place, fill) => ({ operator: people[(place + fill) % 2] ?? "" }),
      }),
    ),
  ],
  [
    "a fleet of as many products as meters",
    inventedFleet(5, { meters: 10, products: Array.from({ length: 10 }, (_, i) => `lot ${i}`) }),
  ],
  [
    "a fleet with nothing wrong",
    inventedFleet(7, { meters: 12, products: ["wheat"], fills: () => 3 }),
  ],
  [
    "a fleet that moves",
    moving(inventedFleet(8, { meters: 12, products: ["wheat"], fills: () => 9 })),
  ],
  [
    "more meters than a picture holds",
    inventedFleet(9, { meters: 64, products: ["wheat"], fills: () => 2 }),
  ],
];

function withSlowOperators(log: CatchLog): CatchLog {
  const slow = (row: Catch) => (row.operator === "Ben" ? { ...row, netKg: 0.9 * row.netKg } : row);
  return { ...log, catches: log.catches.map(slow) };
}

/** One meter delivers more from fill 6 on, one a little more with every fill, one differs with its last. */
function moving(log: CatchLog): CatchLog {
  const factor = ({ bin, fill }: Catch) => {
    if (bin === "1") return fill < 6 ? 1 : 1.25;
    if (bin === "2") return 1 + 0.04 * fill;
    return bin === "3" && fill === 9 ? 1.4 : 1;
  };
  return {
    ...log,
    catches: log.catches.map((row) => ({ ...row, netKg: factor(row) * row.netKg })),
  };
}
