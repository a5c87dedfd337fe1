import type { Counts, Facts, Numbers } from "./facts.ts";
import { nouns } from "./nouns.ts";

const centre = { target: "the target of an outlet", "mean of outlets": "the mean of the outlets" };

/** What is said of how evenly outlets deliver. */
export const outlets = {
  labels: {
    heading: "Outlet to outlet",
    detail: "Outlets in figures",
    table: {
      caption: "Delivery of each outlet",
      outlet: "Outlet",
      catches: "Catches",
      turns: "Turns",
      delivery: (unit: string) => `Delivery (${unit})`,
      off: "Off the centre",
      inside: "Within the band",
      yes: "yes",
      no: "no",
    },
  },
  centre,
  /** The same after "within … of", for languages in which that takes another case. */
  aroundCentre: centre,
  orMore: (percent: string) => `${percent} or more`,
  sentence: (
    f: Facts<"bin" | "product" | "variation" | "level", "range"> & Counts<"fill" | "outlets">,
  ) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: ${f.outlets} outlets differ with a coefficient of variation of ${f.variation}${f.range === null ? "" : ` (${f.level} interval ${f.range})`}.`,
  allWithin: (f: Facts<"band" | "aroundCentre">) =>
    `All outlets lie within ${f.band} of ${f.aroundCentre}.`,
  someOff: (f: Facts<"farOff" | "centre" | "names"> & Counts<"outside" | "outlets">) =>
    `${f.outside} of ${f.outlets} outlets ${f.outside === 1 ? "lies" : "lie"} more than ${f.farOff} off ${f.centre}: ${f.names}.`,
  caughtOnce:
    "How catches of one outlet repeat is not known: each was caught once. Differences between outlets are not catch scatter, but they hold some of it.",
  catchScatter: (f: Facts<"relative"> & Numbers<"turns" | "df">) =>
    `Catches of one and the same outlet repeat to ${f.relative} (catches of ${f.turns.words} turns, ${nouns.degrees(f.df)}). That is catch scatter, another thing than the difference between outlets.`,
  chart: { outlet: "Outlet", title: (f: Facts<"bin">) => `Outlet to outlet, bin ${f.bin}` },
  chartDescription: (f: Facts<"centre" | "band" | "deliveries"> & Counts<"outlets">) =>
    `Delivery of ${f.outlets} outlets against ${f.centre}, with the band of ${f.band}. ${f.deliveries}.`,
  chartOff: { target: "Off the target (%)", "mean of outlets": "Off the mean (%)" },
  chartPoint: (f: Facts<"outlet" | "delivery" | "off">) =>
    `Outlet ${f.outlet}: ${f.delivery}, ${f.off}`,
};
