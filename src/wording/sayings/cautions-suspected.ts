import type { SuspectedCautionFacts } from "../../results/caution-facts/suspected.ts";
import type { cautionsSuspected as templates } from "../en/cautions-suspected.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";

export function fourDigits(year: number): string {
  return String(year).padStart(4, "0");
}

/** As many figures as show that they run on. */
const shown = 4;

/** Slips that are suspected. A code that is not here carries no figures: its facts go to the sentence as they are. */
export function cautionsSuspectedSayings(
  format: Format,
  say: typeof templates,
): CautionSentences<SuspectedCautionFacts> {
  const firstOf = (figures: readonly string[]) =>
    figures.length > shown ? `${figures.slice(0, shown).join(", ")} …` : format.list(figures);
  return {
    ...say,
    "counter-not-reset": ({ catches, countedOn, turnsWritten }) =>
      say["counter-not-reset"]({
        catches,
        countedOn,
        turns: firstOf(turnsWritten.map((one) => format.plain(one))),
      }),
    "bag-not-emptied": ({ catches, countedOn, massesKg }) =>
      say["bag-not-emptied"]({
        catches,
        countedOn,
        masses: firstOf(massesKg.map((one) => format.value(one, "mass"))),
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
    "year-looks-wrong": ({ year, fill }) =>
      say["year-looks-wrong"]({ year: fourDigits(year), fill }),
    "fill-spans-seasons": ({ first, last, days }, { fill }) =>
      say["fill-spans-seasons"]({
        first: format.date(first),
        last: format.date(last),
        days: format.count(days),
        fill: fill ?? "",
      }),
    "percent-looks-fraction": ({ column, largest }) =>
      say["percent-looks-fraction"]({
        column,
        largest: format.plain(largest),
        times100: format.plain(100 * largest),
      }),
    "share-looks-fraction": ({ seedShare, percent }) =>
      say["share-looks-fraction"]({
        seedShare,
        percent: format.plain(percent),
        times100: format.plain(100 * percent),
      }),
    "catches-on-other-sheets": ({ sheet, others }) =>
      say["catches-on-other-sheets"]({ sheet, others: format.list(others) }),
    "sheets-passed-over": ({ sheet, others }) =>
      say["sheets-passed-over"]({ sheet, others: format.list(others) }),
    "percent-cells": ({ header, cells, first, readAs }) =>
      say["percent-cells"]({
        header,
        cells,
        first,
        shown: format.percent(readAs),
        read: format.plain(readAs),
      }),
    "delivery-far-off": ({ heldAgainst, times, read, meant }) =>
      say["delivery-far-off"]({ heldAgainst, times: format.plain(times, 2), read, meant }),
  };
}
