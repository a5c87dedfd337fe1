import { massUnits } from "../../data/column-kinds.ts";
import { OptionError } from "../../errors/errors.ts";
import { defaults } from "../../results/defaults.ts";
import {
  count,
  each,
  fraction,
  judgedLater,
  type OptionsOf,
  oneOf,
  option,
  orNull,
  parts,
  positive,
  type Rule,
  resolve,
  such,
  text,
} from "../../results/options.ts";
import type { TypicalScatter } from "../catches-needed/options.ts";

/** How much fills and catches of a log differ, for a plan to rest on. */
export interface FoundSpreads {
  /** Name of the file. */
  readonly source: string;
  /** Whether products of the plan speak, or every product of the log, none of the plan being in it. */
  readonly speaking: "planned products" | "every product";
  readonly products: number;
  readonly fills: number;
  /** Spread between fills of one product without their catch scatter, relative; null: not to be told, as `untold` says. */
  readonly fillSpread: { readonly value: number; readonly df: number } | null;
  readonly untold: "too few fills" | "within catch scatter" | null;
  /** Whether what fills of one block share is taken out of it. */
  readonly withinBlocks: boolean;
  /** Of a catch of so many turns; null: no fill has two catches that scatter. */
  readonly catchScatter: (TypicalScatter & { readonly df: number }) | null;
}

const differentNames: Rule<readonly string[]> = (option, products) => {
  each(text)(option, products);
  const names = products.map((name) => name.trim());
  if (products.length < 2 || new Set(names).size < products.length || names.includes(""))
    throw new OptionError(option, products.join(", "), { need: "different-names", facts: {} });
};

const someTurns: Rule<readonly number[]> = (option, levels) => {
  each(positive)(option, levels);
  if (levels.length === 0)
    throw new OptionError(option, "empty", { need: "some-numbers", facts: {} });
};

export const trialPlanRules = {
  /** Confidence of the family of contrasts, a fraction. */
  level: option(defaults.level, fraction),
  bin: option(
    "1",
    such<string>("a name", (bin) => typeof bin === "string" && bin.trim() !== ""),
  ),
  /** Fills of each product: one in every block. */
  // With three fills of a product the unequal-spread contrasts are starved of degrees of freedom.
  fills: option(5, count(2)),
  /** Turns of a catch; every fill has each of them. */
  // Two levels, the longer twice the shorter, so that a constant mass in every catch can be seen.
  turnLevels: option([20, 40], someTurns),
  /** Catches at each turn level (and meter speed) of a fill. */
  // Four catches a fill in all: enough to compare the scatter of products.
  catchesPerLevel: option(2, count(1)),
  /** Meter speeds to cross with the turn levels, turns/min; empty: the speed is not varied. */
  meterSpeeds: option([], each(positive)),
  /** Unit that masses will be written down in. */
  massUnit: option("kg", oneOf(...massUnits)),
  seed: option(1, count(0)),
  /** Whether the contrasts will be made within blocks, or between fills as if blocks shared nothing. */
  analysis: option("fills", oneOf("fills", "blocks")),
  /** As for a comparison of products: "by design" is common within up to 8 blocks of three products or more. */
  spread: option("by design", oneOf("by design", "separate", "common")),
  /** Product that every other one will be compared with; null: all pairs. */
  reference: option(null, orNull(text)),
  /** Assumed spread between fills of one product (apart from what blocks share), relative. */
  // No published figure; the middle of 1–6 %, a reading of how far lots, moisture and filling move bulk density.
  fillSpread: option(0.03, fraction),
  /** Assumed scatter of a catch of so many turns, relative; its variance goes with the turns. */
  // Within the repeat-to-repeat unevenness of 0.8–3.7 % of Yazgi et al., Applied Engineering in Agriculture 33, 2017.
  catchScatter: option(
    { relative: 0.02, turns: 20 },
    parts<TypicalScatter>({ relative: fraction, turns: positive }),
  ),
  /** True difference of two products for which the chance of finding it is stated, relative. */
  difference: option(defaults.tolerance, fraction),
  /** Margin of equivalence for which the chance of showing it is stated, relative; null: not asked. */
  equivalenceMargin: option(null, orNull(fraction)),
  /** What a log says of spread and scatter, to be told where the plan rests on it; null: nobody looked. */
  found: option(null, judgedLater<FoundSpreads | null>()),
  /** Two or more, all different; there is no default. */
  products: option([], differentNames),
};

export interface TrialPlanOptions extends OptionsOf<typeof trialPlanRules> {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function trialPlanOptions(
  given: Pick<TrialPlanOptions, "products"> & Partial<TrialPlanOptions>,
): TrialPlanOptions {
  const chosen = resolve(trialPlanRules, given);
  checkRows(chosen);
  const { reference, products } = chosen;
  if (reference !== null && !products.includes(reference))
    throw new OptionError("reference", reference, { need: "listed", facts: { choices: products } });
  if (chosen.equivalenceMargin !== null && chosen.level <= 0.5)
    throw new OptionError("level", chosen.level, { need: "level-with-margin", facts: {} });
  return chosen;
}

/** No trial is larger; a slip of a digit should not fill the memory. */
const mostRows = 20_000;

function checkRows(chosen: TrialPlanOptions): void {
  const { products, fills, turnLevels, meterSpeeds, catchesPerLevel } = chosen;
  const perFill = turnLevels.length * Math.max(1, meterSpeeds.length) * catchesPerLevel;
  if (products.length * fills * perFill > mostRows)
    throw new OptionError("fills", fills, { need: "few-rows", facts: { most: mostRows } });
}
