import type { ModelOptions } from "../../model/model.ts";
import {
  refuseUnknownOptions,
  requireFraction,
  requirePositiveOrNull,
} from "../../results/options.ts";
import type { OutletsOptions } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale. */
export type OutletsChoices = Omit<OutletsOptions, keyof ModelOptions>;

/** Defaults of this question, with the reason for each. */
export const outletsDefaults: OutletsChoices = {
  /** What extension sheets on granular applicators and a textbook on drills ask of every outlet. */
  band: 0.05,
  targetKgPerTurn: null,
};

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function outletsOptions(
  { level, tolerance, scaleDivisionKg }: ModelOptions,
  given: Partial<OutletsChoices> = {},
): OutletsOptions {
  refuseUnknownOptions(given, Object.keys(outletsDefaults));
  const chosen = { ...outletsDefaults, ...given };
  requireFraction("band", chosen.band);
  requirePositiveOrNull("targetKgPerTurn", chosen.targetKgPerTurn);
  return { level, tolerance, scaleDivisionKg, ...chosen };
}
