import type { MeterModel } from "../model/model.ts";
import {
  type CatchAim,
  chanceOff,
  leastTurnsForScale,
  nextCatchCurve,
  numberOfCatches,
  stopsAt,
} from "../model/next-catch.ts";
import { leastChanceOfSkip } from "../model/skip-chance.ts";
import { relativeHalfWidth } from "../model/with-all-catches.ts";
import { requireModelOptions } from "../results/options.ts";
import { neededCautions } from "./catches-needed/cautions.ts";
import { fewestCatches, knowledgeOf, stateOf } from "./catches-needed/knowledge.ts";
import type {
  CatchesNeeded,
  CatchesNeededOptions,
  Knowledge,
  Standing,
} from "./catches-needed/result.ts";
import { trialPlan } from "./catches-needed/trial.ts";
import { turnsForTime } from "./catches-needed/turns.ts";

export type {
  TimeBudget,
  TrialCosts,
  TrialSplit,
  TrialSplits,
  TurnsChoice,
  TurnsPlan,
} from "./catches-needed/plans.ts";
export type {
  CatchesNeeded,
  CatchesNeededOptions,
  Knowledge,
  Standing,
  TypicalScatter,
} from "./catches-needed/result.ts";

/** Two catches of one's own know their scatter on one degree of freedom: no plan can be made before a third. */
const fewestDfToPlan = 2;
const fewestShown = 2;
/** Standings in which nothing is said of catches still to come. */
const untold: readonly Standing[] = ["waits", "unknown", "too few"];

/**
 * Is the delivery known well enough, and if not, how many more catches of how many turns?
 *
 * After r more catches of t turns the half-width is that of the one width (`halfWidthOf`) on the scatter of that moment,
 * which is not known yet: the part still to come is to the part in hand as an F variable, so each number of further
 * catches has a chance of reaching the tolerance, and the fewest with the chance `assurance` are the one number quoted.
 * Catches are no heavier than bag and scale take, and no more than `mostCatches` of a fill. Before any scatter is known a
 * typical one is assumed, which never decides anything about a fill that was caught.
 *
 * Taken one catch at a time: stop when the half-width is within the tolerance, not before `fewestOwn` (`fewestPooled`)
 * catches and not after `mostCatches`, and state ± the larger of half-width and tolerance.
 *
 * @param meter    one bin × product of a fitted model; null: planning before any catch
 * @param options  as resolved
 * @returns        relative half-widths, fractions of the delivery
 * Null when       no catch scatter is known: halfWidth; no number of catches within the limits is likely to do, or a
 *                 catch must be explained first: needed
 * Assumes         catch scatter variance proportional to turns; coverage of the stopping rule: reports/stopping-study.md
 * Source          Hahn & Meeker, Statistical Intervals (assurance); Cochran, Sampling Techniques (allocation)
 */
export function catchesNeeded(
  meter: MeterModel | null,
  options: CatchesNeededOptions,
): CatchesNeeded {
  requireModelOptions(options);
  const basis = knowledgeOf(meter, options);
  const state = stateOf(basis);
  const aim = aimOf(basis, options);
  const standing = standingOf(basis, aim);
  const longest = basis.longestTurns ?? basis.turnsPerCatch;
  const number =
    standing === "short" ? numberOfCatches(state, basis.turnsPerCatch, longest, aim) : null;
  const { halfWidth } = basis;
  const place = { bin: meter?.bin ?? null, product: meter?.product ?? null };
  const result = {
    kind: "catches-needed" as const,
    ...place,
    fill: basis.fill,
    options,
    input: { catches: basis.catches, turns: basis.turns, earlierFills: basis.earlierFills },
    basis,
    halfWidth,
    statedHalfWidth:
      standing === "enough" && halfWidth !== null
        ? Math.max(aim.phi * halfWidth, aim.tolerance)
        : null,
    standing: standing === "short" && number === null ? ("not reachable" as const) : standing,
    needed: number,
    chanceOffTolerance:
      halfWidth === null || basis.df === 0 ? null : chanceOff(halfWidth, basis.df, aim),
    leastTurns: leastTurnsForScale(state, aim),
    curve: nextCatchCurve(
      state,
      skippedFill(meter),
      number?.turns ?? basis.turnsPerCatch,
      aim,
      untold.includes(standing) ? 0 : Math.max(fewestShown, options.mostCatches - basis.catches),
    ),
    turnsPlan: options.time === null ? null : turnsForTime(basis, options, options.time),
    trialPlan: options.trial === null ? null : trialPlan(meter, basis, options, options.trial),
  };
  return { ...result, cautions: neededCautions(result) };
}

/** The aim of one fill's catches, as the options and the scatter that speaks make it. */
export function aimOf(basis: Pick<Knowledge, "scatter">, options: CatchesNeededOptions): CatchAim {
  const { level, tolerance, assurance, mostCatches, settingError, phi } = options;
  return {
    level,
    tolerance,
    assurance,
    mostCatches,
    settingError,
    phi,
    fewestCatches: fewestCatches(basis, options),
  };
}

function standingOf(basis: Knowledge, aim: CatchAim): Standing {
  const { catches, halfWidth, df, scatter, inDoubt } = basis;
  if (inDoubt) return "waits";
  if (catches > 0 && (halfWidth === null || scatter === "assumed")) return "unknown";
  if (catches > 0 && df < fewestDfToPlan) return "too few";
  if (catches === 0 || halfWidth === null) return "short";
  switch (stopsAt(catches, halfWidth, df, aim)) {
    case "within tolerance":
      return "enough";
    case "most catches reached":
      return "not reachable";
    default:
      return "short";
  }
}

function skippedFill(meter: MeterModel | null) {
  if (meter === null) return null;
  const { nextFill, spread } = meter.across;
  const halfWidth = relativeHalfWidth(nextFill);
  return halfWidth === null || nextFill.df === null
    ? null
    : { halfWidth, df: nextFill.df, leastChance: leastChanceOfSkip(spread) };
}
