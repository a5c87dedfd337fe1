import type { KnownState } from "../model/known-width.ts";
import type { MeterModel } from "../model/model.ts";
import {
  type CatchAim,
  chanceOff,
  leastTurnsForScale,
  numberOfCatches,
  stopsAt,
} from "../model/next-catch.ts";
import { nextCatchCurve } from "../model/next-catch-curve.ts";
import { leastChanceOfSkip } from "../model/skip-chance.ts";
import { relativeHalfWidth } from "../model/t-estimate.ts";
import type { WorthOfCatch } from "../model/worth-of-catch.ts";
import { requireModelOptions } from "../results/options.ts";
import { type DrawnOfNeeded, neededCautions } from "./catches-needed/cautions.ts";
import { knowledgeOf, stateOf, stoppingRule } from "./catches-needed/knowledge.ts";
import { deciderOf, numberThatPays, pricingOf, skipOf, worthOf } from "./catches-needed/money.ts";
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
  Decider,
  Knowledge,
  SkipAdvice,
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
 * Taken one catch at a time: stop when φ times the half-width is within the tolerance, not before the fewest catches of
 * `stopping` and not after `mostCatches`, and state ± the larger of φ times the half-width and the tolerance.
 *
 * With prices, and a tolerance that nobody gave, money decides instead: stop when another catch costs more than it saves.
 * A tolerance that somebody gave decides before money, which is told beside it. A fill to come may go uncaught by the same
 * order of the two.
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
  const { basis, state, aim, standing, result } = neededSoFar(meter, options);
  const drawn = {
    curve: nextCatchCurve(
      state,
      skippedFill(meter),
      result.needed?.turns ?? basis.turnsPerCatch,
      aim,
      untold.includes(standing) ? 0 : Math.max(fewestShown, options.mostCatches - basis.catches),
    ),
    turnsPlan: options.time === null ? null : turnsForTime(basis, options, options.time),
    trialPlan: options.trial === null ? null : trialPlan(meter, basis, options, options.trial),
  };
  return { ...result, ...drawn, cautions: neededCautions(result, drawn) };
}

/** What of the catches needed a decision is made from, without what is drawn. */
export type CatchesNeededInBrief = Pick<
  CatchesNeeded,
  "options" | "input" | "basis" | "needed" | "standing" | "cautions"
>;

/** The same answer as `catchesNeeded`, as far as a decision needs it. */
export function catchesNeededInBrief(
  meter: MeterModel,
  options: CatchesNeededOptions,
): CatchesNeededInBrief {
  // Of a fill still to come, and of a plan that was asked for, what is drawn is among the findings.
  const isPlanned = options.fill === "next" || options.time !== null || options.trial !== null;
  if (isPlanned) return catchesNeeded(meter, options);
  const { result } = neededSoFar(meter, options);
  return { ...result, cautions: neededCautions(result, nothingDrawn) };
}

const nothingDrawn: DrawnOfNeeded = {
  curve: { kind: "next-catch-curve", turnsPerCatch: 0, points: [] },
  turnsPlan: null,
  trialPlan: null,
};

function neededSoFar(meter: MeterModel | null, options: CatchesNeededOptions) {
  requireModelOptions(options);
  const basis = knowledgeOf(meter, options);
  const state = stateOf(basis);
  const aim = aimOf(basis, options);
  const early = earlyStanding(basis);
  const pricing = early === null ? pricingOf(basis, options) : null;
  const decides = early === null ? deciderOf(pricing, options) : null;
  const worth = worthOf(state, pricing);
  const standing = early ?? standingOf(basis, aim, decides === "money" ? worth : null);
  const number =
    standing !== "short"
      ? null
      : decides === "money" && pricing !== null
        ? numberThatPays(state, pricing, aim)
        : numberWithinTolerance(basis, state, aim);
  const { halfWidth } = basis;
  const result = {
    kind: "catches-needed" as const,
    bin: meter?.bin ?? null,
    product: meter?.product ?? null,
    fill: basis.fill,
    options,
    input: { catches: basis.catches, turns: basis.turns, earlierFills: basis.earlierFills },
    basis,
    halfWidth,
    statedHalfWidth:
      standing === "enough" && halfWidth !== null
        ? Math.max(aim.phi * halfWidth, aim.tolerance)
        : null,
    stopping: stoppingRule(basis, options),
    standing: standing === "short" && number === null ? ("not reachable" as const) : standing,
    decides,
    worth,
    needed: number,
    skip: skipOf(meter, options),
    chanceOffTolerance:
      halfWidth === null || basis.df === 0 ? null : chanceOff(halfWidth, basis.df, aim),
    leastTurns: leastTurnsForScale(state, aim),
  };
  return { basis, state, aim, standing, result };
}

/** The aim of one fill's catches, as the options and the scatter that speaks make it. */
export function aimOf(basis: Pick<Knowledge, "lentBy">, options: CatchesNeededOptions): CatchAim {
  const { level, tolerance, assurance, mostCatches, settingError } = options;
  const { fewest, phi } = stoppingRule(basis, options);
  return {
    level,
    tolerance,
    assurance,
    mostCatches,
    settingError,
    phi,
    fewestCatches: fewest,
  };
}

function numberWithinTolerance(basis: Knowledge, state: KnownState, aim: CatchAim) {
  const { turnsPerCatch, longestTurns } = basis;
  return numberOfCatches(state, turnsPerCatch, longestTurns ?? turnsPerCatch, aim);
}

/** Where a fill stands before width or money can be asked; null: they can. */
function earlyStanding({
  catches,
  halfWidth,
  df,
  scatter,
  lentBy,
  inDoubt,
}: Knowledge): Standing | null {
  if (inDoubt) return "waits";
  if (catches > 0 && (halfWidth === null || scatter === "assumed")) return "unknown";
  return catches > 0 && lentBy === null && df < fewestDfToPlan ? "too few" : null;
}

function standingOf(
  { catches, halfWidth, df }: Knowledge,
  aim: CatchAim,
  worth: WorthOfCatch | null,
): Standing {
  if (worth !== null) return worth.pays ? "short" : "enough";
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
    : {
        halfWidth,
        df: nextFill.df,
        ownDf: spread.ownDf,
        leastChance: leastChanceOfSkip(spread),
      };
}
