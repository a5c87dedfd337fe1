import type { SetupNeeds, SetupValue } from "../../errors/problems/setup.ts";
import type { Problem } from "../../errors/problems.ts";

/** What a value that the schema refuses would have to be. */
export type SetupNeed = {
  readonly [K in keyof SetupNeeds]: { readonly problem: K; readonly facts: SetupNeeds[K] };
}[keyof SetupNeeds];

/** A need as the message of a check: a schema keeps no more than a text of why it refuses. */
export function messageOf(need: SetupNeed): string {
  return JSON.stringify(need);
}

/** The problem of a value that a check refused with such a message. */
export function problemOf(message: string, found: SetupValue): Problem {
  const { problem, facts }: SetupNeed = JSON.parse(message);
  // Each problem of a setup has the facts of its need and those of the value; the compiler cannot see that of all at once.
  return { problem, facts: { ...facts, ...found } } as Problem;
}
