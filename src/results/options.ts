import { OptionError } from "../errors/errors.ts";
import type { OptionNeed } from "../errors/problems/option.ts";
import { defaults } from "./defaults.ts";

/** Refuses, by the option's name, a value that cannot be meant. */
export type Rule<T> = (option: string, value: T) => void;

/** An option: its value when none is given, and what it may be. */
export interface Option<T> {
  readonly fallback: T;
  // As a method, so that options of any type stand in one table.
  rule(option: string, value: T): void;
}

export function option<T>(fallback: NoInfer<T>, rule: Rule<T>): Option<T> {
  return { fallback, rule };
}

/** The options of a question by name, each with its default and its rule. */
export type Rules = Readonly<Record<string, Option<unknown>>>;

/** Options as a table of rules resolves them. */
export type OptionsOf<R> = { readonly [K in keyof R]: R[K] extends Option<infer T> ? T : never };

/**
 * Options with what is not given filled in.
 *
 * @param within  in an error, written before the name; for options inside an option
 * @throws        OptionError for a name the table does not have, or a value that cannot be meant
 */
export function resolve<R extends Rules>(
  rules: R,
  given: Partial<OptionsOf<R>>,
  within = "",
): OptionsOf<R> {
  refuseUnknownOptions(given, Object.keys(rules), within);
  const values = new Map<string, unknown>(Object.entries(given));
  const resolved = Object.entries(rules).map(([name, { fallback, rule }]) => {
    const value = values.has(name) ? values.get(name) : fallback;
    rule(`${within}${name}`, value);
    return [name, value];
  });
  // Every name of the table with a value of its type; through a loop the compiler cannot follow that.
  return Object.fromEntries(resolved) as OptionsOf<R>;
}

/** Those that have a value: what nobody knows leaves the default as it is. */
export function known<T extends object>(
  values: T | null | undefined,
): { [K in keyof T]?: NonNullable<T[K]> } {
  const found = Object.entries(values ?? {}).filter(([, value]) => value != null);
  // The same names with fewer of them; through a list of entries the compiler cannot follow that.
  return Object.fromEntries(found) as { [K in keyof T]?: NonNullable<T[K]> };
}

/** Refuses option names nobody knows: a typo must not be silent. */
export function refuseUnknownOptions(given: object, known: readonly string[], within = ""): void {
  const name = Object.keys(given).find((one) => !known.includes(one));
  if (name !== undefined)
    throw new OptionError(`${within}${name}`, "not an option", {
      need: "known-name",
      facts: { names: known },
    });
}

/** The rule that a value fulfils a condition: one that has words, or in words that complete "it must be ...". */
export function such<T>(needed: string | OptionNeed, holds: (value: T) => boolean): Rule<T> {
  return (option, value) => {
    if (!holds(value)) throw new OptionError(option, value, needed);
  };
}

export const fraction = such<number>(
  { need: "fraction", facts: {} },
  (value) => Number.isFinite(value) && value > 0 && value < 1,
);

export const positive = such<number>(
  { need: "positive", facts: {} },
  (value) => Number.isFinite(value) && value > 0,
);

export const positiveOrNull = such<number | null>(
  { need: "positive-or-null", facts: {} },
  (value) => value === null || (Number.isFinite(value) && value > 0),
);

export const notNegative = such<number>(
  { need: "not-negative", facts: {} },
  (value) => Number.isFinite(value) && value >= 0,
);

export const text = such<string>({ need: "text", facts: {} }, (value) => typeof value === "string");

export function between(low: number, high: number): Rule<number> {
  return such(
    { need: "between", facts: { low, high } },
    (value) => typeof value === "number" && value >= low && value <= high,
  );
}

/** A whole number of at least `least`. */
export function count(least: number): Rule<number> {
  return such(
    { need: "count", facts: { least } },
    (value) => Number.isSafeInteger(value) && value >= least,
  );
}

export function oneOf<const T extends string>(...allowed: readonly T[]): Rule<T> {
  return such({ need: "one-of", facts: { choices: allowed } }, (value) => allowed.includes(value));
}

/** The same of a longer list, told as one. */
export function listed<const T extends string>(allowed: readonly T[]): Rule<T> {
  return such({ need: "listed", facts: { choices: allowed } }, (value) => allowed.includes(value));
}

export function orNull<T>(rule: Rule<T>): Rule<T | null> {
  return (option, value) => {
    if (value !== null) rule(option, value);
  };
}

export function each<T>(rule: Rule<T>): Rule<readonly T[]> {
  return (option, values) => {
    if (!Array.isArray(values)) throw new OptionError(option, values, { need: "list", facts: {} });
    for (const value of values) rule(option, value);
  };
}

/** Of an object that is given whole or not at all, what its parts must be. */
export function parts<T>(rules: { readonly [K in keyof T]?: Rule<T[K]> }): Rule<T> {
  return (option, value) => {
    for (const part in rules) rules[part]?.(`${option}.${part}`, Object(value)[part]);
  };
}

/** For what cannot be judged alone: where the catches, or other options, are at hand, it is. */
export function judgedLater<T>(): Rule<T> {
  return () => {};
}

/** Who gave the tolerance: what nobody gave binds less than what somebody did. */
export const toleranceSources = ["option", "setup", "default"] as const;

export type ToleranceFrom = (typeof toleranceSources)[number];

/** What every question is asked with, by whomever. */
export const modelRules = {
  /** Confidence level of every interval, a fraction. */
  level: option(defaults.level, fraction),
  /** Rate error that can be accepted, a fraction. */
  tolerance: option(defaults.tolerance, fraction),
  /** The scale's division, kg; null when unknown. */
  scaleDivisionKg: option(null, positiveOrNull),
};

/** How catch scatter may grow with turns. */
export const varianceLaws = ["proportional", "constant", "squared"] as const;

/** A percentage given for a fraction must not be answered, whoever asks. */
export function requireModelOptions(
  options: OptionsOf<typeof modelRules> & {
    readonly varianceLaw?: (typeof varianceLaws)[number];
  },
): void {
  const { level, tolerance, scaleDivisionKg, varianceLaw } = options;
  // One by one: every question of every meter asks this of the same options.
  modelRules.level.rule("level", level);
  modelRules.tolerance.rule("tolerance", tolerance);
  modelRules.scaleDivisionKg.rule("scaleDivisionKg", scaleDivisionKg);
  if (varianceLaw !== undefined) oneOf(...varianceLaws)("varianceLaw", varianceLaw);
}
