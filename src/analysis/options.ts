import type { Setup } from "../data/setup.ts";
import { OptionError } from "../errors/errors.ts";
import type { CatchesNeededChoices } from "../questions/catches-needed/options.ts";
import type { DeliveryOptions } from "../questions/delivery.ts";
import type { ExplainingVariablesChoices } from "../questions/explaining-variables/options.ts";
import type { ProductComparisonChoices } from "../questions/product-comparison/options.ts";
import { defaults } from "../results/defaults.ts";
import {
  refuseUnknownOptions,
  requireFraction,
  requirePositiveOrNull,
} from "../results/options.ts";
import type { VarianceLaw } from "../statistics/through-origin.ts";

/** When and how products are compared. */
export interface ComparisonChoices
  extends Partial<
    ProductComparisonChoices & Pick<ExplainingVariablesChoices, "newDensityKgPerM3">
  > {
  /**
   * "one bin held several" (default): only products that shared a bin, as in a trial; in a season's log each bin has its
   * own product, and comparing wheat with fertiliser answers nobody's question.
   */
  readonly when?: "one bin held several" | "always" | "never";
}

/** Who gave the tolerance. */
export type ToleranceFrom = "option" | "setup" | "default";

/** What an analysis rests on, every default filled in. */
export interface AnalysisOptions extends DeliveryOptions {
  readonly comparison: ComparisonChoices;
  /** How catches are planned; each counts before the setup. */
  readonly planning: Partial<CatchesNeededChoices>;
}

const names: readonly (keyof AnalysisOptions)[] = [
  "level",
  "tolerance",
  "scaleDivisionKg",
  "varianceLaw",
  "comparison",
  "planning",
];
const laws: readonly VarianceLaw[] = ["proportional", "constant", "squared"];

/**
 * Fills in what is not given: an option counts before the setup, the setup before the default.
 *
 * @throws OptionError for an unknown name, a level or tolerance outside (0, 1), a division not above zero, or an
 *         unknown variance law
 */
export function resolveOptions(
  given: Partial<AnalysisOptions>,
  setup: Setup | null,
): AnalysisOptions {
  refuseUnknownOptions(given, names);
  const varianceLaw = given.varianceLaw ?? "proportional";
  if (!laws.includes(varianceLaw))
    throw new OptionError("varianceLaw", varianceLaw, `one of ${laws.join(", ")}`);
  return {
    level: requireFraction("level", given.level ?? setup?.confidence ?? defaults.level),
    tolerance: requireFraction(
      "tolerance",
      given.tolerance ?? setup?.tolerance ?? defaults.tolerance,
    ),
    scaleDivisionKg: requirePositiveOrNull(
      "scaleDivisionKg",
      given.scaleDivisionKg ?? setup?.scale.divisionKg ?? null,
    ),
    varianceLaw,
    comparison: given.comparison ?? {},
    planning: given.planning ?? {},
  };
}

/** Where the tolerance of `resolveOptions` comes from. */
export function toleranceFrom(given: Partial<AnalysisOptions>, setup: Setup | null): ToleranceFrom {
  if (given.tolerance !== undefined) return "option";
  return setup?.tolerance != null ? "setup" : "default";
}
