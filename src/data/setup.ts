import type { MeterPlace } from "./identity.ts";
import type { BinSetup } from "./setup/bin.ts";
import { narrowings, narrowingsOf, type SetupPlace } from "./setup/place.ts";
import type { Setup } from "./setup/schema.ts";

export type { BinSetup, SeedSetup } from "./setup/bin.ts";
export type { DriveSetup } from "./setup/drive.ts";
export type { FieldCheckSetup } from "./setup/field-check.ts";
export type { MoneyResponse } from "./setup/money.ts";
export type { SetupPlace } from "./setup/place.ts";
export type { AnsweredSetup, Setup } from "./setup/schema.ts";
export type { TrialSetup } from "./setup/trial.ts";
export type { Measured, Span } from "./setup/values.ts";
export { amountOf, type TargetRate } from "./target-rate.ts";

/** The setup of a bin with a product in it: the entry that names both, else the one for the bin whatever is in it. */
export function binSetup(setup: Setup, meter: MeterPlace): BinSetup | null {
  return entryFor(setup.bins, meter);
}

/** Whether an entry holds for a meter. */
export function holdsFor(entry: SetupPlace, meter: MeterPlace): boolean {
  return (
    entry.bin === meter.bin &&
    narrowings.every((name) => entry[name] == null || entry[name] === meter[name])
  );
}

/**
 * Of entries about bins, some of them about one product, machine or farm only, the one that counts for a meter: that which
 * says most about where it holds. A setup in which two say as much is refused when it is read.
 */
export function entryFor<E extends SetupPlace>(entries: readonly E[], meter: MeterPlace): E | null {
  const holding = entries.filter((entry) => holdsFor(entry, meter));
  return holding.toSorted((a, b) => narrowingsOf(b).length - narrowingsOf(a).length)[0] ?? null;
}

/**
 * Whether the fill that an entry names is this one. Where the log holds several seasons, a number alone names no fill.
 *
 * @param several  whether the log holds several seasons
 */
export function namesFill(
  {
    fill,
    season = null,
  }: { readonly fill: number | null; readonly season?: string | null | undefined },
  of: { readonly number: number; readonly season: string | null },
  several: boolean,
): boolean {
  if (fill !== of.number) return false;
  return season === null ? !several : season === of.season;
}
