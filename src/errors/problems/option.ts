import type { NoFacts } from "./facts.ts";

/** What the value of an option would have to be. */
export interface OptionNeeds {
  readonly fraction: NoFacts;
  readonly positive: NoFacts;
  readonly "positive-or-null": NoFacts;
  readonly "not-negative": NoFacts;
  readonly between: { readonly low: number; readonly high: number };
  readonly count: { readonly least: number };
  readonly text: NoFacts;
  readonly list: NoFacts;
  /** Few of them, and many. */
  readonly "one-of": { readonly choices: readonly string[] };
  readonly listed: { readonly choices: readonly string[] };
  /** Nobody knows an option of this name. */
  readonly "known-name": { readonly names: readonly string[] };
}

export interface OptionNeedOf<K extends keyof OptionNeeds> {
  readonly need: K;
  readonly facts: OptionNeeds[K];
}

export type OptionNeed = { readonly [K in keyof OptionNeeds]: OptionNeedOf<K> }[keyof OptionNeeds];
