import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** A source of chance with a fixed beginning: the same seed gives the same numbers on every machine. */
export interface Chance {
  /** Normal deviate with mean 0 and standard deviation 1. */
  readonly normal: () => number;
  /** Whole number from `from` to `to`, both included. */
  readonly whole: (from: number, to: number) => number;
  /** The same items in a random order. */
  readonly shuffled: <T>(items: readonly T[]) => T[];
}

/** @param seed whole number */
export function chance(seed: number): Chance {
  const source = xoroshiro128plus(seed);
  const whole = (from: number, to: number): number => uniformInt(source, from, to);
  return {
    normal: () => polarNormal(() => 2 * uniformFloat64(source) - 1),
    whole,
    shuffled: (items) => shuffle(items, whole),
  };
}

/** Marsaglia's polar method, without its second deviate so that every call stands alone. */
function polarNormal(uniform: () => number): number {
  for (;;) {
    const u = uniform();
    const v = uniform();
    const square = u * u + v * v;
    if (square > 0 && square < 1) {
      return u * Math.sqrt((-2 * Math.log(square)) / square);
    }
  }
}

/** Fisher–Yates, by drawing from what is left. */
function shuffle<T>(items: readonly T[], whole: (from: number, to: number) => number): T[] {
  const left = [...items];
  return items.flatMap(() => left.splice(whole(0, left.length - 1), 1));
}
