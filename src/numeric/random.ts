import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";
import { requirePositive, requireWhole } from "./domain.ts";
import { realPower, wholePower } from "./powers.ts";

/**
 * A reproducible source of random numbers. The same seed and stream give the same numbers on every machine: uniform and
 * whole numbers to the bit, the others to the last digit or two, where machines round logarithms differently.
 */
export interface RandomStream {
  /** Uniform on [0, 1). */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
  /** Whole number from `lower` to `upper`, both included. */
  integer(lower: number, upper: number): number;
  /** The items in random order, as a new array. */
  shuffle<T>(items: readonly T[]): T[];
  /** Gamma with scale 1. */
  gamma(shape: number): number;
  chiSquared(df: number): number;
  /** Student's t with degrees of freedom above 0: a value at every call of what it returns. */
  studentT(df: number): () => number;
}

/**
 * Random numbers from a seed: the generator xoroshiro128+ with a state scrambled from seed and stream number.
 * Streams of one seed are independent for every practical purpose: give each worker, replicate or chunk its own, and
 * results do not depend on how the work was divided.
 *
 * @param seed whole number of at least 0
 * @param stream whole number of at least 0, default 0
 * @throws NumericalError when seed or stream is not such a number
 */
export function randomStream(seed: number, stream = 0): RandomStream {
  requireWhole("randomStream", "seed", seed, 0);
  requireWhole("randomStream", "stream", stream, 0);
  const generator = xoroshiro128plusFromState(scrambledState(seed, stream));
  const uniform = () => uniformFloat64(generator);
  const normal = normalSource(uniform);
  return {
    uniform,
    normal,
    integer: (lower, upper) => {
      requireWhole("integer", "lower", lower, Number.MIN_SAFE_INTEGER);
      requireWhole("integer", "upper", upper, lower);
      return uniformInt(generator, lower, upper);
    },
    shuffle: (items) => shuffled(items, (last) => uniformInt(generator, 0, last)),
    gamma: (shape) => {
      requirePositive("gamma", "shape", shape);
      return gammaVariate(shape, uniform, normal);
    },
    chiSquared: (df) => {
      requirePositive("chiSquared", "df", df);
      return 2 * gammaVariate(0.5 * df, uniform, normal);
    },
    studentT: (df) => {
      requirePositive("studentT", "df", df);
      return () => studentTVariate(df, uniform);
    },
  };
}

/** Four state words, each a hash of every bit of seed and stream, so that neighbouring seeds share nothing. */
function scrambledState(seed: number, stream: number): number[] {
  const words = [seed, seed / 2 ** 32, stream, stream / 2 ** 32].map((word) => word >>> 0);
  const state = [1, 2, 3, 4].map((salt) =>
    words.reduce((hash, word) => scramble(hash + word + 0x9e3779b9), scramble(salt)),
  );
  // The generator must not start from four zeros.
  return state.every((word) => word === 0) ? [1, 0, 0, 0] : state;
}

/** Every input bit changes about half of the output bits (finaliser of MurmurHash3 by Appleby, public domain). */
function scramble(word: number): number {
  let hash = word | 0;
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return hash ^ (hash >>> 16);
}

/** Marsaglia's polar method; it makes two normal values at a time and keeps the second for the next call. */
function normalSource(uniform: () => number): () => number {
  let spare: number | null = null;
  return () => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    let x: number;
    let y: number;
    let square: number;
    do {
      x = 2 * uniform() - 1;
      y = 2 * uniform() - 1;
      square = x * x + y * y;
    } while (square >= 1 || square === 0);
    const stretch = Math.sqrt((-2 * Math.log(square)) / square);
    spare = y * stretch;
    return x * stretch;
  };
}

/** Marsaglia and Tsang 2000, ACM Transactions on Mathematical Software 26, 363–372. */
function gammaVariate(shape: number, uniform: () => number, normal: () => number): number {
  if (shape < 1) {
    // Their section 6: a gamma of shape + 1 times U^(1/shape) has the smaller shape. 1 − U is never 0.
    return gammaVariate(shape + 1, uniform, normal) * realPower(1 - uniform(), 1 / shape);
  }
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const z = normal();
    const v = wholePower(1 + c * z, 3);
    if (v <= 0) continue;
    const u = 1 - uniform();
    // Their squeeze, which takes nearly all without the logarithms of the rule beside it, and none that the rule refuses.
    const square = z * z;
    if (u < 1 - 0.0331 * square * square) return d * v;
    if (Math.log(u) < 0.5 * square + d * (1 - v + Math.log(v))) return d * v;
  }
}

/**
 * Bailey 1994, Mathematics of Computation 62, 779–781: the polar method for t, where a normal value and a gamma variate would
 * take four times the uniform numbers. Of a pair only one may be used, since the two depend on each other.
 */
function studentTVariate(df: number, uniform: () => number): number {
  let x: number;
  let square: number;
  do {
    x = 2 * uniform() - 1;
    const y = 2 * uniform() - 1;
    square = x * x + y * y;
  } while (square >= 1 || square === 0);
  return x * Math.sqrt((df * Math.expm1((-2 / df) * Math.log(square))) / square);
}

/** Fisher and Yates: each place in turn, from the last, gets one of the items not placed yet. */
function shuffled<T>(items: readonly T[], upTo: (last: number) => number): T[] {
  const result = [...items];
  for (let last = result.length - 1; last > 0; last--) {
    const picked = upTo(last);
    [result[last], result[picked]] = [result[picked] as T, result[last] as T];
  }
  return result;
}
