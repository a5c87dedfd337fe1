import type { FieldCheckSetup, Measured } from "../../data/setup.ts";
import { OptionError } from "../../errors/errors.ts";
import { type DriveGeometry, driveRules, measured } from "../../model/drive.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import {
  count,
  each,
  judgedLater,
  notNegative,
  type OptionsOf,
  option,
  orNull,
  parts,
  positiveOrNull,
  type Rule,
  resolve,
} from "../../results/options.ts";

const checkFigures = parts<FieldCheckSetup>({
  filledKg: measured,
  areaHectares: measured,
  leftKg: parts<Measured>({ value: notNegative, standardUncertainty: orNull(notNegative) }),
  intendedRateKgPerHectare: positiveOrNull,
  assumedDeliveryKgPerTurn: positiveOrNull,
});

const fieldChecks: Rule<readonly FieldCheckSetup[]> = (option, checks) => {
  each(judgedLater<FieldCheckSetup>())(option, checks);
  checks.forEach((check, i) => {
    checkFigures(`${option}[${i}]`, check);
    const { leftKg, filledKg } = check;
    if (!(leftKg.value < filledKg.value))
      throw new OptionError(`${option}[${i}].leftKg.value`, leftKg.value, "less than was filled");
  });
};

/** What this question can be told beyond level, tolerance, scale and drive. No check is ever assumed. */
export const fieldCheckRules = {
  /** Checks of this bin and product, in order of time. */
  checks: option([], fieldChecks),
  /** Field checks of all bins: the chance of a false disagreement is shared among them; null: these are all. */
  checksInLog: option(null, judgedLater<number | null>()),
};

export interface FieldCheckChoices extends DriveGeometry, OptionsOf<typeof fieldCheckRules> {}

export interface FieldCheckOptions extends ModelOptions, FieldCheckChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function fieldCheckOptions(
  model: ModelOptions,
  given: Partial<FieldCheckChoices> = {},
): FieldCheckOptions {
  const chosen = resolve({ ...driveRules, ...fieldCheckRules }, given);
  orNull(count(chosen.checks.length))("checksInLog", chosen.checksInLog);
  return { ...modelOptionsOf(model), ...chosen };
}
