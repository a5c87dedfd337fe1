import type { BinSetup } from "./setup/bin.ts";
import type { Setup } from "./setup/schema.ts";

export type { BinSetup, SeedSetup } from "./setup/bin.ts";
export type { DriveSetup } from "./setup/drive.ts";
export type { FieldCheckSetup } from "./setup/field-check.ts";
export type { MoneyResponse } from "./setup/money.ts";
export type { AnsweredSetup, Setup } from "./setup/schema.ts";
export type { Measured, Span } from "./setup/values.ts";
export { amountOf, type TargetRate } from "./target-rate.ts";

/** The setup of a bin with a product in it: the entry that names both, else the one for the bin whatever is in it. */
export function binSetup(setup: Setup, bin: string, product: string): BinSetup | null {
  return entryFor(setup.bins, bin, product);
}

/** Of entries about bins, some of them about one product of a bin only, the one that counts for this bin and product. */
export function entryFor<E extends { readonly bin: string; readonly product: string | null }>(
  entries: readonly E[],
  bin: string,
  product: string,
): E | null {
  const ofBin = entries.filter((entry) => entry.bin === bin);
  return (
    ofBin.find((entry) => entry.product === product) ??
    ofBin.find((entry) => entry.product === null) ??
    null
  );
}
