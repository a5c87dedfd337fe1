import { type KnownState, plannedHalfWidth } from "../../model/known-width.ts";
import { readingVariance } from "../../model/reading.ts";
import { wholePower } from "../../numeric/powers.ts";
import { findRoot } from "../../numeric/roots.ts";
import { stoppingRule } from "./knowledge.ts";
import type { TimeBudget, TurnsChoice, TurnsPlan } from "./plans.ts";
import type { CatchesNeededOptions, Knowledge } from "./result.ts";

/**
 * How many catches of how many turns for the time there is? For each number of catches the longest that fit are the best,
 * so one choice for each number is compared by its half-width.
 */
export function turnsForTime(
  basis: Knowledge,
  options: CatchesNeededOptions,
  time: TimeBudget,
): TurnsPlan {
  const { fewest } = stoppingRule(basis, options);
  const choices = Array.from({ length: options.mostCatches }, (_, i) =>
    choiceOf(i + 1, basis, options.level, time),
  ).filter((choice) => choice !== null);
  const best = choices
    .filter(({ catches }) => catches >= fewest)
    .reduce<TurnsChoice | null>(
      (narrowest, choice) =>
        narrowest === null || choice.halfWidth < narrowest.halfWidth ? choice : narrowest,
      null,
    );
  return { choices, best, worthwhileTurns: worthwhileTurns(basis, time) };
}

function choiceOf(
  catches: number,
  basis: Knowledge,
  level: number,
  time: TimeBudget,
): TurnsChoice | null {
  const spare = time.minutes / catches - time.minutesPerCatch;
  // A hair is added so that time that fits exactly is not lost to rounding.
  const turns = Math.min(time.longestTurns, Math.floor(spare * time.turnsPerMinute + 1e-9));
  if (turns < 1) return null;
  const halfWidth = plannedHalfWidth(
    stateOfNewFill(basis, time.proportionalScatter ** 2 * turns),
    { further: catches, turns },
    { level, phi: 1 },
  );
  if (halfWidth === null) return null;
  return {
    catches,
    turns,
    minutes: catches * (time.minutesPerCatch + turns / time.turnsPerMinute),
    halfWidth,
  };
}

/** A fill without catches; a fill's own scatter is a guess for it, which only its own catches will confirm. */
function stateOfNewFill(basis: Knowledge, moreVariance: number): KnownState {
  return {
    catches: 0,
    turns: 0,
    scatter: {
      q: basis.variancePerTurn + moreVariance,
      nu: basis.scatter === "lent" ? basis.df : 0,
      own: false,
    },
    divisionInTurns: basis.divisionInTurns ?? 0,
  };
}

/**
 * With catches without number the best length minimises (σ0² + σ1²t + σ2²t²)(c0 + c1t)/t², whose derivative is zero where
 * σ2²c1·t³ − (σ0²c1 + σ1²c0)·t − 2σ0²c0 = 0: constant, proportional and squared parts of a catch's variance, cost of a
 * catch and of a turn.
 *
 * @returns at least 1; null where no part grows with the square of turns, or the root lies beyond the longest catch
 */
export function worthwhileTurns(basis: Knowledge, time: TimeBudget): number | null {
  const constant = readingVariance(basis.divisionInTurns ?? 0);
  const proportional = basis.variancePerTurn;
  const squared = time.proportionalScatter ** 2;
  const perCatch = time.minutesPerCatch;
  const perTurn = 1 / time.turnsPerMinute;
  const slope = (t: number) =>
    squared * perTurn * wholePower(t, 3) -
    (constant * perTurn + proportional * perCatch) * t -
    2 * constant * perCatch;
  if (squared === 0 || slope(time.longestTurns) <= 0) return null;
  return slope(1) >= 0 ? 1 : findRoot(slope, 1, time.longestTurns);
}
