import { curveOf, type MeterModel } from "../model/model.ts";
import { requireModelOptions } from "../results/options.ts";
import { neededCautions } from "./catches-needed/cautions.ts";
import { furtherCatches, recommend } from "./catches-needed/further.ts";
import { knowledgeOf } from "./catches-needed/knowledge.ts";
import type { CatchesNeeded, CatchesNeededOptions } from "./catches-needed/result.ts";
import { stoppingAdvice } from "./catches-needed/stopping.ts";
import { trialPlan } from "./catches-needed/trial.ts";
import { turnsForScale, turnsForTime } from "./catches-needed/turns.ts";

export type {
  TimeBudget,
  TrialCosts,
  TrialPlan,
  TrialSplit,
  TurnsChoice,
  TurnsPlan,
} from "./catches-needed/plans.ts";
export type {
  CatchesNeeded,
  CatchesNeededOptions,
  FurtherCatches,
  Knowledge,
  Recommendation,
  StoppingAdvice,
  TypicalScatter,
} from "./catches-needed/result.ts";

const turnsTried = [0.5, 1, 2] as const;

/**
 * Is the delivery known well enough, and if not, how many more catches of how many turns?
 *
 * After r more catches of t turns the half-width is t(df)·√(s²/(T + r·t) + reading the scale²). The s² of that moment is
 * not known yet: the part still to come is to the part in hand as an F variable, so each number of further catches has
 * a chance of reaching the tolerance, and the fewest with the chance `assurance` are recommended. Before any scatter is
 * known a typical one is assumed and the chance is that of the χ² of the catches still to come.
 *
 * Taken one catch at a time: stop when the half-width is within the tolerance, not before `fewestOwn` (`fewestPooled`)
 * catches and not after `mostCatches`, and state ± the larger of half-width and tolerance.
 *
 * @param meter    one bin × product of a fitted model; null: planning before any catch
 * @param options  as resolved
 * @returns        relative half-widths, fractions of the delivery
 * Null when       no catch scatter is known: halfWidth (caution scatter-assumed goes with the plan); no number of
 *                 catches within the limit does: recommended (caution tolerance-needs-more-catches)
 * Assumes         catch scatter variance proportional to turns; coverage of the stopping rule: reports/stopping-study.md
 * Source          Hahn & Meeker, Statistical Intervals (assurance); Cochran, Sampling Techniques (allocation)
 */
export function catchesNeeded(
  meter: MeterModel | null,
  options: CatchesNeededOptions,
): CatchesNeeded {
  requireModelOptions(options);
  const basis = knowledgeOf(meter, options);
  const further = furtherCatches(basis, options);
  const halfWidth = further[0]?.halfWidth ?? null;
  const stopping = stoppingAdvice({ ...basis, halfWidth }, options);
  const findings = {
    recommended: recommend(basis, options),
    withoutLimit: recommend(basis, { ...options, mostCatches: Number.POSITIVE_INFINITY }),
    turnsForScale: turnsForScale(basis, options.tolerance),
    trialPlan: options.trial === null ? null : trialPlan(meter, basis, options, options.trial),
  };
  return {
    kind: "catches-needed",
    bin: meter?.bin ?? null,
    product: meter?.product ?? null,
    fill: basis.fill,
    options,
    input: { catches: basis.catches, turns: basis.turns, earlierFills: basis.earlierFills },
    basis,
    halfWidth,
    met: halfWidth === null ? null : halfWidth <= options.tolerance,
    stopping,
    further,
    ...findings,
    byTurns: turnsTried.map((times) => {
      const turns = Math.max(1, Math.round(times * basis.turnsPerCatch));
      return { turns, recommended: recommend({ ...basis, turnsPerCatch: turns }, options) };
    }),
    turnsPlan: options.time === null ? null : turnsForTime(basis, options, options.time),
    curve: meter === null ? null : curveOf(meter, options, { turnsPerCatch: basis.turnsPerCatch }),
    cautions: neededCautions(
      { basis, stopping, further, options, ...findings },
      { bin: meter?.bin ?? null, product: meter?.product ?? null },
    ),
  };
}
