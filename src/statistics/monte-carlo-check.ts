import { quickselect } from "simple-statistics";
import { at } from "../errors/at.ts";
import type { RandomStream } from "../numeric/random.ts";
import { checkInputs, finite, type Input, type Measurement } from "./propagation.ts";

/** It moves values of whatever has places, in place; only its types ask for a list. */
const select: (values: Float64Array, place: number, left: number, right: number) => void =
  quickselect as never;

export interface MonteCarloCheck {
  readonly draws: number;
  readonly seed: number;
  readonly mean: number;
  readonly standardDeviation: number;
  /** Probabilistically symmetric interval. */
  readonly lower: number;
  readonly upper: number;
  /** Standard error of the less certain end, from the draws themselves. */
  readonly endError: number;
}

/**
 * The same result by drawing inputs: what the budget's linear sum is checked against.
 *
 * @param random  seeded stream; the same seed gives the same check
 * Source         JCGM 101:2008 (GUM supplement 1), clause 7; scaled t for inputs with finite df, 6.4.9
 */
export function monteCarloCheck(
  measurement: Measurement,
  inputs: readonly Input[],
  level: number,
  draws: number,
  random: RandomStream,
  seed: number,
): MonteCarloCheck {
  checkInputs(inputs);
  const results = drawnResults(measurement, inputs, draws, random);
  const tail = (1 - level) / 2;
  const mean = finite(totalOf(results, (value) => value) / draws);
  const squares = totalOf(results, (value) => (value - mean) ** 2);
  const [lower, upper] = [quantileOf(results, tail), quantileOf(results, 1 - tail)];
  return {
    draws,
    seed,
    mean,
    standardDeviation: Math.sqrt(squares / (draws - 1)),
    lower: lower.value,
    upper: upper.value,
    endError: Math.max(lower.standardError, upper.standardError),
  };
}

/** Plain: what is lost to rounding is a millionth of what the draws themselves leave open. */
function totalOf(values: Float64Array, termOf: (value: number) => number): number {
  let total = 0;
  for (const value of values) total += termOf(value);
  return total;
}

/**
 * A quantile of draws, which are put in order only as far as it takes. So many of n lie below it as a binomial count tells, of
 * standard deviation √(n·p·(1 − p)): the values that many places to either side are a standard error away.
 *
 * Source  JCGM 101:2008 (GUM supplement 1), 7.9; David & Nagaraja, Order Statistics (2003), 7.1
 */
function quantileOf(draws: Float64Array, share: number) {
  const last = draws.length - 1;
  const place = Math.round(share * last);
  const aside = Math.max(1, Math.round(Math.sqrt(draws.length * share * (1 - share))));
  const [below, above] = [Math.max(0, place - aside), Math.min(last, place + aside)];
  select(draws, place, 0, last);
  if (below < place) select(draws, below, 0, place - 1);
  if (above > place) select(draws, above, place + 1, last);
  return { value: at(draws, place), standardError: (at(draws, above) - at(draws, below)) / 2 };
}

/** Tens of thousands of draws: they share one list of values, and what a law needs is worked out before them. */
function drawnResults(
  measurement: Measurement,
  inputs: readonly Input[],
  draws: number,
  random: RandomStream,
): Float64Array {
  const sources = inputs.map((input) => sourceOf(input, random));
  const values = inputs.map(({ value }) => value);
  const results = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw++) {
    for (let i = 0; i < sources.length; i++) values[i] = at(sources, i)();
    results[draw] = measurement(values);
  }
  return results;
}

/** Draws an input at every call. */
function sourceOf(
  { value, standardUncertainty, law, df }: Input,
  random: RandomStream,
): () => number {
  switch (law) {
    case "rectangular": {
      const reach = standardUncertainty * Math.sqrt(3);
      return () => value + reach * (2 * random.uniform() - 1);
    }
    case "normal":
      return () => value + standardUncertainty * random.normal();
    case "t":
      return () =>
        value +
        (standardUncertainty * random.normal()) /
          Math.sqrt(df === null ? 1 : random.chiSquared(df) / df);
  }
}
