import type { Counts, Facts, Numbers } from "./facts.ts";
import { type OtherMeters, togetherWith } from "./lenders.ts";
import { nouns } from "./nouns.ts";

/** Cautions about several fills and the one that follows. */
export const cautionsAcrossFills = {
  labels: {
    oneFillAndOthers: "One fill says nothing of its own about the next one.",
    spreadAssumed:
      "How much fills differ is not told by this bin alone: the typical figure given in the setup is taken too, which is assumed, not measured.",
  },
  "one-fill": () =>
    "One fill says nothing about the next one: the rate error from skipping calibration is unknown.",
  "two-fills": (times: string) =>
    `Two fills only: the band for the next one is ± ${times} times the difference between the two. A third fill narrows it more than anything else.`,
  "few-fills": (f: Counts<"fills">) =>
    `${f.fills} fills say little about how much fills differ; the intervals are wide on purpose.`,
  "spread-at-boundary": (f: Facts<never, "upper">) =>
    `The fills differ no more than catch scatter explains. That means "not told apart", not "no difference"${f.upper === null ? "" : `: the spread may be up to ${f.upper}`}.`,
  "spread-lent": (f: OtherMeters & Numbers<"df"> & { readonly sameProduct: boolean }) =>
    `How much fills differ is told by this bin together with ${togetherWith(f)}${f.sameProduct ? " of the same product" : ""}, relative to what each delivers (${nouns.degrees(f.df)}). Only the spread is borrowed, never the delivery.`,
  "fills-wilder-than-bins": (p: string) =>
    `This bin's fills differ more than those of the meters that lend to it (${p}). Look at the figure by itself: the borrowed one may be too narrow here.`,
  "fills-calmer-than-bins": (p: string) =>
    `This bin's fills differ less than those of the meters that lend to it (${p}): the figure by itself may suit it better.`,
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
