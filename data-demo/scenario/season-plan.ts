import type { Meter } from "./weighing.ts";

/** How the seed was chosen is told in README.md. */
export const seasonSeed = 13066;

export const fillsPerBin = 9;
export const divisionKg = 0.02;

/** What was done to the season on purpose, so that there is something to find. */
export const planted = {
  /** The bag was not weighed empty: its mass stays in the net mass. */
  forgottenTare: { bin: "1", fill: 4, catch: 2 },
  /** The operator wrote one turn more than the meter made. */
  miscountedTurn: { bin: "2", fill: 6, catch: 3, turnsMade: 19, turnsWritten: 20 },
  /** From this fill on the meter delivers less. */
  drift: { bin: "3", fromFill: 6, change: -0.055 },
  /** Weighed with another scale. */
  coarseScale: { bin: "1", fill: 7, divisionKg: 0.2 },
} as const;

/** A bin of the invented drill, with what the simulation knows and the operator does not. */
export interface Bin extends Meter {
  readonly bin: string;
  readonly product: string;
  readonly targetKgPerHa: number;
  readonly haPerFill: number;
  /** Lowest and highest speed at which its catches were turned, turns/min. */
  readonly catchRpm: readonly [number, number];
}

export const wheat: Bin = {
  bin: "1",
  product: "wheat",
  kgPerTurn: 0.42,
  fillSpread: 0.018,
  catchScatter: 0.012,
  targetKgPerHa: 140,
  haPerFill: 30,
  catchRpm: [55, 55],
};

export const pea: Bin = {
  bin: "2",
  product: "pea",
  kgPerTurn: 0.56,
  fillSpread: 0.022,
  catchScatter: 0.013,
  targetKgPerHa: 200,
  haPerFill: 30,
  catchRpm: [55, 55],
};

/** Its meter is driven by a ground wheel and cranked by hand for a catch. */
export const starter: Bin = {
  bin: "3",
  product: "starter fertiliser",
  kgPerTurn: 0.18,
  fillSpread: 0.013,
  catchScatter: 0.011,
  targetKgPerHa: 60,
  haPerFill: 60,
  catchRpm: [32, 40],
};

export const bins: readonly Bin[] = [wheat, pea, starter];

/** Turns of the catches of one fill: 15 and 30 are always there, so that a constant mass can show itself. */
export const turnPlans: readonly (readonly number[])[] = [
  [15, 20, 30],
  [15, 15, 30, 30],
  [15, 20, 20, 30],
  [15, 20, 20, 30, 30],
  [15, 15, 20, 20, 30, 30],
];

/** Turns of the catches of a fill that holds a planted fault. */
export const plannedFaultTurns: readonly number[] = [30, 15, 20, 30, 20];

const drillingDays = [
  "2026-03-24",
  "2026-03-25",
  "2026-03-27",
  "2026-03-30",
  "2026-03-31",
  "2026-04-02",
  "2026-04-03",
  "2026-04-07",
  "2026-04-08",
];

/**
 * When the first catch of a fill was taken. The starter is refilled every morning, seed twice a day; wheat is
 * drilled first, then pea.
 */
export function startOfFill(bin: Bin, fill: number): { day: string; minutes: number } {
  if (bin === starter) {
    return { day: dayAt(fill - 1), minutes: 6 * 60 + 20 };
  }
  const seedFill = (bin === wheat ? 0 : fillsPerBin) + fill - 1;
  const afternoon = seedFill % 2 === 1;
  return { day: dayAt(Math.floor(seedFill / 2)), minutes: afternoon ? 13 * 60 + 5 : 7 * 60 + 10 };
}

function dayAt(index: number): string {
  const day = drillingDays[index];
  if (day === undefined) {
    throw new RangeError(`The season has ${drillingDays.length} days, not ${index + 1}.`);
  }
  return day;
}
