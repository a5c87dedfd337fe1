import type { OptionNeedOf, OptionNeeds } from "./problems/option.ts";

/** How it is said in one language that an option cannot be what it is. */
export interface OptionTemplates {
  readonly needs: {
    readonly [K in keyof OptionNeeds]: (facts: OptionNeeds[K]) => string;
  };
  readonly text: (f: OptionSaid) => string;
  /** Of a name that no option has. */
  readonly unknown: (f: OptionSaid) => string;
}

interface OptionSaid {
  readonly option: string;
  readonly received: string;
  readonly allowed: string;
}

export function neededText<K extends keyof OptionNeeds>(
  { need, facts }: OptionNeedOf<K>,
  say: OptionTemplates,
): string {
  return say.needs[need](facts);
}

export function receivedText(value: unknown): string {
  return typeof value === "string" ? JSON.stringify(value) : String(value);
}
