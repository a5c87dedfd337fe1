import type { Counts, Facts, Numbers } from "./facts.ts";
import { nouns } from "./nouns.ts";

/** Cautions about several fills and the one that follows. */
export const cautionsAcrossFills = {
  labels: { oneFillAndOthers: "One fill says nothing of its own about the next one." },
  "one-fill": () =>
    "One fill says nothing about the next one: the rate error from skipping calibration is unknown.",
  "two-fills": (times: string) =>
    `Two fills only: the band for the next one is ± ${times} times the difference between the two. A third fill narrows it more than anything else.`,
  "few-fills": (f: Counts<"fills">) =>
    `${f.fills} fills say little about how much fills differ; the intervals are wide on purpose.`,
  "spread-at-boundary": (f: Facts<never, "upper">) =>
    `The fills differ no more than catch scatter explains. That means "not told apart", not "no difference"${f.upper === null ? "" : `: the spread may be up to ${f.upper}`}.`,
  "spread-borrowed": (f: Counts<"fills"> & Numbers<"df">) =>
    `How much fills differ is borrowed from ${f.fills} fills of the other bins, on the relative scale (${nouns.degrees(f.df)}). It is a stand-in until this bin has fills of its own.`,
  "fills-are-not-catches": (f: Facts<"times" | "held">) =>
    `Taking every catch as a fill of its own would make the interval ${f.times} times narrower, and wrong: such intervals hold the truth ${f.held} of the time where they say 95 %.`,
  /** Null: as many fills tell how much fills differ. */
  "fills-since-change": (
    f: Counts<"sinceFill" | "fills"> & { readonly spreadFills: number | null },
  ) =>
    `What is said of the next fill, of skipping and of cost rests on ${f.fills === 1 ? `fill ${f.sinceFill} alone` : `the ${f.fills} fills since fill ${f.sinceFill}`}, the level in force${f.spreadFills === null ? "" : `; how much fills differ is told by ${f.spreadFills} fills, each against its own level`}.`,
  "first-catch-tells-less": (f: Facts<"oneCatch" | "earlierFills">) =>
    `One catch (${f.oneCatch}) tells less than the earlier fills do (${f.earlierFills}): take two or three, or none.`,
};
