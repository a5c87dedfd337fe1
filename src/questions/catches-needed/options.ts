import { max } from "simple-statistics";
import { fillPrices } from "../../model/fill-prices.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import { assumedValue } from "../../model/rate-error.ts";
import { defaults } from "../../results/defaults.ts";
import {
  count,
  fraction,
  judgedLater,
  listed,
  notNegative,
  type OptionsOf,
  oneOf,
  option,
  orNull,
  parts,
  positive,
  positiveOrNull,
  resolve,
  such,
  type ToleranceFrom,
  toleranceSources,
} from "../../results/options.ts";
import type { TimeBudget, TrialCosts } from "./plans.ts";

/** A catch scatter taken for granted until there is one of one's own. */
export interface TypicalScatter {
  /** Relative standard deviation of a catch of `turns` turns. */
  readonly relative: number;
  readonly turns: number;
}

/** When a width may decide that the catches are enough. */
export interface StoppingRule {
  /** Catches of the fill before it may. */
  readonly fewest: number;
  /** The width is taken so many times larger, because stopping on it favours catches that happen to agree. */
  readonly phi: number;
}

export interface StoppingRules {
  readonly own: StoppingRule;
  readonly withOtherBins: StoppingRule;
  readonly withOtherFills: StoppingRule;
}

const atLeastOne = such<number>(
  "a finite number of at least 1",
  (phi) => Number.isFinite(phi) && phi >= 1,
);

const stoppingParts = (fewest: number) =>
  parts<StoppingRule>({ fewest: count(fewest), phi: atLeastOne });

/** What this question can be told beyond level, tolerance and scale. */
export const catchesNeededRules = {
  /** Chance wanted of reaching the tolerance. */
  assurance: option(defaults.assurance, fraction),
  /** Which fill: the newest of the log, with the catches it has, or the one still to come. */
  fill: option("newest", oneOf("newest", "next")),
  /** Turns of each further catch; null: as many as so far. */
  turnsPerCatch: option(null, positiveOrNull),
  /** Catches of one fill after which to stop whatever the width. */
  // The stopping rule's coverage was found with this limit; beyond it more turns help more than more catches.
  mostCatches: option(8, judgedLater<number>()),
  /** Catches before the width may decide, and how much it is widened for that, by who speaks for the scatter. */
  // Stopping on the width favours catches that happen to agree: these keep the coverage; reports/stopping-study.md. Two
  // catches of one's own cannot say which of them is wrong.
  stopping: option(
    {
      own: { fewest: 3, phi: 1.08 },
      withOtherBins: { fewest: 2, phi: 1.05 },
      withOtherFills: { fewest: 1, phi: 1 },
    },
    parts<StoppingRules>({
      own: stoppingParts(2),
      withOtherBins: stoppingParts(1),
      withOtherFills: stoppingParts(1),
    }),
  ),
  /** The heaviest catch that bag and scale take, kg; null: not given, then the larger of 20 kg and the log's heaviest. */
  heaviestCatchKg: option(null, positiveOrNull),
  /** Rate error that the chosen step of a drive with steps makes by itself; 0: none. */
  settingError: option(
    0,
    such<number>(
      "a fraction between -1 and 1",
      (error) => Number.isFinite(error) && Math.abs(error) < 1,
    ),
  ),
  /** One factor for a width that stopping decides on, whoever speaks for the scatter; null: those of `stopping`. */
  phi: option(null, orNull(atLeastOne)),
  /** Used, and named as an assumption, where the log shows no catch scatter. */
  typicalScatter: option(
    defaults.assumedScatter,
    parts<TypicalScatter>({ relative: fraction, turns: positive }),
  ),
  /** Used, and named as an assumption, where the log shows no fill-to-fill spread apart from catch scatter; relative. */
  typicalSpread: option(defaults.assumedSpread, fraction),
  /** Delivery to plan with before any catch, for the share of the scale's division; null: none. */
  assumedKgPerTurn: option(null, positiveOrNull),
  /** What errors and catches of a fill cost; null: not given, then the tolerance alone decides. */
  prices: option(null, orNull(fillPrices)),
  /** Who gave the tolerance: one that somebody gave decides before money, the default after it. */
  // Where nobody says that it was the default, it is taken to be meant.
  toleranceFrom: option<ToleranceFrom>("option", listed(toleranceSources)),
  /** What the drive is left at where the fill to come is not caught. */
  // Of the values a log can give, the average of fills errs least.
  assumed: option({ source: "average of fills" }, assumedValue),
  /** Whether label or law sets rates for the product: then no fill goes uncaught. */
  lawfulRates: option("not given", oneOf("given", "not given")),
  time: option(
    null,
    orNull(
      parts<TimeBudget>({
        minutes: positive,
        minutesPerCatch: notNegative,
        turnsPerMinute: positive,
        longestTurns: count(1),
        proportionalScatter: notNegative,
      }),
    ),
  ),
  trial: option(
    null,
    orNull(
      parts<TrialCosts>({
        budget: positive,
        perFill: notNegative,
        perCatch: positive,
        perTurn: notNegative,
        perExtraLevel: notNegative,
      }),
    ),
  ),
};

export interface CatchesNeededChoices extends OptionsOf<typeof catchesNeededRules> {}

export interface CatchesNeededOptions extends ModelOptions, CatchesNeededChoices {}

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function catchesNeededOptions(
  model: ModelOptions,
  given: Partial<CatchesNeededChoices> = {},
): CatchesNeededOptions {
  const chosen = resolve(catchesNeededRules, given);
  const { mostCatches, stopping } = chosen;
  const fewest = Object.values(stopping).map((rule: StoppingRule) => rule.fewest);
  count(max(fewest))("mostCatches", mostCatches);
  const { varianceLaw = "proportional" } = model;
  return { ...modelOptionsOf(model), varianceLaw, ...chosen };
}
