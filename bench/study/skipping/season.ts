import { mean } from "simple-statistics";
import { fillsTogether } from "../../../src/model/across-fills.ts";
import { type PooledScatter, pooledScatter } from "../../../src/model/catch-scatter.ts";
import type { Fill } from "../../../src/model/meters.ts";
import { type NextFillError, nextFillError } from "../../../src/model/rate-error.ts";
import { deliveryOf, noTotals, totalsOf } from "../../../src/model/totals.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import type { ErrorLaw } from "../../../src/statistics/expected-loss.ts";

/** One meter over a season: its fills, each caught a few times. */
export interface Season {
  readonly fills: number;
  /** True spread of the fills, relative. */
  readonly spread: number;
  /** What the drive is then left at; a figure that the fills miss by so much on average. */
  readonly offCentre: number | "mean of fills";
  /** Correlation of neighbouring fills, default 0. */
  readonly likeness?: number;
}

/** What the library makes of a season, and what is true. */
export interface SeasonSeen {
  readonly error: NextFillError;
  /** The law of the next fill's error for someone who knows the true mean and spread. */
  readonly known: ErrorLaw;
}

export const catchScatter = 0.015;
export const catchesPerFill = 3;
const turnsPerCatch = 20;
const level = 0.95;

/** The true mean delivery is 1 kg/turn. */
export function simulatedSeason(season: Season, stream: RandomStream): SeasonSeen {
  const { spread, offCentre } = season;
  const fills = trueDeliveries(season, stream).map((delivery) => caught(delivery, stream));
  const across = fillsTogether([fills], {
    level,
    scatter: scatterOf(fills),
    outside: null,
    divisionKg: null,
    inTimeOrder: true,
  });
  const setTo = offCentre === "mean of fills" ? across.nextFill.value : 1 / (1 + offCentre);
  const error = nextFillError(across, setTo);
  if (error === null) throw new Error("a season of fills that agree exactly");
  return {
    error,
    known: { location: 1 / setTo - 1, scale: spread / setTo, df: Number.POSITIVE_INFINITY },
  };
}

function trueDeliveries(
  { fills, spread, likeness = 0 }: Season,
  stream: RandomStream,
): readonly number[] {
  const fresh = Math.sqrt(1 - likeness ** 2);
  let deviation = stream.normal();
  return Array.from({ length: fills }, (_, i) => {
    if (i > 0) deviation = likeness * deviation + fresh * stream.normal();
    return 1 + spread * deviation;
  });
}

function caught(delivery: number, stream: RandomStream): Fill {
  const totals = totalsOf(
    Array.from({ length: catchesPerFill }, () => ({
      turns: turnsPerCatch,
      netKg: turnsPerCatch * (delivery + catchScatter * stream.normal()),
    })),
  );
  return {
    bin: "1",
    product: "wheat",
    fill: 1,
    number: 1,
    season: null,
    seasonRank: 0,
    takenAt: null,
    catches: [],
    weighings: [],
    leftOut: [],
    notLent: [],
    totals,
    scatterTotals: noTotals,
    delivery: deliveryOf(totals),
  };
}

/** Pooled over the fills, without the test whether they scatter alike. */
function scatterOf(fills: readonly Fill[]): PooledScatter {
  const df = fills.length * (catchesPerFill - 1);
  const variance = (mean(fills.map(({ totals }) => totals.scatterSum)) * fills.length) / df;
  return { ...pooledScatter([]), variance, df, fills: fills.length };
}
