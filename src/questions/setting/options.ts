import type { SeedSetup, TargetRate } from "../../data/setup.ts";
import { OptionError } from "../../errors/errors.ts";
import { checkDriveGeometry, noDrive, requireMeasured } from "../../model/drive.ts";
import type { ModelOptions } from "../../model/model.ts";
import { refuseUnknownOptions, requirePositive } from "../../results/options.ts";
import type { SettingOptions } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale. */
export type SettingChoices = Omit<SettingOptions, keyof ModelOptions>;

/** Nothing about field, drive or seed is ever assumed: what is not given stays unknown and is named. */
export const settingDefaults: SettingChoices = {
  ...noDrive,
  target: null,
  seed: null,
  speedKmPerH: null,
};

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function settingOptions(
  { level, tolerance, scaleDivisionKg }: ModelOptions,
  given: Partial<SettingChoices> = {},
): SettingOptions {
  refuseUnknownOptions(given, Object.keys(settingDefaults));
  const chosen = { ...settingDefaults, ...given };
  checkDriveGeometry(chosen);
  if (chosen.target !== null) requirePositive("target", amountOf(chosen.target));
  if (chosen.seed !== null) checkSeed(chosen.seed);
  if (chosen.speedKmPerH !== null) {
    requirePositive("speedKmPerH.from", chosen.speedKmPerH.from);
    requirePositive("speedKmPerH.to", chosen.speedKmPerH.to);
  }
  return { level, tolerance, scaleDivisionKg, ...chosen };
}

function amountOf(target: TargetRate): number {
  switch (target.kind) {
    case "mass":
      return target.kgPerHectare;
    case "seeds":
      return target.seedsPerM2;
    case "plants":
      return target.plantsPerM2;
  }
}

function checkSeed({ thousandKernelMassG, germination, emergence }: SeedSetup): void {
  requireMeasured("seed.thousandKernelMassG", thousandKernelMassG);
  for (const [name, share] of Object.entries({ germination, emergence })) {
    requireMeasured(`seed.${name}`, share);
    if (share !== null && share.value > 1)
      throw new OptionError(`seed.${name}.value`, share.value, "a fraction of at most 1");
  }
}
