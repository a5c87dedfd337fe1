import type { SuspectedCautionFacts } from "../../results/caution-facts/suspected.ts";
import type { cautionsSuspected as templates } from "../en/cautions-suspected.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";

/** As many figures as show that they run on. */
const shown = 4;

/** Slips that are suspected. A code that is not here carries no figures: its facts go to the sentence as they are. */
export function cautionsSuspectedSayings(
  format: Format,
  say: typeof templates,
): CautionSentences<SuspectedCautionFacts> {
  const first = (figures: readonly string[]) =>
    figures.length > shown ? `${figures.slice(0, shown).join(", ")} …` : format.list(figures);
  return {
    ...say,
    "counter-not-reset": ({ catches, countedOn, turns }) =>
      say["counter-not-reset"]({
        catches,
        countedOn,
        turns: first(turns.map((one) => format.plain(one))),
      }),
    "bag-not-emptied": ({ catches, countedOn, massesKg }) =>
      say["bag-not-emptied"]({
        catches,
        countedOn,
        masses: first(massesKg.map((one) => format.value(one, "mass"))),
      }),
    "net-and-turns-swapped": ({ catches, turns, net, unit }) =>
      say["net-and-turns-swapped"]({
        catches,
        turns: format.plain(turns),
        net: `${format.plain(net)} ${unit}`,
      }),
    "name-nearly-another": (facts) =>
      say["name-nearly-another"]({ ...facts, signs: facts.signs.join(", ") }),
    "bins-swapped": ({ other, here, there, usual }, { fill }) =>
      say["bins-swapped"]({
        other,
        here: format.value(here, "delivery"),
        there: format.value(there, "delivery"),
        usual: format.value(usual, "delivery"),
        fill: fill ?? "",
      }),
    "delivery-far-off": ({ against, times, read, meant }) =>
      say["delivery-far-off"]({ against, times: format.plain(times, 2), read, meant }),
  };
}
