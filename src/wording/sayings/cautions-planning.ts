import type { PlanningCautionFacts } from "../../results/caution-facts/planning.ts";
import type { cautionsPlanning as templates } from "../en/cautions-planning.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";
import { moneyWords } from "./money.ts";
import { numbered } from "./numbered.ts";

/**
 * Cautions about how many catches are enough, what skipping risks, and what it costs. A code that is not here carries no
 * figures: its facts go to the sentence as they are.
 */
export function cautionsPlanningSayings(
  format: Format,
  { labels, ...say }: typeof templates,
): CautionSentences<PlanningCautionFacts> {
  const { percent, plusMinus, signedPercent } = format;
  const mass = (kg: number) => format.value(kg, "mass");
  const delivery = (kgPerTurn: number) => format.value(kgPerTurn, "delivery");
  const perArea = (perHectare: number) =>
    labels.perArea[format.units](format.plain(perHectare / format.convert(1, "area", 1)));
  return {
    ...say,
    // catches needed
    "scatter-assumed": ({ relative, turns }) =>
      say["scatter-assumed"]({ scatter: percent(relative), turns: numbered(turns, format) }),
    "spread-assumed": ({ relative }) => say["spread-assumed"](percent(relative)),
    "scale-limits-tolerance": ({ turns, leastTurns, divisionKg }) =>
      say["scale-limits-tolerance"]({
        division: divisionKg === null ? null : mass(divisionKg),
        turns: format.plain(turns),
        leastTurns: format.count(leastTurns),
      }),
    "stopped-on-width": ({ tolerance }) => say["stopped-on-width"](plusMinus(tolerance)),
    "next-catch-pays": ({ costs, saves, currency }) =>
      say["next-catch-pays"]({
        costs: moneyWords(costs, currency, format),
        saves: saves === null ? null : moneyWords(saves, currency, format),
      }),
    "short-of-tolerance": ({ halfWidth, tolerance, settingError }) =>
      say["short-of-tolerance"]({
        known: plusMinus(halfWidth),
        tolerance: plusMinus(tolerance),
        step: settingError === 0 ? null : signedPercent(settingError),
      }),
    "tolerance-not-reachable": ({ catches, mostCatches, leastTurns, ...facts }) => {
      const reached = {
        known: plusMinus(facts.halfWidth),
        tolerance: plusMinus(facts.tolerance),
        mostCatches,
        leastTurns: leastTurns === null ? null : format.count(leastTurns),
      };
      return catches >= mostCatches
        ? labels.mostCatchesTaken(reached)
        : say["tolerance-not-reachable"]({
            ...reached,
            heaviest: mass(facts.heaviestCatchKg),
            heaviestGiven: facts.heaviestGiven,
          });
    },
    "step-leaves-chance": ({ settingError, chance }) =>
      say["step-leaves-chance"]({
        step: signedPercent(settingError),
        chance: format.chance(chance),
      }),
    // skipping
    "skip-not-priced": ({ fills }) =>
      fills === 1 || fills === 2 ? say["skip-not-priced"](fills) : labels.spreadTooLittleKnown,
    "spread-mostly-catch-scatter": ({ share }) =>
      say["spread-mostly-catch-scatter"](share === 1 ? null : percent(share, 0)),
    "book-value-outside": ({ bookKgPerTurn, lowerKgPerTurn, upperKgPerTurn }) =>
      say["book-value-outside"]({
        book: delivery(bookKgPerTurn),
        band: format.range(delivery(lowerKgPerTurn), delivery(upperKgPerTurn)),
      }),
    // cost
    "prices-missing": ({ missing }) =>
      say["prices-missing"](format.list(missing.map((name) => labels.missing[name] ?? name))),
    "heavy-cost-below-product": ({ heavyPerPercent, productPerPercent }) =>
      say["heavy-cost-below-product"]({
        heavy: perArea(heavyPerPercent),
        product: perArea(productPerPercent),
      }),
  };
}
