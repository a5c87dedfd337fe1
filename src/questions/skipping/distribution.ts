import { max } from "simple-statistics";
import type { FillsTogether } from "../../model/across-fills.ts";
import {
  type AssumedSetting,
  basisOfExpectation,
  lawsOfExpectation,
  type NextFillError,
  possibleSidesOf,
} from "../../model/rate-error.ts";
import { statedChance } from "../../model/skip-chance.ts";
import { kept, keptWith } from "../../numeric/kept.ts";
import type { Estimate } from "../../results/estimate.ts";
import { shareBeyondBound } from "../../statistics/exceedance-bound.ts";
import {
  chanceBeyond,
  type ErrorLaw,
  errorDensity,
  expectedAbsolute,
} from "../../statistics/expected-loss.ts";
import { generalizedLimit } from "../../statistics/generalized-interval.ts";
import type { NormalSample } from "../../statistics/normal-sample.ts";
import { howeToleranceFactor } from "../../statistics/tolerance-interval.ts";
import { meanSidesOver } from "../../statistics/without-scatter.ts";
import type {
  ChanceOfError,
  CommonPractice,
  DensityPoint,
  ExpectedError,
  ShareOfFills,
  SkippingOptions,
} from "./result.ts";

export const boundConfidence = 0.9;
/** The share of fills beyond a limit that stays possible, by limit: every limit's chance, and any of several fills, ask for it. */
export const boundOfShare = keptWith((fills: NormalSample) =>
  kept((limit) => shareBeyondBound(fills, limit, boundConfidence)),
);
const practice = { lower: 0.1, upper: 0.12, source: "common practice, no source" } as const;
const placesOnDensity = 161;
const scalesShown = 4;
const beyondLimit = 1.15;

/** The chance by the law of the next fill, its bound by the fills themselves; none below the least that may be stated. */
export function chanceOfError(
  { law, fills, leastChance: least }: NextFillError,
  limit: number,
): ChanceOfError {
  const { above, below, either } = chanceBeyond(law, limit);
  const stated = statedChance(either, least);
  // Far out the t tail is the larger of the two; a bound below the chance it bounds would only puzzle.
  const upperBound = Math.max(stated, boundOfShare(fills)(limit));
  return {
    limit,
    heavy: statedChance(above, least),
    light: statedChance(below, least),
    either: stated,
    upperBound,
  };
}

export function chancesOfError(
  error: NextFillError,
  limits: readonly number[],
): readonly ChanceOfError[] {
  return limits.map((limit) => chanceOfError(error, limit));
}

/** @returns null when the degrees of freedom leave no mean */
export function expectedErrorOf(error: NextFillError): ExpectedError | null {
  const sides = meanSidesOver(lawsOfExpectation(error));
  const counted = expectedAbsolute(error.law);
  if (sides === null || counted === null) return null;
  const { excess: heavy, shortfall: light } = sides;
  const possible = possibleSidesOf(error).map((one) => one.excess + one.shortfall);
  const absolute = heavy + light;
  return {
    heavy,
    light,
    absolute,
    absoluteUpperBound: generalizedLimit(possible, boundConfidence),
    basis: basisOfExpectation(error),
    absoluteWithScatter: error.catchScatter?.isMost && counted > absolute ? counted : null,
  };
}

/** Tolerance interval of the fills' rate errors; null when the fills' spread is not known. */
export function shareOfFills(
  { fills, spread, nextFill }: FillsTogether,
  { nextKgPerTurn }: AssumedSetting,
  { content, level }: SkippingOptions,
): ShareOfFills | null {
  if (spread.standardDeviation === null) return null;
  const factor = howeToleranceFactor({ n: fills, df: spread.df }, { content, confidence: level });
  const reach = factor * spread.standardDeviation.value;
  return {
    content,
    factor,
    interval: {
      lower: (nextFill.value - reach) / nextKgPerTurn - 1,
      upper: (nextFill.value + reach) / nextKgPerTurn - 1,
      level,
      about: "proportion of fills",
    },
  };
}

/** @param error  null: too little known for a chance */
export function commonPracticeOf(
  { interval }: Estimate<"fraction">,
  error: NextFillError | null,
): CommonPractice {
  const chance = (limit: number) =>
    error === null ? null : statedChance(chanceBeyond(error.law, limit).either, error.leastChance);
  const farthest =
    interval === null
      ? null
      : Math.max(Math.abs(interval.lower ?? 0), Math.abs(interval.upper ?? 0));
  return {
    ...practice,
    chanceBeyondLower: chance(practice.lower),
    chanceBeyondUpper: chance(practice.upper),
    farthest,
    compared: compare(farthest),
  };
}

function compare(farthest: number | null): CommonPractice["compared"] {
  if (farthest === null) return "unknown";
  if (farthest < practice.lower) return "smaller";
  return farthest > practice.upper ? "larger" : "alike";
}

/** The density over four scales each way and a little beyond the largest limit; every limit is a place of its own. */
export function densityOf(law: ErrorLaw, limits: readonly number[]): readonly DensityPoint[] {
  const reach = beyondLimit * max(limits);
  const from = Math.min(law.location - scalesShown * law.scale, -reach);
  const to = Math.max(law.location + scalesShown * law.scale, reach);
  const even = Array.from(
    { length: placesOnDensity },
    (_, i) => from + ((to - from) * i) / (placesOnDensity - 1),
  );
  const places = new Set([...even, ...limits.flatMap((limit) => [-limit, limit])]);
  return [...places]
    .sort((a, b) => a - b)
    .map((rateError) => ({ rateError, density: errorDensity(law, rateError) }));
}
