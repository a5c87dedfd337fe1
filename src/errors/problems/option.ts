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
  /** Names something of a file that is not in it. */
  readonly "bin-in": { readonly source: string };
  readonly "catch-in": { readonly source: string };
  /** A catch that several rows could be; what they differ in, and by what the one meant has to be named. */
  readonly "one-catch": {
    readonly by: "bin" | "fill" | "product";
    readonly names: readonly string[];
  };
  readonly reason: NoFacts;
  readonly name: NoFacts;
  /** A key that is given for all rows, of which the file has a column. */
  readonly "no-column-beside": { readonly column: string };
  readonly "sheet-of-workbook": NoFacts;
  readonly "some-catch-counts": NoFacts;
  readonly "as-measured": NoFacts;
  readonly "different-names": NoFacts;
  readonly "some-numbers": NoFacts;
  readonly "level-with-margin": NoFacts;
  readonly "few-rows": { readonly most: number };
  /** Nobody knows an option of this name. */
  readonly "known-name": { readonly names: readonly string[] };
}

export interface OptionNeedOf<K extends keyof OptionNeeds> {
  readonly need: K;
  readonly facts: OptionNeeds[K];
}

export type OptionNeed = { readonly [K in keyof OptionNeeds]: OptionNeedOf<K> }[keyof OptionNeeds];
