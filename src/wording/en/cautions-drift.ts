import type { FillName } from "../../results/fill-name.ts";
import type { Change, Counts, Facts, Numbered } from "./facts.ts";
import { type Beginning, nouns } from "./nouns.ts";

const { beginning, change, earlierFills, fills } = nouns;

/** So many fills, and the first number of them at which something can be tested. */
type Waiting = Counts<"fills" | "needed">;

const ordinals: Readonly<Record<number, string>> = { 4: "fourth", 5: "fifth", 6: "sixth" };
const ordinal = (count: number) => ordinals[count] ?? `${count}th`;

/** Cautions about fills in order of time, and about how repeatable catches are. */
export const cautionsDrift = {
  /** What is said of gaps, one after the other. */
  gaps: {
    missing: (count: number) =>
      `${count === 1 ? "one fill is" : `${count} fills are`} missing from the log`,
    longestPause: (days: Numbered) =>
      `the longest step is ${days.one ? "one day" : `${days.words} days`}`,
  },
  "fill-differs": (f: Change & Counts<"earlierFills"> & Facts<"p" | "oneIn">) =>
    `This fill stands apart: it delivers ${change(f)} than ${earlierFills(f.earlierFills)} (${f.p}). One clean fill in ${f.oneIn} does that. Catch again before anything is turned.`,
  "fill-differs-confirmed": (
    f: Change & Counts<"earlierFills" | "catches"> & Facts<"usualCatches">,
  ) =>
    `This fill delivers ${change(f)} than ${earlierFills(f.earlierFills)}, confirmed by ${f.catches} catches where ${f.usualCatches} are usual. Set by it, and look for the cause.`,
  "moved-since": (f: Change & Beginning & Facts<never, "range">) =>
    `This meter has given about ${change(f)} since ${beginning(f)}${f.range === null ? "" : ` (${f.range})`}. Today's value is the one that counts; look for the cause.`,
  trending: (f: Change & Counts<"fills">) =>
    `Still moving: each fill gives ${f.less ? "less" : "more"} than the last (about ${f.percent} a fill over ${f.fills} fills). Earlier fills no longer tell the next: catch every fill.`,
  "stood-apart": (f: Change & Counts<"backWith">) =>
    `This fill was the odd one (${change(f)} than those before it); fill ${f.backWith} is back. It is left out of the mean and of the spread.`,
  "no-trend-yet": (f: Waiting) =>
    `${f.fills === 1 ? "One fill" : fills(f.fills)}: no trend can be tested before the ${ordinal(f.needed)} fill.`,
  "no-change-point-yet": (f: Waiting) =>
    `${fills(f.fills)}: whether the meter shifted, and when, can be tested from the ${ordinal(f.needed)} fill on.`,
  "fills-agree-exactly": (f: Counts<"fills">) =>
    `All ${f.fills} fills agree to the last digit. That says that the scale is coarse, not that the meter is perfect; by themselves they cannot tell whether it moved.`,
  "product-changed": (f: Facts<"products" | "fills"> & Counts<"beforeFills">) =>
    `The bin held ${f.products} before ${f.beforeFills === 1 ? "fill" : "fills"} ${f.fills}. All fills count as one row all the same; if the meter was opened or changed then, say so in the setup (bins, starts_afresh).`,
  "product-order-unknown": () =>
    "Without dates, and with each product numbering its own fills, it cannot be told whether another product was in the bin between two fills. All fills are compared as if none was. Give dates (taken_at), or number the fills of a bin through.",
  "fill-numbers-against-dates": () =>
    "Fill numbers and dates put the fills in different orders. The dates are followed; check both.",
  "gaps-between-fills": (found: string) =>
    `There are gaps between fills: ${found}. A change cannot be dated more closely than the gap.`,
  "trend-or-wander": (p: string) =>
    `Looked at once, at the end, the fills show a trend or a slow wander (${p}), which is not enough for the verdict. Fills that are alike when close in time look like a trend at least twice as often as chance alone would make them.`,
  "delivery-settles": {
    catchOrder: (f: Change & Facts<"p">) =>
      `The delivery settles: ${change(f)} with every further catch of a fill (${f.p}). With nobody at the outlet, turn the meter until it runs evenly before the first catch that counts.`,
    binLevel: (f: Change & Facts<"p"> & { readonly betweenFills: boolean }) =>
      `The delivery goes with how full the bin is: ${change(f)} with a full bin than with an empty one (${f.p}, ${f.betweenFills ? "from fill to fill" : "within fills"}). Catch at the level you drill at.`,
  },
  "column-splits-fills": (
    f: Facts<"columns" | "low" | "high" | "percent" | "p"> & {
      readonly explainsSince: FillName | null;
    },
  ) =>
    `The fills go apart by ${f.columns}: with "${f.high}" this meter gives ${f.percent} more than with "${f.low}" (${f.p}).${f.explainsSince === null ? "" : ` That explains the change since fill ${f.explainsSince} as well as the meter does.`} Catch one fill both ways before the meter is blamed.`,
  "scatter-unusual": (f: Facts<"times" | "p">) =>
    `These catches scatter ${f.times} times as much as is usual (${f.p}). Look for a doubtful catch first, then for what was done differently: bag, scale, turns, time between catches.`,
  "scatter-beyond-usual": (f: Facts<"times" | "oneIn">) =>
    `These catches scatter ${f.times} times as much as is usual; one clean fill in ${f.oneIn} does that. Something was wrong with some of them, or with the meter: look at bag, scale, count of turns and, with everything at rest, since a meter can start by itself, at the outlet; then catch again.`,
  "few-scatter-apart": (f: Facts<"times" | "p">) =>
    `These three catches scatter ${f.times} times as much as is usual (${f.p}); one clean fill in twenty does that. One more catch tells whether one of them was off.`,
  "no-scatter-to-compare": {
    oneCatch: "One catch shows no scatter, so it cannot be compared with what is usual.",
    noneEarlier:
      "No other fill has two catches, so whether this scatter is usual cannot be told yet.",
    exact: "The catches agree exactly, so their scatter cannot be compared with what is usual.",
  },
};
