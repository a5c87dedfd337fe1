import type { FillName } from "../../results/fill-name.ts";
import type { Counts, Facts, Numbered, Numbers } from "./facts.ts";
import { likeWhom, type OtherMeters, togetherWith } from "./lenders.ts";
import { nouns } from "./nouns.ts";

const { degrees, fills, onDegrees } = nouns;

type Who = Facts<"bin" | "product">;

/** What is said of the fills of one bin together. */
export const acrossFills = {
  labels: { heading: "Across fills" },
  nothingYet: (f: Who) =>
    `Bin ${f.bin} (${f.product}): one fill so far, so nothing can be said about the next one.`,
  next: (
    f: Who &
      Facts<"mean" | "next" | "level" | "halfWidth"> &
      Counts<"fills"> & {
        /** First fill of the level in force; null: all fills are of it. */
        readonly since: FillName | null;
      },
  ) =>
    `Bin ${f.bin} (${f.product}): ${f.mean} on average over ${f.fills === 1 ? "its one fill" : fills(f.fills)}${f.since === null ? "" : ` since fill ${f.since}`}; the next fill should deliver ${f.next} (${f.level} band), which is ${f.halfWidth}.`,
  /** Null: fills were taken in an order drawn by lot, and are independent. */
  mean: (
    f: Facts<"mean" | "level" | "range" | "ifAlike", "ifIndependent"> & {
      readonly df: Numbered | null;
    },
  ) =>
    `Mean of these fills: ${f.mean}, ${f.level} interval ${f.range} (Student's t${f.df === null ? "" : ` ${onDegrees(f.df)}`}: one estimate a fill)${f.ifIndependent === null ? "." : `: ${f.ifAlike} even if neighbouring fills are alike (correlation up to 0.5), ${f.ifIndependent} if they were independent.`}`,
  /** Null: by itself nothing is known. */
  twoLines: (f: Facts<"lent", "byItself"> & OtherMeters & { readonly assumed: boolean }) =>
    `The next fill, ${f.byItself === null ? "by itself: not known." : `by itself: ${f.byItself}.`} If this bin's fills differ like ${f.assumed ? "the typical figure in the setup" : `those of ${likeWhom(f)}`}: ${f.lent}.`,
  ifTypical: (f: Facts<"byItself" | "typical" | "halfWidth">) =>
    `The next fill, by itself: ${f.byItself}. If fills differ by ${f.typical}, as many meters' do: ${f.halfWidth}, which is assumed, not measured, and decides nothing.`,
  spreadUnknown: "How much fills differ is not known.",
  spread: (
    f: Facts<"size" | "level", "range"> &
      OtherMeters & {
        /** Fills behind it, where these are more than the level in force has; null: they are not. */
        readonly ofFills: number | null;
      },
  ) =>
    `Fill-to-fill spread: ${f.size}${f.range === null ? "" : ` (${f.level} interval ${f.range})`}${f.meters + f.library === 0 ? "" : `, told together with ${togetherWith(f)}`}${f.ofFills === null ? "" : `, from ${fills(f.ofFills)}, each against its own level`}.`,
  explainedByCatches: "Catch scatter alone explains that much.",
  withoutCatches: (rest: string) => `With catch scatter taken out, ${rest} remain.`,
  scatterUnknown: "Catch scatter is not known from these fills.",
  scatter: (f: Facts<"size"> & Numbers<"turns" | "df"> & Counts<"fills">) =>
    `Catch scatter within a fill: ${f.size} of a ${f.turns.words}-turn catch (${degrees(f.df)} from ${fills(f.fills)}).`,
  noReml: "Restricted maximum likelihood needs two fills and some catch scatter.",
  reml: (f: Facts<"mean" | "error", "component"> & Numbers<"df">) =>
    `Restricted maximum likelihood (REML), for comparison: mean ${f.mean}, adjusted standard error ${f.error} ${onDegrees(f.df)}; fill-to-fill component ${f.component === null ? "at zero, not told apart from catch scatter" : f.component}.`,
  catchOfFill: (f: Counts<"fill" | "catch">) => `fill ${f.fill} catch ${f.catch}`,
  leftOut: (f: Facts<"all" | "mean", "halfWidth"> & Counts<"catches">) =>
    `Left out of these figures, because no chance explains ${f.catches === 1 ? "it" : "them"}: ${f.all}. With ${f.catches === 1 ? "it" : "them"} the mean over fills would be ${f.mean}${f.halfWidth === null ? "" : `, and the next fill would be known to ${f.halfWidth}`}.`,
  correlation: (share: string) =>
    `Intraclass correlation: ${share} of the variance of one catch belongs to its fill.`,
  fills: {
    title: (f: Facts<"bin">) => `Delivery of each fill, bin ${f.bin}`,
    fill: "Fill",
    delivery: (unit: string) => `Delivery (${unit})`,
    interval: "Interval",
    catches: "Catches",
    turns: "Turns",
    date: "Date",
    unknown: "not known",
    caption: "Fills in order",
  },
  shortAndLong: {
    title: (f: Facts<"bin">) => `Do short and long catches agree? Bin ${f.bin}`,
    short: (unit: string) => `Short catches (${unit})`,
    long: (unit: string) => `Long catches (${unit})`,
  },
  shortAndLongPoint: (f: Counts<"fill"> & Facts<"short" | "long">) =>
    `Fill ${f.fill}: short ${f.short}, long ${f.long}`,
  shortAndLongDescription: (points: string) =>
    `Each fill's delivery by its long catches against that by its short ones, with the line on which both agree and the circle that chance seldom leaves. Fills along the line differ themselves; fills off it were caught differently. ${points}.`,
  fan: {
    title: (f: Facts<"bin">) => `Where will the next fill of bin ${f.bin} lie, and one more catch?`,
    delivery: (unit: string) => `Delivery (${unit})`,
    nextFill: "The next fill",
    row: (f: Facts<"name" | "range" | "level">) => `${f.name}: ${f.range} (${f.level})`,
  },
  fanCatch: (f: Counts<"fill">) => `One more catch of fill ${f.fill}`,
  fanCatchInFull: (f: Counts<"fill"> & Numbers<"turns">) =>
    `One more catch of fill ${f.fill}, ${f.turns.words} turns`,
  fanDescription: (rows: string) =>
    `What is expected, with bands that hold half, four fifths and 95 % of the cases: ${rows}.`,
  description: (f: Counts<"fills"> & Facts<"next">) =>
    `${fills(f.fills)} in order, each with its interval, against the band in which the next fill is expected: ${f.next}.`,
};
