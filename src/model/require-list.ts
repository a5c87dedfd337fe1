import { OptionError } from "../errors/errors.ts";

const needs = { catches: "list-of-catches", records: "list-of-totals" } as const;

/** Refuses what is no list of these: easily the log, which most functions take whole. */
export function requireListOf(name: keyof typeof needs, given: unknown): void {
  if (!Array.isArray(given)) throw new OptionError(name, given, { need: needs[name], facts: {} });
}
