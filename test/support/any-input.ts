import fc, { type GeneratorValue } from "fast-check";
import { EvencatchError } from "../../src/errors/errors.ts";

/** Draws the values of one case; fast-check shrinks them where the case fails. */
export interface Draw {
  /** Any number there is: also none, infinite, vast and tiny ones. */
  readonly number: () => number;
  /** A number that somebody might have measured. */
  readonly likely: () => number;
  readonly chance: () => number;
  readonly whole: (most: number) => number;
  readonly oneOf: <T>(values: readonly T[]) => T;
  readonly list: <T>(one: () => T, most?: number) => readonly T[];
  readonly text: () => string;
}

const hard = [
  0,
  -0,
  1,
  -1,
  Number.NaN,
  Infinity,
  -Infinity,
  5e-324,
  1e-300,
  1e300,
  Number.MAX_VALUE,
  1e16,
  1e-16,
];
const number = fc.oneof(fc.constantFrom(...hard), fc.double(), fc.double({ min: -10, max: 100 }));
const likely = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: 0.01, max: 100, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom(1, 2, 2) },
  { weight: 1, arbitrary: number },
);
const chance = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0.001, max: 0.999, noNaN: true }) },
  { weight: 1, arbitrary: number },
);

export function drawing(g: GeneratorValue): Draw {
  const whole = (most: number) => g(fc.integer, { min: 0, max: most });
  return {
    number: () => g(() => number),
    likely: () => g(() => likely),
    chance: () => g(() => chance),
    whole,
    oneOf: (values) => g(() => fc.constantFrom(...values)),
    list: (one, most = 8) => Array.from({ length: whole(most) }, one),
    text: () => g(() => fc.string({ unit: "binary", maxLength: 8 })),
  };
}

/** Where in a result a number is that is none, or a text that tells of one. */
export function notANumber(result: unknown, place = "result"): string | null {
  if (typeof result === "number") return Number.isNaN(result) ? place : null;
  if (typeof result === "string")
    return /\bNaN\b|\bundefined\b|\[object/.test(result) ? place : null;
  if (typeof result !== "object" || result === null) return null;
  for (const [name, value] of Object.entries(result)) {
    const found = notANumber(value, `${place}.${name}`);
    if (found !== null) return found;
  }
  return null;
}

/**
 * What a function may do with any input: answer without a number that is none, or refuse with an error of its own that says
 * something.
 *
 * @returns what was wrong; null: nothing
 */
export async function wrongWith(call: () => unknown): Promise<string | null> {
  try {
    return notANumber(await call());
  } catch (error) {
    if (!(error instanceof EvencatchError))
      return error instanceof Error ? (error.stack ?? "") : String(error);
    return error.message === "" ? "an error that says nothing" : null;
  }
}
