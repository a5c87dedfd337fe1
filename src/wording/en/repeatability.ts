import type { Repeatability } from "../../questions/repeatability.ts";
import type { Counts, Facts, Numbered, Numbers } from "./facts.ts";
import { type LenderFacts, lenders } from "./lenders.ts";
import { nouns } from "./nouns.ts";

type Who = Facts<"bin"> & Counts<"fill">;

type Scatter = Who & Facts<"size"> & Numbers<"turns">;

const turns = ({ words, one }: Numbered) => `${words} ${one ? "turn" : "turns"}`;

/** What is said of how repeatable the catches of a fill are. */
export const repeatability = {
  labels: { heading: "How repeatable are the catches?" },
  practices: {
    "as usual": "as usual",
    "more than usual": "more than usual",
    "less than usual": "less than usual",
    "cannot be told": "cannot be told",
  } satisfies Record<Repeatability["practice"], string>,
  oneCatch: (f: Who) => `Bin ${f.bin}, fill ${f.fill}: one catch shows no scatter.`,
  exact: (f: Who) =>
    `Bin ${f.bin}, fill ${f.fill}: the catches agree exactly, so the scale hides their scatter.`,
  scatters: (f: Scatter) =>
    `Bin ${f.bin}, fill ${f.fill}: a ${f.turns.words}-turn catch scatters by ${f.size}.`,
  scattersAgainst: (f: Scatter & Facts<"practice" | "usual"> & LenderFacts) =>
    `Bin ${f.bin}, fill ${f.fill}: a ${f.turns.words}-turn catch scatters by ${f.size}, ${f.practice} (${f.usual}, from ${lenders(f)}).`,
  limitedBy: {
    scale:
      "Reading the scale makes up most of the error of this fill: longer catches or a finer scale lessen it, more catches of the same length do not.",
    scatter:
      "The catches' own scatter makes up most of the error of this fill, and every further catch lessens it.",
  },
  comparison: (f: Facts<"times" | "statistic" | "dfUsual" | "p"> & Counts<"dfToday">) =>
    `Today's scatter is ${f.times} times the usual one: F = ${f.statistic} on ${f.dfToday} and ${f.dfUsual} degrees of freedom, ${f.p}.`,
  twoCatches: (f: Numbers<"turns"> & Facts<"within" | "beyond">) =>
    `Two good catches of ${turns(f.turns)} may differ by up to ${f.within} of their mass; a larger difference comes up in ${f.beyond} of pairs (repeatability limit).`,
  noDivision: "The scale's division is not known, and so neither is its part in the scatter.",
  scale: (f: Facts<"division", "ofCatch" | "ofFill">) =>
    `Reading the scale in steps of ${f.division} makes up ${f.ofCatch ?? "an unknown part"} of the variance of a catch${f.ofFill === null ? "" : `, and ${f.ofFill} of this fill's, where it does not average out`}.`,
  chart: {
    title: (f: Facts<"bin">) => `Catch scatter of each fill, bin ${f.bin}`,
    fill: "Fill",
    scatter: "Scatter of a catch (%)",
    catches: "Catches",
  },
  consistency: {
    h: "Mean (Mandel's h)",
    k: "Scatter (Mandel's k)",
    names: { fills: "Fill", operators: "Who caught" },
    key: { fills: "fill", operators: "operator" },
  },
  consistencyTitle: {
    fills: (bin: string) => `Is any fill unlike the others? Bin ${bin}`,
    operators: (bin: string) => `Does anybody catch unlike the others? Bin ${bin}`,
  },
  consistent: (f: Facts<"what" | "name" | "h", "k">) =>
    `${f.what} ${f.name}: h ${f.h}${f.k === null ? "" : `, k ${f.k}`}`,
  consistencyDescription: (f: Facts<"groups" | "h">) =>
    `Above, how far each mean lies from the mean of all, in standard deviations of the means (h; beyond ${f.h} by chance in 1 of 100); below, each scatter over that of all together (k). ${f.groups}.`,
  description: (
    f: Numbers<"turns"> & Counts<"fills" | "fill"> & Facts<"practice", "usual" | "reading">,
  ) =>
    `Scatter of a ${f.turns.words}-turn catch in ${f.fills === 1 ? "" : "each of "}${nouns.fills(f.fills)} with its interval, on a logarithmic scale${f.usual === null ? "" : `, against the usual ${f.usual}`}${f.reading === null ? "" : ` and the ${f.reading} that reading the scale alone makes`}. Fill ${f.fill}: ${f.practice}.`,
};
