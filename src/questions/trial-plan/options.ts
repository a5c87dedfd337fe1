import { OptionError } from "../../errors/errors.ts";
import { defaults } from "../../results/defaults.ts";
import {
  refuseUnknownOptions,
  requireCount,
  requireFraction,
  requireOneOf,
  requirePositive,
} from "../../results/options.ts";
import type { TrialPlanOptions } from "./result.ts";

/** Defaults of this question, with the reason for each; the products have none. */
export const trialPlanDefaults: Omit<TrialPlanOptions, "products"> = {
  level: defaults.level,
  bin: "1",
  /** With three fills of a product the unequal-spread contrasts are starved of degrees of freedom. */
  fills: 5,
  /** Two levels, the longer twice the shorter, so that a constant mass in every catch can be seen. */
  turnLevels: [20, 40],
  /** Four catches a fill in all: enough to compare the scatter of products. */
  catchesPerLevel: 2,
  meterSpeeds: [],
  massUnit: "kg",
  seed: 1,
  analysis: "fills",
  spread: "separate",
  /** No published figure; the middle of 1–6 %, a reading of how far lots, moisture and filling move bulk density. */
  fillSpread: 0.03,
  /** Within the repeat-to-repeat unevenness of 0.8–3.7 % of Yazgi et al., Applied Engineering in Agriculture 33, 2017. */
  catchScatter: { relative: 0.02, turns: 20 },
  difference: defaults.tolerance,
  equivalenceMargin: null,
};

const massUnits = ["kg", "g", "lb", "oz"];
/** No trial is larger; a slip of a digit should not fill the memory. */
const mostRows = 20_000;

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function trialPlanOptions(
  given: Pick<TrialPlanOptions, "products"> & Partial<TrialPlanOptions>,
): TrialPlanOptions {
  refuseUnknownOptions(given, [...Object.keys(trialPlanDefaults), "products"]);
  const chosen = { ...trialPlanDefaults, ...given };
  checkLayout(chosen);
  requireFraction("level", chosen.level);
  requireOneOf("analysis", chosen.analysis, ["fills", "blocks"]);
  requireOneOf("spread", chosen.spread, ["separate", "common"]);
  requireOneOf("massUnit", chosen.massUnit, massUnits);
  requireFraction("fillSpread", chosen.fillSpread);
  requireFraction("catchScatter.relative", chosen.catchScatter.relative);
  requirePositive("catchScatter.turns", chosen.catchScatter.turns);
  requireFraction("difference", chosen.difference);
  if (chosen.equivalenceMargin !== null) {
    requireFraction("equivalenceMargin", chosen.equivalenceMargin);
    if (chosen.level <= 0.5)
      throw new OptionError("level", chosen.level, "above 0.5 with a margin");
  }
  return chosen;
}

function checkLayout(chosen: TrialPlanOptions): void {
  const { products, turnLevels, meterSpeeds } = chosen;
  const names = products.map((name) => name.trim());
  if (products.length < 2 || new Set(names).size < products.length || names.includes("")) {
    throw new OptionError("products", products.join(", "), "two or more different names");
  }
  if (chosen.bin.trim() === "") throw new OptionError("bin", chosen.bin, "a name");
  requireCount("fills", chosen.fills, 2);
  requireCount("catchesPerLevel", chosen.catchesPerLevel, 1);
  requireCount("seed", chosen.seed, 0);
  if (turnLevels.length === 0) throw new OptionError("turnLevels", "empty", "one or more numbers");
  for (const turns of turnLevels) requirePositive("turnLevels", turns);
  for (const speed of meterSpeeds) requirePositive("meterSpeeds", speed);
  const perFill = turnLevels.length * Math.max(1, meterSpeeds.length) * chosen.catchesPerLevel;
  const rows = products.length * chosen.fills * perFill;
  if (rows > mostRows)
    throw new OptionError("fills", chosen.fills, `few enough for ${mostRows} rows`);
}
