import { makeCatch } from "../../../src/data/make-catch.ts";
import type { Catch } from "../../../src/data/types.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";

/** Long-run delivery of the simulated meter, kg/turn. */
export const meanDelivery = 0.3;

/** How the error of a catch grows with its turns t. Every law has the stated size at 20 turns. */
export type ErrorLaw = "constant" | "proportional" | "squared" | "mixture";

const errorAt20: Readonly<Record<ErrorLaw, (turns: number) => number>> = {
  constant: () => 1,
  proportional: (turns) => turns / 20,
  squared: (turns) => (turns / 20) ** 2,
  mixture: (turns) => (1 + turns / 20 + (turns / 20) ** 2) / 3,
};

/** A draw with mean 0 and variance 1. */
export type Noise = (random: RandomStream) => number;

export const noises = {
  normal: (random) => random.normal(),
  // t with 5 degrees of freedom, scaled to variance 1.
  heavyTails: (random) =>
    (random.normal() / Math.sqrt(random.chiSquared(5) / 5)) * Math.sqrt(3 / 5),
  skew: (random) => (random.gamma(2) - 2) / Math.SQRT2,
  twoHumps: (random) =>
    (random.uniform() < 0.5 ? -1 : 1) * 0.95 + random.normal() * Math.sqrt(1 - 0.95 ** 2),
} satisfies Record<string, Noise>;

/** A season of one meter as the study simulates it; relative sizes are fractions of the mean delivery. */
export interface Season {
  /** Turns of the catches of each fill, newest fill last. */
  readonly turns: readonly (readonly number[])[];
  readonly fillSpread: number;
  /** Of a 20-turn catch. */
  readonly catchScatter: number;
  readonly errorLaw?: ErrorLaw;
  readonly fillNoise?: Noise;
  /** Correlation of a fill with the one before. */
  readonly serialCorrelation?: number;
  /** Log-normal standard deviation by which the catch scatter itself differs between fills. */
  readonly scatterVaries?: number;
  /** Scale division, kg; gross and tare are both rounded to it. */
  readonly divisionKg?: number;
  /** Chance that an earlier fill's catch holds its tare of 0.4 kg, unnoticed. */
  readonly tareLeftIn?: number;
  /** Chance that a fill is 8 % off. */
  readonly oddFill?: number;
}

export interface Simulated {
  readonly catches: readonly Catch[];
  /** True delivery of every fill. */
  readonly fills: readonly number[];
  /** True delivery of one fill more. */
  readonly nextFill: number;
  /** One catch more of the newest fill, 20 turns, as weighed, kg. */
  readonly nextCatchKg: number;
}

const tareKg = 0.4;

/** Draws one season. */
export function simulate(season: Season, random: RandomStream): Simulated {
  const departures = departuresOf(season, season.turns.length + 1, random);
  const deliveries = departures.map((departure) => meanDelivery * (1 + departure));
  const fills = deliveries.slice(0, -1);
  const weigh = (fill: number, turns: number, scatter: number) =>
    weighed(season, (fills[fill] ?? meanDelivery) * turns, turns, scatter, random);
  const newest = fills.length - 1;
  const scatters = fills.map(() => scatterOf(season, random));
  const catches = season.turns.flatMap((turnsOfFill, fill) =>
    turnsOfFill.map((turns, i) => {
      const left =
        fill < newest && season.tareLeftIn !== undefined && random.uniform() < season.tareLeftIn;
      const net = weigh(fill, turns, scatters[fill] ?? season.catchScatter);
      return simulatedCatch(fill + 1, i + 1, turns, net + (left ? tareKg : 0));
    }),
  );
  return {
    catches,
    fills,
    nextFill: deliveries.at(-1) ?? meanDelivery,
    nextCatchKg: weigh(newest, 20, scatters[newest] ?? season.catchScatter),
  };
}

function departuresOf(season: Season, count: number, random: RandomStream): number[] {
  const noise = season.fillNoise ?? noises.normal;
  const correlation = season.serialCorrelation ?? 0;
  const result: number[] = [];
  let state = noise(random);
  for (let fill = 0; fill < count; fill++) {
    const odd = season.oddFill !== undefined && random.uniform() < season.oddFill ? 0.08 : 0;
    result.push(season.fillSpread * state + odd);
    state = correlation * state + Math.sqrt(1 - correlation ** 2) * noise(random);
  }
  return result;
}

function scatterOf({ catchScatter, scatterVaries }: Season, random: RandomStream): number {
  return scatterVaries === undefined
    ? catchScatter
    : catchScatter * Math.exp(scatterVaries * random.normal());
}

function weighed(
  { errorLaw = "proportional", divisionKg }: Season,
  massKg: number,
  turns: number,
  scatter: number,
  random: RandomStream,
): number {
  const error =
    scatter * meanDelivery * 20 * Math.sqrt(errorAt20[errorLaw](turns)) * random.normal();
  if (divisionKg === undefined) return massKg + error;
  // A bag of its own each time: both readings fall anywhere between two marks of the scale.
  const tare = tareKg + divisionKg * (random.uniform() - 0.5);
  const read = (mass: number) => Math.round(mass / divisionKg) * divisionKg;
  return read(massKg + error + tare) - read(tare);
}

function simulatedCatch(fill: number, one: number, turns: number, netKg: number): Catch {
  return makeCatch({ bin: "1", product: "simulated", fill, catch: one, turns, netKg });
}
