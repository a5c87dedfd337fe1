import { OptionError } from "../errors/errors.ts";

/** Refuses option names nobody knows: a typo must not be silent. */
export function refuseUnknownOptions(given: object, known: readonly string[]): void {
  for (const name of Object.keys(given))
    if (!known.includes(name))
      throw new OptionError(name, "not an option", `one of ${known.join(", ")}`);
}

/** A fraction strictly between 0 and 1. */
export function requireFraction(option: string, value: number): number {
  if (!(typeof value === "number" && value > 0 && value < 1))
    throw new OptionError(option, value, "a fraction above 0 and below 1, such as 0.95");
  return value;
}

/** Refuses a choice that is not one of the allowed. */
export function requireOneOf(option: string, value: unknown, allowed: readonly string[]): void {
  if (typeof value !== "string" || !allowed.includes(value))
    throw new OptionError(option, value, allowed.join(" or "));
}

/** How catch scatter may grow with turns. */
const varianceLaws = ["proportional", "constant", "squared"];

/** What every question is asked with, whoever asks: a percentage given for a fraction must not be answered. */
export function requireModelOptions(options: {
  readonly level: number;
  readonly tolerance: number;
  readonly scaleDivisionKg: number | null;
  readonly varianceLaw?: string;
}): void {
  requireFraction("level", options.level);
  requireFraction("tolerance", options.tolerance);
  requirePositiveOrNull("scaleDivisionKg", options.scaleDivisionKg);
  if (options.varianceLaw !== undefined)
    requireOneOf("varianceLaw", options.varianceLaw, varianceLaws);
}

/** A finite number above zero, or null for "unknown". */
export function requirePositiveOrNull(option: string, value: number | null): number | null {
  if (value !== null && !(Number.isFinite(value) && value > 0))
    throw new OptionError(option, value, "a finite number above zero, or null when unknown");
  return value;
}

/** A finite number above zero. */
export function requirePositive(option: string, value: number): number {
  if (!(value > 0 && Number.isFinite(value)))
    throw new OptionError(option, value, "a finite number above zero");
  return value;
}

/** A finite number of zero or more. */
export function requireNotNegative(option: string, value: number): number {
  if (!(value >= 0 && Number.isFinite(value)))
    throw new OptionError(option, value, "a finite number of zero or more");
  return value;
}

/** A whole number of at least `least`. */
export function requireCount(option: string, value: number, least: number): number {
  if (!(Number.isSafeInteger(value) && value >= least))
    throw new OptionError(option, value, `a whole number of at least ${least}`);
  return value;
}
