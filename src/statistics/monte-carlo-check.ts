import { quickselect } from "simple-statistics";
import { at } from "../errors/at.ts";
import type { RandomStream } from "../numeric/random.ts";
import { checkInputs, finite, type Input, type Measurement } from "./propagation.ts";

/** It moves values of whatever has places, in place; only its types ask for a list. */
const select: (values: Float64Array, place: number, left: number, right: number) => void =
  quickselect as never;

export interface MonteCarloCheck {
  /** Made. */
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
 * @param draws   the most that are made
 * @param random  seeded stream; the same seed gives the same check
 * @param enough  a standard error of the ends at which no more are drawn, asked after every 10,000; default 0: all are
 * Source         JCGM 101:2008 (GUM supplement 1), clause 7, draws in blocks until the ends are known well enough 7.9; scaled t
 *                for inputs with finite df, 6.4.9
 */
export function monteCarloCheck(
  measurement: Measurement,
  inputs: readonly Input[],
  level: number,
  draws: number,
  random: RandomStream,
  seed: number,
  enough = 0,
): MonteCarloCheck {
  checkInputs(inputs);
  const drawing = drawingOf(measurement, inputs, draws, random);
  let ends = intervalOf(drawing.more(), level);
  while (drawing.made() < draws && !(ends.endError <= enough))
    ends = intervalOf(drawing.more(), level);
  const { mean, variance } = drawing.moments();
  return {
    draws: drawing.made(),
    seed,
    mean: finite(mean),
    standardDeviation: Math.sqrt(variance),
    ...ends,
  };
}

/** Probabilistically symmetric interval of draws, and the standard error of its less certain end. */
function intervalOf(
  draws: Float64Array,
  level: number,
): Pick<MonteCarloCheck, "lower" | "upper" | "endError"> {
  const tail = (1 - level) / 2;
  const [lower, upper] = [quantileOf(draws, tail), quantileOf(draws, 1 - tail)];
  return {
    lower: lower.value,
    upper: upper.value,
    endError: Math.max(lower.standardError, upper.standardError),
  };
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

/** So many draws are made at a time: the block of the source. */
const block = 10_000;

/**
 * Draws in blocks, with the mean and variance of all that were made. An input is drawn after the other, because a loop that does
 * one thing is soon compiled; sums are taken about the first result, which lies among the others.
 */
function drawingOf(
  measurement: Measurement,
  inputs: readonly Input[],
  most: number,
  random: RandomStream,
) {
  const drawn = new Float64Array(block * inputs.length);
  const values = inputs.map(({ value }) => value);
  const results = new Float64Array(most);
  let [made, origin, total, squares] = [0, 0, 0, 0];
  return {
    made: () => made,
    /** All results, in any order, with those of one more block. */
    more: (): Float64Array => {
      const here = Math.min(block, most - made);
      for (const [i, input] of inputs.entries())
        draw(input, drawn.subarray(i * block, i * block + here), random);
      for (let k = 0; k < here; k++) {
        for (let i = 0; i < values.length; i++) values[i] = at(drawn, i * block + k);
        const result = measurement(values);
        if (made + k === 0) origin = result;
        const apart = result - origin;
        total += apart;
        squares += apart * apart;
        results[made + k] = result;
      }
      made += here;
      return results.subarray(0, made);
    },
    moments: () => ({
      mean: origin + total / made,
      variance: Math.max(0, squares - (total * total) / made) / (made - 1),
    }),
  };
}

/** Fills a list with draws of an input. */
function draw(input: Input, into: Float64Array, random: RandomStream): void {
  const { value, standardUncertainty } = input;
  const deviate = deviateOf(input, random);
  for (let k = 0; k < into.length; k++) into[k] = value + standardUncertainty * deviate();
}

/** One of an input's law, in units of its standard uncertainty, at every call. */
function deviateOf({ law, df }: Input, random: RandomStream): () => number {
  switch (law) {
    case "rectangular":
      return () => Math.sqrt(3) * (2 * random.uniform() - 1);
    case "normal":
      return random.normal;
    case "t":
      return df === null ? random.normal : random.studentT(df);
  }
}
