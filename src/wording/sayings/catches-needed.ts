import type { Action } from "../../analysis/decision.ts";
import type { NumberOfCatches } from "../../model/next-catch.ts";
import type { CatchesNeeded } from "../../questions/catches-needed.ts";
import type { catchesNeeded as templates } from "../en/catches-needed.ts";
import type { Format } from "../format.ts";
import { lenderFacts } from "./lenders.ts";
import { moneyWords } from "./money.ts";
import { numbered } from "./numbered.ts";

/** Which sentences are said about how many catches are enough. */
export function catchesNeededSayings(format: Format, say: typeof templates) {
  const { plusMinus } = format;
  const mass = (kg: number) => format.value(kg, "mass");
  const money = (value: number, { options }: CatchesNeeded) =>
    moneyWords(value, options.prices?.currency ?? null, format);
  /** What one catch more costs and saves; null: nothing is known of it, or what it saves has no limit. */
  const inMoney = (result: CatchesNeeded) => {
    const { worth } = result;
    return worth === null || worth.saves === null
      ? null
      : { costs: money(worth.costs, result), saves: money(worth.saves, result) };
  };

  return {
    /** What an axis of catches is called. */
    catchesOfFill: say.catchesOfFill,
    /** @param action  what is decided for the fill: no number of catches is an answer while something is to be looked at */
    sentence: (result: CatchesNeeded, action?: Action): string => {
      const { standing, needed, options, halfWidth, input, basis } = result;
      const asked = { who: say.who(result), tolerance: plusMinus(options.tolerance) };
      if (standing === "waits") return say.waits(asked);
      if (standing === "too few") return say.tooFew(asked);
      const limits = { most: options.mostCatches, mass: mass(basis.heaviestCatch.kg) };
      const number = needed === null ? null : numberFacts(needed, result.decides, format);
      if (input.catches === 0 && result.skip?.skips && action === undefined)
        return number === null ? say.none(asked) : say.planOrNone({ ...asked, ...number });
      if (input.catches === 0)
        return number === null
          ? say.planNotReachable({ ...asked, ...limits })
          : say.plan({ ...asked, ...number });
      if (standing === "unknown" || halfWidth === null)
        return say.unknownError({ ...asked, catches: input.catches });
      const known = { ...asked, catches: input.catches, halfWidth: plusMinus(halfWidth) };
      if (standing === "enough") {
        if (action === "look-first") return say.lookFirst(known);
        if (action === "catch-more") return say.moreAsked(known);
        const spared = result.decides === "money" ? inMoney(result) : null;
        return spared === null ? say.enough(known) : say.enoughByMoney({ ...known, ...spared });
      }
      return number === null
        ? say.notReachable({ ...known, ...limits })
        : say.short({ ...known, ...number });
    },
    inMoney,
    /**
     * @param action  what is decided for the fill: nothing is said of worth while something is to be looked at, or more is
     *                asked for whatever it is worth
     */
    worth: (result: CatchesNeeded, action?: Action): string | null => {
      const { worth, decides, standing } = result;
      const outranked =
        action === "look-first" || (action === "catch-more" && standing === "enough");
      if (worth === null || outranked) return null;
      const spared = inMoney(result);
      if (spared === null) return say.pays({ costs: money(worth.costs, result), saves: null });
      if (decides === "tolerance") return say.worth(spared);
      return worth.pays ? say.pays(spared) : say.doesNotPay(spared);
    },
    rule: ({ options, stopping }: CatchesNeeded): string => {
      const facts = { most: options.mostCatches, tolerance: plusMinus(options.tolerance) };
      if (options.prices !== null && options.toleranceFrom === "default")
        return say.ruleByMoney(facts);
      const widened = stopping.phi === 1 ? null : format.percent(stopping.phi - 1, 0);
      return say.rule({ ...facts, fewest: stopping.fewest, widened });
    },
    basis: ({ basis, input }: CatchesNeeded): string | null => {
      const facts = {
        scatter: format.percent(basis.relativeScatter),
        turns: numbered(basis.turnsPerCatch, format),
        df: numbered(basis.df, format),
      };
      if (basis.scatter === "assumed") return input.catches > 0 ? null : say.assumedScatter(facts);
      if (basis.relativeScatter === 0) return say.hiddenScatter;
      return basis.lentBy === null
        ? say.ownScatter(facts)
        : say.lentScatter({ ...facts, ...lenderFacts(basis.lentBy) });
    },
  };
}

/** So many catches of so many turns. */
export function plannedFacts(
  { further, turns }: Pick<NumberOfCatches, "further" | "turns">,
  format: Format,
) {
  return { further, turns: numbered(turns, format) };
}

/** The one number of catches, with what it reaches, and how likely. */
export function numberFacts(
  needed: NumberOfCatches,
  decides: CatchesNeeded["decides"],
  format: Format,
) {
  return {
    ...plannedFacts(needed, format),
    byMoney: decides === "money",
    reaches: format.plusMinus(needed.reaches),
    chance: format.chance(needed.chance),
    typically: format.plusMinus(needed.typically),
  };
}
