import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";

/** What is said on the charts of fills in order of time. */
export const driftCharts = {
  chart: {
    title: (f: Facts<"bin">) => `Fills in order of time, bin ${f.bin}`,
    fill: "Fill",
    date: "Date",
    delivery: (unit: string) => `Delivery (${unit})`,
    catches: "Catches",
  },
  shown: (fills: number) =>
    `Delivery of ${nouns.fills(fills)} in order of time, each with its interval, the level of each stretch, and the tolerance lines about the level in force.`,
  level: (f: Facts<"mean"> & Counts<"from" | "to">) =>
    `${nouns.fillsFromTo(f)}: ${f.mean} on average.`,
  slope: (perFill: string) => `The line changes by ${perFill} a fill.`,
  marked: (fills: string) => `Marked as standing apart: fill ${fills}.`,
  oneMissing: (fill: number) => `${fill} missing`,
  missing: (f: Counts<"from" | "to">) => `${f.from}–${f.to} missing`,
  pause: (days: string) => `${days} days`,
  scoreChart: {
    title: (f: Facts<"bin">) => `Charts that remember earlier fills, bin ${f.bin}`,
    ewma: "EWMA of scores",
    cusum: "CUSUM of scores",
    fill: "Fill",
    score: "Score",
    above: "above",
    below: "below",
    caption:
      "A score is how far a fill lies from those before it, in standard normal units. A line beyond its limits draws the eye to a fill; the verdict does not use it.",
  },
  noticing: {
    title: (f: Facts<"bin">) => `How surely would a lasting shift of bin ${f.bin} be noticed?`,
    shift: "Size of the shift (%)",
    chance: { about: "Chance to notice it (%)", "at least": "Chance to notice it, at least (%)" },
  },
  noticed: (f: Facts<"shift" | "chance"> & Counts<"fillsSince">) =>
    `A shift of ${f.shift}: noticed with a chance of ${f.chance} after ${nouns.fills(f.fillsSince)}`,
  noticingDescription: (f: Facts<"spread" | "chances"> & Counts<"fillsBefore">) =>
    `Chance that a lasting shift is noticed which sets in with the next fill, by its size and the number of fills that show it. Before it stand ${nouns.fills(f.fillsBefore)}, which typically differ by ${f.spread}. ${f.chances}.`,
  scores: (f: Facts<"decision"> & Counts<"fills">) =>
    `Two charts of the normal scores of ${nouns.fills(f.fills)}, each fill against those before it: an exponentially weighted average with its limits, and two cumulative sums with the decision lines at ${f.decision}. They are for the eye; the verdict does not use them.`,
};
