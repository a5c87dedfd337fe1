import type { SeedSetup, TargetRate } from "../data/setup.ts";
import { massRateOfPlants, massRateOfSeeds } from "../units/rates.ts";
import { type Derived, derived, exactly } from "./worked-out.ts";

/** A figure of the seed that a rate of seeds or plants takes to become mass. */
export type MissingForMass = "thousand-kernel mass" | "germination" | "emergence";

/** A rate in kg/ha, or what it would take to know it. */
export interface RateAsMass {
  readonly rate: Derived | null;
  readonly missing: readonly MissingForMass[];
}

/**
 * A rate as mass: as given, or seeds/m² × thousand-kernel mass ÷ 100, or that for plants/m² ÷ (germination × emergence),
 * each with its own uncertainty.
 */
export function rateAsMass(wanted: TargetRate, seed: SeedSetup | null): RateAsMass {
  if (wanted.kind === "mass") return { rate: exactly(wanted.kgPerHectare), missing: [] };
  const { thousandKernelMassG: mass = null, germination = null, emergence = null } = seed ?? {};
  if (wanted.kind === "seeds") {
    if (mass === null) return { rate: null, missing: ["thousand-kernel mass"] };
    const { seedsPerM2 } = wanted;
    return {
      rate: derived(([grams = 0]) => massRateOfSeeds(seedsPerM2, grams), [mass]),
      missing: [],
    };
  }
  if (mass === null || germination === null || emergence === null)
    return {
      rate: null,
      missing: [
        ...(mass === null ? (["thousand-kernel mass"] as const) : []),
        ...(germination === null ? (["germination"] as const) : []),
        ...(emergence === null ? (["emergence"] as const) : []),
      ],
    };
  const { plantsPerM2 } = wanted;
  return {
    rate: derived(
      ([grams = 0, sprouting = 0, emerging = 0]) =>
        massRateOfPlants(plantsPerM2, grams, sprouting * emerging),
      [mass, germination, emergence],
    ),
    missing: [],
  };
}
