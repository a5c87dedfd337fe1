import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import type { TrialPlan } from "./plans.ts";
import type {
  CatchesNeededOptions,
  FurtherCatches,
  Knowledge,
  Recommendation,
  StoppingAdvice,
} from "./result.ts";

export interface NeededFindings {
  readonly basis: Knowledge;
  readonly stopping: StoppingAdvice;
  readonly further: readonly FurtherCatches[];
  readonly recommended: Recommendation | null;
  readonly withoutLimit: Recommendation | null;
  readonly turnsForScale: number | null;
  readonly trialPlan: TrialPlan | null;
  readonly options: CatchesNeededOptions;
}

/** Everything about the number of catches that a person should know before relying on it. */
export function neededCautions(
  findings: NeededFindings,
  where: { readonly bin: string | null; readonly product: string | null },
): readonly Caution[] {
  const { basis, stopping, options, trialPlan } = findings;
  const found: Caution[] = [];
  const say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) =>
    found.push(caution(code, { ...where, fill: basis.fill }, facts));

  if (basis.scatter === "assumed")
    say("scatter-assumed", { relative: basis.relativeScatter, turns: basis.turnsPerCatch });
  if (trialPlan?.spreadFrom === "assumption") say("spread-assumed", { relative: trialPlan.spread });
  if (findings.turnsForScale !== null && basis.turnsPerCatch < findings.turnsForScale)
    say("scale-limits-tolerance", {
      turns: basis.turnsPerCatch,
      leastTurns: findings.turnsForScale,
    });
  if (stopping.reason === "within tolerance" && stopping.shownHalfWidth !== null)
    say("stopped-on-width", { tolerance: options.tolerance });
  else if (findings.recommended === null)
    say("tolerance-needs-more-catches", {
      mostCatches: options.mostCatches,
      catchesNeeded:
        findings.withoutLimit === null ? null : basis.catches + findings.withoutLimit.further,
      halfWidthThen: widthAtMost(findings),
    });
  return found;
}

function widthAtMost({ further, options }: NeededFindings): number | null {
  return further.find(({ catches }) => catches === options.mostCatches)?.halfWidth ?? null;
}
