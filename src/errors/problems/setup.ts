import type { NoFacts } from "./facts.ts";

/** What a value of a setup would have to be. */
export interface SetupNeeds {
  readonly "setup-object": NoFacts;
  readonly "setup-list": NoFacts;
  readonly "setup-text": NoFacts;
  readonly "setup-name": NoFacts;
  readonly "setup-above-0": NoFacts;
  readonly "setup-at-least-0": NoFacts;
  readonly "setup-percentage": { readonly low: number; readonly high: number };
  readonly "setup-between": { readonly low: number; readonly high: number };
  readonly "setup-whole-from-1": NoFacts;
  readonly "setup-whole-up-to": { readonly most: number };
  readonly "setup-date": NoFacts;
  readonly "setup-no-such-date": NoFacts;
  readonly "setup-one-of": { readonly values: readonly string[] };
  readonly "setup-unit": { readonly units: readonly string[] };
  readonly "setup-kind": { readonly kinds: readonly string[] };
  readonly "setup-finding": NoFacts;
  /** Of a library of spreads: the newest version of its format that is read. */
  readonly "setup-version": { readonly newest: number };
  // together with other values
  readonly "setup-span-reversed": NoFacts;
  readonly "setup-no-step": NoFacts;
  readonly "setup-step-names": NoFacts;
  readonly "setup-step-unknown": NoFacts;
  readonly "setup-bin-twice": NoFacts;
  readonly "setup-bin-open": NoFacts;
  readonly "setup-no-book-value": NoFacts;
  readonly "setup-rates-reversed": NoFacts;
  readonly "setup-figure-missing": { readonly key: string };
  readonly "setup-more-left-than-filled": NoFacts;
  readonly "setup-rows-shut": NoFacts;
  readonly "setup-bushel": NoFacts;
}

/** What stands there instead. */
export interface SetupValue {
  /** How to name it, where quoting it would mislead; null: as any text, or nothing. */
  readonly shape: "list" | "object" | "quoted" | "bare" | null;
  readonly value: string;
  /** The key with its example, as JSON; null: there is none. */
  readonly example: string | null;
}

export type SetupProblems = {
  readonly [K in keyof SetupNeeds]: SetupNeeds[K] & SetupValue;
} & {
  /** Keys that may stand there, and the one that may be meant. */
  readonly "setup-key-unknown": {
    readonly key: string;
    readonly known: readonly string[];
    readonly near: string | null;
  };
  /** A key under its old name and under the one it has now. */
  readonly "setup-key-twice": { readonly old: string; readonly now: string };
  /** A key of another kind of drive or of response. */
  readonly "setup-key-of-other-kind": { readonly key: string };
};

/** Which value of a setup is wrong says its path; all of these have the one code, in a library of spreads another. */
export const setupCode = "setup-invalid";
export const spreadsCode = "spreads-invalid";
