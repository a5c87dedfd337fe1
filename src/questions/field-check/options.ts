import type { FieldCheckSetup } from "../../data/setup.ts";
import { OptionError } from "../../errors/errors.ts";
import { checkDriveGeometry, noDrive, requireMeasured } from "../../model/drive.ts";
import type { ModelOptions } from "../../model/model.ts";
import {
  refuseUnknownOptions,
  requireCount,
  requireNotNegative,
  requirePositiveOrNull,
} from "../../results/options.ts";
import type { FieldCheckOptions } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale. */
export type FieldCheckChoices = Omit<FieldCheckOptions, keyof ModelOptions>;

/** No check is ever assumed. */
export const fieldCheckDefaults: FieldCheckChoices = {
  ...noDrive,
  checks: [],
  checksInLog: null,
};

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function fieldCheckOptions(
  { level, tolerance, scaleDivisionKg }: ModelOptions,
  given: Partial<FieldCheckChoices> = {},
): FieldCheckOptions {
  refuseUnknownOptions(given, Object.keys(fieldCheckDefaults));
  const chosen = { ...fieldCheckDefaults, ...given };
  checkDriveGeometry(chosen);
  chosen.checks.forEach(requireCheck);
  if (chosen.checksInLog !== null)
    requireCount("checksInLog", chosen.checksInLog, chosen.checks.length);
  return { level, tolerance, scaleDivisionKg, ...chosen };
}

function requireCheck(check: FieldCheckSetup, i: number): void {
  const at = `checks[${i}]`;
  requireMeasured(`${at}.filledKg`, check.filledKg);
  requireMeasured(`${at}.areaHectares`, check.areaHectares);
  requireNotNegative(`${at}.leftKg.value`, check.leftKg.value);
  requireNotNegative(`${at}.leftKg.standardUncertainty`, check.leftKg.standardUncertainty ?? 0);
  requirePositiveOrNull(`${at}.intendedRateKgPerHectare`, check.intendedRateKgPerHectare);
  requirePositiveOrNull(`${at}.assumedDeliveryKgPerTurn`, check.assumedDeliveryKgPerTurn);
  if (!(check.leftKg.value < check.filledKg.value))
    throw new OptionError(`${at}.leftKg.value`, check.leftKg.value, "less than was filled");
}
