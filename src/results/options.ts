import { OptionError } from "../errors/errors.ts";

/** Refuses option names nobody knows: a typo must not be silent. */
export function refuseUnknownOptions(given: object, known: readonly string[]): void {
  for (const name of Object.keys(given))
    if (!known.includes(name))
      throw new OptionError(name, "not an option", `one of ${known.join(", ")}`);
}

/** A fraction strictly between 0 and 1. */
export function requireFraction(option: string, value: number): number {
  if (!(value > 0 && value < 1))
    throw new OptionError(option, value, "a fraction above 0 and below 1, such as 0.95");
  return value;
}

/** A finite number above zero, or null for "unknown". */
export function requirePositiveOrNull(option: string, value: number | null): number | null {
  if (value !== null && !(value > 0 && Number.isFinite(value)))
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
