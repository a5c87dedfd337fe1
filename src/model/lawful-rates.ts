import type { SeedSetup, TargetRate } from "../data/setup.ts";
import { chanceAbove, chanceBelow, type ErrorLaw } from "../statistics/expected-loss.ts";
import { type MissingForMass, rateAsMass } from "./rate-as-mass.ts";

/** What label or law sets for a product; null: no rate of that end. */
export interface RatesByLaw {
  readonly lowestRate: TargetRate | null;
  readonly highestRate: TargetRate | null;
}

/** The same as mass; null: not given, or the seed figures it takes are not. */
export interface LawfulRates {
  readonly lowestKgPerHa: number | null;
  readonly highestKgPerHa: number | null;
}

/** Whether label or law sets any rate: then no fill goes uncaught, whatever its chances. */
export function isLawSet({ lowestRate, highestRate }: RatesByLaw): boolean {
  return lowestRate !== null || highestRate !== null;
}

/**
 * Lawful rates as mass. Seed figures count as they are given: their uncertainty moves what is set, and is no chance of the
 * meter's.
 *
 * @returns null: label or law sets none
 */
export function lawfulRates(
  given: RatesByLaw,
  seed: SeedSetup | null,
): { readonly rates: LawfulRates; readonly missing: readonly MissingForMass[] } | null {
  if (!isLawSet(given)) return null;
  const [lowest, highest] = [given.lowestRate, given.highestRate].map((rate) =>
    rate === null ? null : rateAsMass(rate, seed),
  );
  return {
    rates: {
      lowestKgPerHa: lowest?.rate?.value ?? null,
      highestKgPerHa: highest?.rate?.value ?? null,
    },
    missing: [...new Set([...(lowest?.missing ?? []), ...(highest?.missing ?? [])])],
  };
}

/** Chances that a rate lies below the lowest and above the highest lawful one; null where there is none. */
export interface ChanceOutsideLaw {
  readonly below: number | null;
  readonly above: number | null;
  /** Of the two together; null: neither is known. */
  readonly either: number | null;
}

/** Lawful rates as rate errors against the rate intended. */
export interface LawfulErrors {
  readonly lowest: number | null;
  readonly highest: number | null;
}

/** @param intendedKgPerHa  what the rate error is told against */
export function lawfulErrors(
  { lowestKgPerHa, highestKgPerHa }: LawfulRates,
  intendedKgPerHa: number,
): LawfulErrors {
  const error = (rate: number | null) => (rate === null ? null : rate / intendedKgPerHa - 1);
  return { lowest: error(lowestKgPerHa), highest: error(highestKgPerHa) };
}

/** Each tail of the law of the rate error by itself, so that small chances keep their digits. */
export function chanceOutsideLaw(
  law: ErrorLaw,
  { lowest, highest }: LawfulErrors,
): ChanceOutsideLaw {
  const below = lowest === null ? null : chanceBelow(law, lowest);
  const above = highest === null ? null : chanceAbove(law, highest);
  const either = below === null && above === null ? null : Math.min(1, (below ?? 0) + (above ?? 0));
  return { below, above, either };
}
