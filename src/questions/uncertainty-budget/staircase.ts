import { sum } from "simple-statistics";
import type { MoneyResponse } from "../../data/setup.ts";
import { expectedLoss } from "../../model/fill-prices.ts";
import { propagateUncertainty } from "../../statistics/propagation.ts";
import type { UncertaintyBudgetOptions } from "./options.ts";
import type { BudgetSource, Staircase, StaircaseStage, StaircaseStep } from "./result.ts";
import type { Source } from "./sources.ts";
import { rateOf, totalOf } from "./total.ts";

/** From the weighing to the field, in the order in which they act. */
const stages = {
  scale: ["reading gross", "reading tare", "scale error"],
  catches: ["catch scatter", "turn count"],
  fills: ["fill to fill"],
  drift: ["drift"],
  ground: ["working width", "wheel travel", "slip"],
} as const satisfies Readonly<Record<StaircaseStage, readonly BudgetSource[]>>;

const stageNames = ["scale", "catches", "fills", "drift", "ground"] as const;

/**
 * How the variance of the rate builds up when the value is kept for the fills that follow, stage by stage, and what half of
 * each stage's standard uncertainty would leave of the expanded uncertainty and of the cost of the error.
 *
 * @param sources  of such a budget
 * @param options  level; the response prices the error, E loss(u·t(df)), null: no money
 * Source          JCGM 100:2008 (GUM) 5.1.2, G.4.1; Berger, Statistical Decision Theory (expected loss)
 */
export function staircaseOf(
  sources: readonly Source[],
  { level, response }: Pick<UncertaintyBudgetOptions, "level" | "response">,
): Staircase {
  const { contributions } = propagateUncertainty(rateOf(sources), sources, level);
  const whole = leftBy(sources, level, response);
  const steps: StaircaseStep[] = [];
  for (const stage of stageNames) {
    const own = ofStage(stage, sources);
    const from = steps.at(-1)?.to ?? 0;
    const share = sum(ofStage(stage, contributions).map((one) => one.share));
    const halved = sources.map((one) =>
      own.includes(one) ? { ...one, standardUncertainty: one.standardUncertainty / 2 } : one,
    );
    steps.push({
      stage,
      sources: own.map(({ name }) => name),
      share,
      from,
      to: from + share,
      ifHalved: share > 0 ? bought(whole, leftBy(halved, level, response)) : null,
    });
  }
  return { steps, ...whole };
}

function ofStage<T extends { readonly name: string }>(
  stage: StaircaseStage,
  all: readonly T[],
): readonly T[] {
  const names: readonly string[] = stages[stage];
  return all.filter(({ name }) => names.includes(name));
}

/**
 * Less doubt can neither leave more nor cost more, though the formula may have it so: half of a small part leaves fewer degrees of
 * freedom. Such a half buys nothing.
 */
function bought(whole: Left, { expanded, lossPerHectare: left }: Left): StaircaseStep["ifHalved"] {
  const now = whole.lossPerHectare;
  return {
    expanded: Math.min(whole.expanded, expanded),
    savesPerHectare: now === null || left === null ? null : Math.max(0, now - left),
  };
}

type Left = Pick<Staircase, "expanded" | "lossPerHectare">;

function leftBy(sources: readonly Source[], level: number, response: MoneyResponse | null): Left {
  const { combined, effectiveDf, expanded } = totalOf(sources, level);
  const law = { location: 0, scale: combined, df: effectiveDf ?? Number.POSITIVE_INFINITY };
  return { expanded, lossPerHectare: response === null ? null : expectedLoss(law, response) };
}
