import { OptionError } from "../errors/errors.ts";
import type { DeliveryOptions } from "../questions/delivery.ts";
import { defaults } from "../results/defaults.ts";
import {
  refuseUnknownOptions,
  requireFraction,
  requirePositiveOrNull,
} from "../results/options.ts";
import type { VarianceLaw } from "../statistics/through-origin.ts";

/** What an analysis rests on, every default filled in. */
export type AnalysisOptions = DeliveryOptions;

const names: readonly (keyof AnalysisOptions)[] = [
  "level",
  "tolerance",
  "scaleDivisionKg",
  "varianceLaw",
];
const laws: readonly VarianceLaw[] = ["proportional", "constant", "squared"];

/**
 * Fills in defaults and refuses what cannot be meant.
 *
 * @throws OptionError for an unknown name, a level or tolerance outside (0, 1), a division not above zero, or an
 *         unknown variance law
 */
export function resolveOptions(given: Partial<AnalysisOptions>): AnalysisOptions {
  refuseUnknownOptions(given, names);
  const varianceLaw = given.varianceLaw ?? "proportional";
  if (!laws.includes(varianceLaw))
    throw new OptionError("varianceLaw", varianceLaw, `one of ${laws.join(", ")}`);
  return {
    level: requireFraction("level", given.level ?? defaults.level),
    tolerance: requireFraction("tolerance", given.tolerance ?? defaults.tolerance),
    scaleDivisionKg: requirePositiveOrNull("scaleDivisionKg", given.scaleDivisionKg ?? null),
    varianceLaw,
  };
}
