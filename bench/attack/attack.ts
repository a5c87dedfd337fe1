import type { RandomStream } from "../../src/numeric/random.ts";

/**
 * What became of one thing tried · refused: with a message that says what was found, needed and to be done · over limit:
 * refused by a limit that the message names · asked: answered, with a caution that names what is odd · right: answered, and
 * the answer is the true one · wrong: answered otherwise without a word · failed: an error that is none of the library's, or
 * no answer in time.
 */
export const outcomes = ["refused", "over limit", "asked", "right", "wrong", "failed"] as const;
export type Outcome = (typeof outcomes)[number];

export interface Tried {
  /** Of what was tried, so that one can be tried again by itself. */
  readonly name: string;
  readonly outcome: Outcome;
}

/** One way to do harm: tries inputs, or injects faults, as many as `effort` says. */
export interface Attack {
  readonly name: string;
  /** What is tried, in one line of the page. */
  readonly about: string;
  /** Whether faults are injected, of which "right" are survived, instead of inputs tried. */
  readonly faults?: boolean;
  readonly run: (random: RandomStream, effort: number) => AsyncIterable<Tried>;
}

/** Seconds of computing that an answer or a refusal may take. */
const seconds = 5;

/** What an answer is, judged by time too: what comes too late is a failure, however right. */
export async function inTime(answer: () => Outcome | Promise<Outcome>): Promise<Outcome> {
  const start = process.cpuUsage();
  let outcome: Outcome;
  try {
    outcome = await answer();
  } catch {
    return "failed";
  }
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1e6 > seconds ? "failed" : outcome;
}

/** A whole number from 0 up to but not including `end`. */
export function below(random: RandomStream, end: number): number {
  return random.integer(0, end - 1);
}

export function oneOf<T>(random: RandomStream, values: readonly [T, ...T[]]): T {
  return values[below(random, values.length)] ?? values[0];
}
