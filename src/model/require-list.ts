import { OptionError } from "../errors/errors.ts";

/** Refuses what is no list of these: easily the log, which most functions take whole. */
export function requireListOf(name: "catches" | "records", given: unknown): void {
  if (!Array.isArray(given)) throw new OptionError(name, given, { need: "list", facts: {} });
}
