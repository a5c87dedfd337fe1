import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";

const { catches } = nouns;

/** What is said of delivery and the speed of the meter. */
export const speedLinearity = {
  labels: { heading: "Delivery against meter speed", detail: "How this was tested" },
  notTold: (f: Facts<"bin" | "product" | "caught">) =>
    `Bin ${f.bin} (${f.product}): whether the delivery changes with the meter's speed cannot be told from catches at ${f.caught} turns/min.`,
  change: (f: Facts<"bin" | "product" | "caught" | "change" | "level", "range">) =>
    `Bin ${f.bin} (${f.product}): over ${f.caught} turns/min the delivery per turn changes by ${f.change}${f.range === null ? "" : ` (${f.level} interval ${f.range})`}.`,
  within: (f: Facts<"tolerance" | "reference" | "sure" | "estimated">) =>
    `Within ${f.tolerance} of the delivery at ${f.reference} turns/min: from ${f.sure} turns/min for sure, ${f.estimated} by the line itself. Nothing is said beyond the speeds caught.`,
  slope: (
    f: Facts<"slope" | "statistic" | "p"> & Counts<"fills"> & { readonly df: number | null },
  ) =>
    `Slope: ${f.slope} of the delivery for each turn/min, t = ${f.statistic}${f.df === null ? "" : ` on ${f.df} df`}, ${f.p}; one slope for ${f.fills === 1 ? "the one fill" : `the ${f.fills} fills`} turned at several speeds, each fill with a delivery of its own.`,
  noBendTest: "A bend cannot be tested: that takes three meter speeds and a spare catch.",
  bend: (f: Facts<"statistic" | "p"> & Counts<"df">) =>
    `Bend: t = ${f.statistic} on ${f.df} df, ${f.p}.`,
  noFitTest: "Lack of fit cannot be tested: that takes repeats at one speed within a fill.",
  lackOfFit: (f: Facts<"statistic" | "p"> & Counts<"dfLackOfFit" | "dfPureError">) =>
    `Lack of fit of parallel straight lines: F = ${f.statistic} on ${f.dfLackOfFit} and ${f.dfPureError} df, ${f.p}.`,
  passedOver: (count: number) =>
    `${catches(count)} ${count === 1 ? "has no meter speed and is" : "have no meter speed and are"} passed over here.`,
  chart: {
    title: (f: Facts<"bin">) => `Delivery against meter speed, bin ${f.bin}`,
    speed: "Meter speed (turns/min)",
    relative: "Against its fill (%)",
  },
  chartDescription: (f: Facts<"caught" | "level" | "tolerance", "change"> & Counts<"catches">) =>
    `${catches(f.catches)}: delivery relative to the fill's own against meter speed from ${f.caught} turns/min${f.change === null ? "" : `, with a straight line that changes by ${f.change} over that range and its ${f.level} band`}. Tolerance ${f.tolerance}.`,
  chartCatch: (f: Facts<"off" | "speed"> & Counts<"fill" | "catch">) =>
    `Fill ${f.fill}, catch ${f.catch}: ${f.off} at ${f.speed} turns/min`,
};
