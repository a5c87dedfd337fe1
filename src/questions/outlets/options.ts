import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import {
  fraction,
  type OptionsOf,
  option,
  positiveOrNull,
  resolve,
} from "../../results/options.ts";

/** What this question can be told beyond level, tolerance and scale. */
export const outletsRules = {
  /** Half-width of the band about the target (or the mean) of an outlet, a fraction. */
  // What extension sheets on granular applicators and a textbook on drills ask of every outlet.
  band: option(0.05, fraction),
  /** What each outlet should deliver, kg/turn; null: the mean of the outlets. */
  targetKgPerTurn: option(null, positiveOrNull),
};

export interface OutletsChoices extends OptionsOf<typeof outletsRules> {}

export interface OutletsOptions extends ModelOptions, OutletsChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function outletsOptions(
  model: ModelOptions,
  given: Partial<OutletsChoices> = {},
): OutletsOptions {
  return { ...modelOptionsOf(model), ...resolve(outletsRules, given) };
}
