import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import type { CatchesNeeded } from "./result.ts";

type Say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) => Caution;

/** What is drawn and planned beside the number of catches. */
export type DrawnOfNeeded = Pick<CatchesNeeded, "curve" | "turnsPlan" | "trialPlan">;

/** The answer without it. */
type Needed = Omit<CatchesNeeded, keyof DrawnOfNeeded | "cautions">;

/** Everything about the number of catches that a person should know before relying on it. */
export function neededCautions(
  result: Needed,
  { curve, turnsPlan, trialPlan }: DrawnOfNeeded,
): readonly Caution[] {
  const { bin, product, fill, basis, standing } = result;
  const say: Say = (code, facts) => caution(code, { bin, product, fill }, facts);
  const plans = standing !== "unknown" || turnsPlan !== null || trialPlan !== null;
  return [
    ...(basis.scatter === "assumed" && !basis.inDoubt && plans
      ? [say("scatter-assumed", { relative: basis.relativeScatter, turns: basis.turnsPerCatch })]
      : []),
    ...(trialPlan?.spreadFrom === "assumption"
      ? [say("spread-assumed", { relative: trialPlan.spread })]
      : []),
    ...aboutFirstCatch(fill, curve, say),
    ...aboutStanding(result, say),
  ];
}

/** Of a fill still to come: its first catch may tell less than the earlier fills do. */
function aboutFirstCatch(fill: Needed["fill"], curve: DrawnOfNeeded["curve"], say: Say): Caution[] {
  const [skip, first] = curve.points;
  if (fill !== null || skip?.halfWidth == null || first?.halfWidth == null) return [];
  if (first.halfWidth <= skip.halfWidth) return [];
  const facts = { skipHalfWidth: skip.halfWidth, firstHalfWidth: first.halfWidth };
  return [say("first-catch-tells-less", facts)];
}

function aboutStanding(result: Needed, say: Say): Caution[] {
  return result.decides === "money" ? byMoney(result, say) : byTolerance(result, say);
}

function byMoney({ worth, options }: Needed, say: Say): Caution[] {
  if (worth === null) return [];
  const { costs, saves, pays } = worth;
  const currency = options.prices?.currency ?? null;
  return [
    pays || saves === null
      ? say("next-catch-pays", { costs, saves, currency })
      : say("enough-by-money", { costs, saves, currency }),
  ];
}

function byTolerance(result: Needed, say: Say): Caution[] {
  const { standing, halfWidth, needed, options, basis, leastTurns } = result;
  const { tolerance } = options;
  if (standing === "enough") return [say("stopped-on-width", { tolerance })];
  // Before any catch nothing is short yet: the number is a plan.
  if (basis.catches === 0 || halfWidth === null) return [];
  const chanceOff = result.chanceOffTolerance;
  const scaleHides = leastTurns !== null && basis.turnsPerCatch < leastTurns;
  if (standing === "not reachable")
    return halfWidth <= tolerance && chanceOff !== null
      ? [say("step-leaves-chance", { settingError: options.settingError, chance: chanceOff })]
      : [
          say("tolerance-not-reachable", {
            halfWidth,
            tolerance,
            catches: basis.catches,
            mostCatches: options.mostCatches,
            heaviestCatchKg: basis.heaviestCatch.kg,
            heaviestGiven: basis.heaviestCatch.given,
            leastTurns: scaleHides ? leastTurns : null,
          }),
        ];
  if (standing !== "short" || needed === null) return [];
  return [
    scaleHides
      ? say("scale-limits-tolerance", {
          turns: basis.turnsPerCatch,
          leastTurns,
          divisionKg: options.scaleDivisionKg,
        })
      : say("short-of-tolerance", { halfWidth, tolerance, settingError: options.settingError }),
  ];
}
