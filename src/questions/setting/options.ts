import { amountOf, type Measured, type SeedSetup, type TargetRate } from "../../data/setup.ts";
import { OptionError } from "../../errors/errors.ts";
import { type DriveGeometry, driveRules, measured, positiveSpan } from "../../model/drive.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import {
  type OptionsOf,
  oneOf,
  option,
  orNull,
  parts,
  positive,
  type Rule,
  resolve,
} from "../../results/options.ts";

const kindOfTarget = parts<TargetRate>({ kind: oneOf("mass", "seeds", "plants") });
const positiveRate: Rule<TargetRate> = (option, target) => {
  kindOfTarget(option, target);
  positive(option, amountOf(target));
};

const measuredShare: Rule<Measured> = (option, share) => {
  measured(option, share);
  if (share.value > 1)
    throw new OptionError(`${option}.value`, share.value, "a fraction of at most 1");
};

/**
 * What this question can be told beyond level, tolerance, scale and drive. Nothing about field, drive or seed is ever
 * assumed: what is not given stays unknown and is named.
 */
export const settingRules = {
  /** Rate wanted; null: not given. */
  target: option(null, orNull(positiveRate)),
  /** The least that label or law lets be put out; null: not given. */
  lowestRate: option(null, orNull(positiveRate)),
  /** The most of it; null: not given. */
  highestRate: option(null, orNull(positiveRate)),
  /** Turns a rate of seeds or plants into mass. */
  seed: option(
    null,
    orNull(
      parts<SeedSetup>({
        thousandKernelMassG: orNull(measured),
        germination: orNull(measuredShare),
        emergence: orNull(measuredShare),
      }),
    ),
  ),
  /** Range of working speed. */
  speedKmPerH: option(null, orNull(positiveSpan)),
};

export interface SettingChoices extends DriveGeometry, OptionsOf<typeof settingRules> {}

export interface SettingOptions extends ModelOptions, SettingChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function settingOptions(
  model: ModelOptions,
  given: Partial<SettingChoices> = {},
): SettingOptions {
  return { ...modelOptionsOf(model), ...resolve({ ...driveRules, ...settingRules }, given) };
}
