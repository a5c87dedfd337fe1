import { OptionError } from "../../errors/errors.ts";
import type { ModelOptions } from "../../model/model.ts";
import { defaults } from "../../results/defaults.ts";
import {
  refuseUnknownOptions,
  requireCount,
  requireFraction,
  requireNotNegative,
  requirePositive,
  requirePositiveOrNull,
} from "../../results/options.ts";
import type { TimeBudget, TrialCosts } from "./plans.ts";
import type { CatchesNeededOptions } from "./result.ts";

/** What this question can be told beyond level, tolerance and scale. */
export type CatchesNeededChoices = Omit<CatchesNeededOptions, keyof ModelOptions>;

/** Defaults of this question, with the reason for each. */
export const catchesNeededDefaults: CatchesNeededChoices = {
  assurance: defaults.assurance,
  fill: "newest",
  turnsPerCatch: null,
  /** The stopping rule's coverage was found with this limit; beyond it more turns help more than more catches. */
  mostCatches: 8,
  /** Two catches of one's own cannot say which of them is wrong, and their interval is 12.7 standard errors wide. */
  fewestOwn: 3,
  /** With earlier fills' scatter one catch is enough for the width to be trusted; reports/stopping-study.md. */
  fewestPooled: 1,
  heaviestCatchKg: null,
  settingError: 0,
  phi: 1,
  /**
   * Within the repeat-to-repeat unevenness of metered flow of 0.8–3.7 % that Yazgi et al. (Applied Engineering in
   * Agriculture 33, 2017) report; for a catch of 20 turns, a common length.
   */
  typicalScatter: { relative: 0.02, turns: 20 },
  /** No published figure; the middle of 1–6 %, a reading of how far seed lots, moisture and filling move bulk density. */
  typicalSpread: 0.03,
  assumedKgPerTurn: null,
  time: null,
  trial: null,
};

/**
 * Fills in what is not given.
 *
 * @throws OptionError for an unknown name or a value that cannot be meant
 */
export function catchesNeededOptions(
  model: ModelOptions,
  given: Partial<CatchesNeededChoices> = {},
): CatchesNeededOptions {
  refuseUnknownOptions(given, Object.keys(catchesNeededDefaults));
  const chosen = { ...catchesNeededDefaults, ...given };
  requireFraction("assurance", chosen.assurance);
  if (chosen.fill !== "newest" && chosen.fill !== "next")
    throw new OptionError("fill", chosen.fill, "newest or next");
  requirePositiveOrNull("turnsPerCatch", chosen.turnsPerCatch);
  requireCount("fewestOwn", chosen.fewestOwn, 2);
  requireCount("fewestPooled", chosen.fewestPooled, 1);
  requireCount("mostCatches", chosen.mostCatches, Math.max(chosen.fewestOwn, chosen.fewestPooled));
  requirePositiveOrNull("heaviestCatchKg", chosen.heaviestCatchKg);
  if (!(Math.abs(chosen.settingError) < 1))
    throw new OptionError("settingError", chosen.settingError, "a fraction between -1 and 1");
  if (!(chosen.phi >= 1 && Number.isFinite(chosen.phi)))
    throw new OptionError("phi", chosen.phi, "a finite number of at least 1");
  requireFraction("typicalScatter.relative", chosen.typicalScatter.relative);
  requirePositive("typicalScatter.turns", chosen.typicalScatter.turns);
  requireFraction("typicalSpread", chosen.typicalSpread);
  requirePositiveOrNull("assumedKgPerTurn", chosen.assumedKgPerTurn);
  if (chosen.time !== null) checkTime(chosen.time);
  if (chosen.trial !== null) checkTrial(chosen.trial);
  return { ...pickModel(model), ...chosen };
}

function pickModel(model: ModelOptions): ModelOptions {
  const { level, tolerance, scaleDivisionKg, varianceLaw = "proportional" } = model;
  return { level, tolerance, scaleDivisionKg, varianceLaw };
}

function checkTime(time: TimeBudget): void {
  requirePositive("time.minutes", time.minutes);
  requireNotNegative("time.minutesPerCatch", time.minutesPerCatch);
  requirePositive("time.turnsPerMinute", time.turnsPerMinute);
  requireCount("time.longestTurns", time.longestTurns, 1);
  requireNotNegative("time.proportionalScatter", time.proportionalScatter);
}

function checkTrial(trial: TrialCosts): void {
  requirePositive("trial.budget", trial.budget);
  requireNotNegative("trial.perFill", trial.perFill);
  requirePositive("trial.perCatch", trial.perCatch);
  requireNotNegative("trial.perTurn", trial.perTurn);
  requireNotNegative("trial.perExtraLevel", trial.perExtraLevel);
}
