import { at } from "../../../src/errors/at.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { type Band, type Bands, bandOf, level } from "../lending/outcomes.ts";
import type { Library } from "./library.ts";
import { type Change, catchesOf, deliveryOf, tolerance, trueBins } from "./logs.ts";

const fillsOfSeason = 12;
const catchesOfFill = 3;
/** After so many fills the bands are looked at. */
export const looks = [1, 2, 3, 5, 9] as const;
const options = { level, tolerance, scaleDivisionKg: null, shiftOfInterest: 0.05 };

export interface SeasonOutcome {
  /** Fills after which the meter was not let be. */
  readonly alarms: readonly number[];
  /** By `looks`; only of steady seasons. */
  readonly today: Bands;
  readonly nextFill: Bands;
}

/** Three bins through a season, asked after every fill; the same season for the same replicate. */
export function season(
  library: Library,
  change: Change | null,
  replicate: number,
  seed: number,
): SeasonOutcome {
  const random = randomStream(seed + 7919 * replicate);
  const truth = trueBins(fillsOfSeason + 1, random, change);
  const catches = truth.flatMap((bin) => catchesOf(bin, fillsOfSeason, catchesOfFill, random));
  const own = at(truth, 0);
  const alarms: number[] = [];
  const today: (Band | null)[] = [];
  const nextFill: (Band | null)[] = [];
  for (let fill = 1; fill <= fillsOfSeason; fill++) {
    const { meters } = library.fitModel(
      catches.filter((one) => one.fill <= fill),
      { level, scaleDivisionKg: null },
    );
    const meter = at(meters, 0);
    const { verdict } = library.drift(meter, options, meters);
    if (!quiet.has(verdict)) alarms.push(fill);
    if (change === null && looks.some((look) => look === fill)) {
      const { estimate } = library.delivery(meter, { ...options, varianceLaw: "proportional" });
      today.push(bandOf(estimate, deliveryOf(own, fill)));
      const answer = library.acrossFills(meter, options);
      nextFill.push(bandOf(answer.nextFill, deliveryOf(own, fill + 1)));
    }
  }
  return { alarms, today, nextFill };
}

const quiet = new Set(["too few fills", "not asked", "steady"]);
