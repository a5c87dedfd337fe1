import { OptionError } from "../../errors/errors.ts";
import { checkDriveGeometry, noDrive } from "../../model/drive.ts";
import type { ModelOptions } from "../../model/model.ts";
import { refuseUnknownOptions, requireCount, requireNotNegative } from "../../results/options.ts";
import type { UncertaintyBudgetOptions } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale. */
export type UncertaintyBudgetChoices = Omit<UncertaintyBudgetOptions, keyof ModelOptions>;

/** Defaults of this question, with the reason for each. */
export const uncertaintyBudgetDefaults: UncertaintyBudgetChoices = {
  ...noDrive,
  scaleTestedError: null,
  turnCountStandardUncertainty: null,
  /** A catch is made to set the drive for the fill in the bin. */
  valueFor: "this fill",
  /** The ends of a 95 % interval then come out within about 1 % of their distance from the middle, in about a tenth of a second. */
  draws: 50_000,
  seed: 1,
};

const fewestDraws = 20_000;

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function uncertaintyBudgetOptions(
  { level, tolerance, scaleDivisionKg }: ModelOptions,
  given: Partial<UncertaintyBudgetChoices> = {},
): UncertaintyBudgetOptions {
  refuseUnknownOptions(given, Object.keys(uncertaintyBudgetDefaults));
  const chosen = { ...uncertaintyBudgetDefaults, ...given };
  checkDriveGeometry(chosen);
  if (chosen.scaleTestedError !== null && !(Math.abs(chosen.scaleTestedError) < 1))
    throw new OptionError(
      "scaleTestedError",
      chosen.scaleTestedError,
      "a fraction between −1 and 1",
    );
  requireNotNegative("turnCountStandardUncertainty", chosen.turnCountStandardUncertainty ?? 0);
  if (chosen.valueFor !== "this fill" && chosen.valueFor !== "next fills")
    throw new OptionError("valueFor", chosen.valueFor, "this fill or next fills");
  requireCount("draws", chosen.draws, fewestDraws);
  requireCount("seed", chosen.seed, 0);
  return { level, tolerance, scaleDivisionKg, ...chosen };
}
