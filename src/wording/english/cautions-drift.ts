import type { CautionCode, CautionFacts } from "../../results/caution.ts";
import type { Format } from "../format.ts";
import { earlierFillWords } from "./counted.ts";

type Sentences = { readonly [C in CautionCode]?: (facts: CautionFacts[C]) => string };

/** Cautions about fills in order of time, and about how repeatable catches are. */
export function englishDriftCautions(format: Format) {
  return {
    ...aboutLevels(format),
    ...aboutOrder(format),
    ...aboutFindings(format),
    ...aboutPractice(format),
  };
}

function aboutLevels(format: Format) {
  const more = (relative: number) =>
    `${format.percent(Math.abs(relative))} ${relative < 0 ? "less" : "more"}`;
  return {
    "fill-differs": ({ difference, earlierFills, pValue, limit }) =>
      `This fill stands apart: it delivers ${more(difference)} than ${earlierFillWords(earlierFills)} (${format.pValue(pValue)}). One clean fill in ${Math.round(1 / limit)} does that. Catch again before anything is turned.`,
    "fill-differs-confirmed": ({ difference, earlierFills, catches, usualCatches }) =>
      `This fill delivers ${more(difference)} than ${earlierFillWords(earlierFills)}, confirmed by ${catches} catches where ${format.plain(usualCatches)} are usual. Set by it, and look for the cause.`,
    "moved-since": ({ sinceFill, change, lower, upper }) =>
      `This meter has given about ${more(change)} since fill ${sinceFill}${lower === null || upper === null ? "" : ` (${format.signedPercent(lower)} to ${format.signedPercent(upper)})`}. Today's value is the one that counts; look for the cause.`,
    trending: ({ perFill, fills }) =>
      `Still moving: each fill gives ${perFill < 0 ? "less" : "more"} than the last (about ${format.percent(Math.abs(perFill))} a fill over ${fills} fills). Earlier fills no longer tell the next: catch every fill.`,
    "stood-apart": ({ difference, backWith }) =>
      `This fill was the odd one (${more(difference)} than those before it); fill ${backWith} is back. It is left out of the mean and of the spread.`,
  } satisfies Sentences;
}

function aboutOrder(format: Format) {
  return {
    "no-trend-yet": ({ fills, needed }) =>
      `${fills === 1 ? "One fill" : `${fills} fills`}: no trend can be tested before the ${ordinal(needed)} fill.`,
    "no-change-point-yet": ({ fills, needed }) =>
      `${fills} fills: whether the meter shifted, and when, can be tested from the ${ordinal(needed)} fill on.`,
    "fills-agree-exactly": ({ fills }) =>
      `All ${fills} fills agree to the last digit. That says that the scale is coarse, not that the meter is perfect; whether it moved cannot be tested.`,
    "product-changed": ({ otherProducts, beforeFills }) =>
      `The bin held ${format.list(otherProducts)} before ${beforeFills.length === 1 ? "fill" : "fills"} ${format.list(beforeFills.map(String))}. All fills count as one row all the same; if the meter was opened or changed then, say so in the setup (bins, starts_afresh).`,
    "product-order-unknown": () =>
      "Without dates, and with each product numbering its own fills, it cannot be told whether another product was in the bin between two fills. All fills are compared as if none was. Give dates (taken_at), or number the fills of a bin through.",
    "fill-numbers-against-dates": () =>
      "Fill numbers and dates put the fills in different orders. The dates are followed; check both.",
    "gaps-between-fills": ({ missingFills, longestPauseDays }) => {
      const missing =
        missingFills === 0
          ? null
          : `${missingFills === 1 ? "one fill is" : `${missingFills} fills are`} missing from the log`;
      const pause =
        longestPauseDays === null ? null : `the longest step is ${days(longestPauseDays, format)}`;
      return `There are gaps between fills: ${[missing, pause].filter((part) => part !== null).join("; ")}. A change cannot be dated more closely than the gap.`;
    },
  } satisfies Sentences;
}

function aboutFindings(format: Format) {
  return {
    "trend-or-wander": ({ pValue }) =>
      `Looked at once, at the end, the fills show a trend or a slow wander (${format.pValue(pValue)}), which is not enough for the verdict: fills that are alike when close in time look like a trend twice as often as chance alone would make them, or more often still.`,
    "delivery-settles": ({ scope, against, change, pValue }) => {
      const amount = format.percent(Math.abs(change));
      const direction = change < 0 ? "less" : "more";
      if (against === "bin level")
        return `The delivery goes with how full the bin is: ${amount} ${direction} with a full bin than with an empty one (${format.pValue(pValue)}, ${scope === "between fills" ? "from fill to fill" : "within fills"}). Catch at the level you drill at.`;
      return `The delivery settles: ${amount} ${direction} with every further catch of a fill (${format.pValue(pValue)}). Turn the meter until it runs evenly before the first catch that counts.`;
    },
  } satisfies Sentences;
}

function aboutPractice(format: Format) {
  return {
    "scatter-unusual": ({ ratio, pValue }) =>
      `These catches scatter ${format.plain(ratio, 2)} times as much as those of earlier fills (${format.pValue(pValue)}). Look for a doubtful catch first, then for what was done differently: bag, scale, turns, time between catches.`,
    "scatter-beyond-usual": ({ ratio, limit }) =>
      `These catches scatter ${format.plain(ratio, 2)} times as much as those of earlier fills; one clean fill in ${format.count(Math.round(1 / limit))} does that. Something was wrong with some of them, or with the meter: look at bag, scale, count of turns and outlet, then catch again.`,
    "no-scatter-to-compare": ({ catches, earlierDf }) =>
      catches === 1
        ? "One catch shows no scatter, so it cannot be compared with earlier fills."
        : earlierDf === 0
          ? "No earlier fill has two catches, so whether this scatter is usual cannot be told yet."
          : "The catches agree exactly, so their scatter cannot be compared with that of earlier fills.",
  } satisfies Sentences;
}

function ordinal(count: number): string {
  return { 4: "fourth", 5: "fifth", 6: "sixth" }[count] ?? `${count}th`;
}

function days(count: number, format: Format): string {
  const whole = Math.round(count);
  return whole === 1 ? "one day" : `${format.count(whole)} days`;
}
