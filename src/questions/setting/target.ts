import { type Derived, derived, exactly } from "../../model/worked-out.ts";
import { massRateOfPlants, massRateOfSeeds } from "../../units/rates.ts";
import type { MissingForSetting, SettingOptions } from "./result.ts";

/** The rate wanted in kg/ha, or what it would take to know it. */
export interface TargetFound {
  readonly rate: Derived | null;
  readonly missing: readonly MissingForSetting[];
}

/**
 * A target as mass: as given, or seeds/m² × thousand-kernel mass ÷ 100, or that for plants/m² ÷ (germination ×
 * emergence), each with its own uncertainty.
 */
export function targetRateOf({ target, seed }: SettingOptions): TargetFound {
  if (target === null) return { rate: null, missing: ["target rate"] };
  if (target.kind === "mass") return { rate: exactly(target.kgPerHectare), missing: [] };
  const { thousandKernelMassG: mass = null, germination = null, emergence = null } = seed ?? {};
  if (target.kind === "seeds") {
    if (mass === null) return { rate: null, missing: ["thousand-kernel mass"] };
    const { seedsPerM2 } = target;
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
  const { plantsPerM2 } = target;
  return {
    rate: derived(
      ([grams = 0, sprouting = 0, emerging = 0]) =>
        massRateOfPlants(plantsPerM2, grams, sprouting * emerging),
      [mass, germination, emergence],
    ),
    missing: [],
  };
}
