import type { FleetFactor, WhyNotCompared } from "../../questions/fleet/result.ts";
import type { Counts, Facts } from "./facts.ts";

type Among = Facts<"own" | "others">;

const meters = (count: number) => (count === 1 ? "1 meter" : `${count} meters`);
const are = (count: number) => (count === 1 ? "is" : "are");

/** What is said of many meters together. */
export const fleet = {
  labels: {
    heading: "All meters together",
    attention: "Need attention",
    none: "None of them needs attention.",
    unknown: "not known",
    detail: "Scatter of catches and of fills, meter by meter",
    lookFirst: "look first",
    factors: "Operators, scales and machines",
    table: {
      all: "Every meter in a table",
      caption: "The most urgent first",
      bin: "Bin",
      product: "Product",
      action: "What to do",
      known: "Known to",
      ratio: "Against its product",
      scatter: "Catch scatter",
      spread: "Its own fills differ by",
      why: "Needs attention because",
    },
    chart: {
      bin: "Bin",
      fills: "Fills",
      turns: "Turns caught",
      ratio: "Delivery, % of the others'",
      meter: "meter",
      unlike: "unlike the others",
      level: "level of the others",
      typical: "middle of the others",
      limits: { inner: "95 % of meters alike", outer: "99.8 % of meters alike" },
    },
  },
  counts: (f: Counts<"meters" | "set" | "catchMore" | "lookFirst" | "notInTheBin">) =>
    `${meters(f.meters)}: ${f.set} can be set, ${f.catchMore} ${f.catchMore === 1 ? "needs" : "need"} another catch, ${f.lookFirst} ${f.lookFirst === 1 ? "needs" : "need"} a look first${f.notInTheBin === 0 ? "." : `; ${f.notInTheBin} ${are(f.notInTheBin)} not in use, another product being in the bin.`}`,
  caughtAgain: (meters: string) => `Need another catch: ${meters}.`,
  movedSince: (fill: string) => `has moved since fill ${fill}`,
  trendingSince: (fill: string) => `trending since fill ${fill}`,
  fillDiffers: (fill: string) => `fill ${fill} differs from those before`,
  moved: "has moved",
  delivers: {
    more: (f: Facts<"size" | "product">) =>
      `delivers ${f.size} more than the other meters with ${f.product}`,
    less: (f: Facts<"size" | "product">) =>
      `delivers ${f.size} less than the other meters with ${f.product}`,
  },
  scatters: (f: Among) => `its catches scatter by ${f.own}, those of the others by ${f.others}`,
  differs: (f: Among) => `its own fills differ by ${f.own}, those of the others by ${f.others}`,
  found: (f: Counts<"found" | "tests"> & Facts<"share">) =>
    `In ${f.tests} comparisons of delivery, scatter of catches and spread of fills ${f.found === 0 ? "none was" : f.found === 1 ? "1 was" : `${f.found} were`} found unlike the other meters. Of such finds at most ${f.share} on average are chance (false discovery rate, Benjamini and Hochberg).`,
  watched: (f: Counts<"meters"> & Facts<"byChance">) =>
    `What is to be looked at first, and what has moved, is found meter by meter: if all ${f.meters} were steady, about ${f.byChance} would be called moved, trending or differing by chance in a season of 12 fills.`,
  /** Of the chapters below. */
  chapters: (f: Counts<"shown" | "meters">) =>
    f.shown === 0
      ? "No meter has a chapter of its own here; all are in the table. A chapter: --bin NAME."
      : f.shown === f.meters
        ? "Each meter has a chapter below."
        : `${f.shown === 1 ? "1 chapter follows" : `${f.shown} chapters follow`}, of the meters that need attention or were asked for; the other ${f.meters - f.shown} are in the table only. A chapter of any other: --bin NAME.`,
  /** Of the pictures of meters in rows. */
  key: "Each row is a meter, with its interval; a diamond marks one found unlike the others. The broken line is the level of the other meters with the product.",
  noLevels: (f: Counts<"least">) =>
    `Deliveries are not compared: no product is in ${f.least} meters or more.`,
  withoutLevel: (f: Counts<"least"> & Facts<"products">) =>
    `Not compared in delivery, because fewer than ${f.least} meters hold the product: ${f.products}.`,
  ratioTitle: (product: string) => `Deliveries of ${product}, meter by meter`,
  ratioDescription: (f: Facts<"product"> & Counts<"meters" | "unlike">) =>
    `${meters(f.meters)} with ${f.product}, each as percent of the level of the others, with the interval of its mean; ${f.unlike === 0 ? "none is" : f.unlike === 1 ? "1 is" : `${f.unlike} are`} marked as unlike the others.`,
  spreadTitles: {
    scatter: (product: string | null) =>
      `How much catches scatter, meter by meter${product === null ? "" : `: ${product}`}`,
    spread: (product: string | null) =>
      `How much fills differ, meter by meter${product === null ? "" : `: ${product}`}`,
  },
  spreadAxes: {
    scatter: (turns: string) => `Scatter of ${turns}-turn catches, %`,
    spread: () => "Spread of fills, %",
  },
  spreadDescription: (f: Counts<"meters" | "unlike">) =>
    `${meters(f.meters)}, each with its interval, beside the middle of the others; ${f.unlike === 0 ? "none is" : f.unlike === 1 ? "1 is" : `${f.unlike} are`} marked as unlike the others.`,
  /** Drawn are those that are marked, and the outermost. */
  thinned: (f: Counts<"drawn" | "of">) =>
    `Drawn are ${f.drawn} of ${f.of}: the marked ones and the outermost; all are in the table.`,
  funnelTitle: "Deliveries by the turns caught",
  funnelDescription: (f: Counts<"meters" | "unlike"> & Facts<"between">) =>
    `${meters(f.meters)}, each as percent of the level of the others with its product, over all turns caught. Within the lines lie 95 % and 99.8 % of meters that are alike; however long they are caught, meters of one product lie ${f.between} apart (standard deviation). ${f.unlike === 0 ? "None is" : f.unlike === 1 ? "1 is" : `${f.unlike} are`} marked as unlike the others.`,
  factor: {
    names: {
      operator: "Operator",
      scale: "Scale",
      machine: "Machine",
    } as Readonly<Record<FleetFactor, string>>,
    within: {
      meters: (count: number) => `on the same ${meters(count)}`,
      products: (count: number) => `between ${meters(count)} with the same product`,
    },
    differ: (f: Facts<"name" | "where" | "p" | "levels">) =>
      `${f.name}: makes a difference, ${f.where} (${f.p}). Delivery against the middle of them: ${f.levels}.`,
    alike: (f: Facts<"name" | "where" | "p" | "levels">) =>
      `${f.name}: no difference found, ${f.where} (${f.p}). Delivery against the middle of them: ${f.levels}.`,
    level: (f: Facts<"label" | "ratio" | "range">) => `${f.label} ${f.ratio} (${f.range})`,
    uncompared: (f: Facts<"names" | "why">) => `Not compared: ${f.names}, ${f.why}.`,
    why: {
      "not recorded": (least: number) =>
        `which the catches do not name; a column with two or more of them, each at ${least} meters or more, would do`,
      "one only": (least: number) =>
        `of which there is one only; a second one at ${least} meters or more would do`,
      "too few meters": (least: number) =>
        `because fewer than two of them were at ${least} meters or more`,
      "never side by side": () =>
        "because no two of them were at the same meters or the same product",
    } as Readonly<Record<WhyNotCompared, (least: number) => string>>,
  },
  who: (f: Facts<"bin" | "product">) => `Bin ${f.bin} (${f.product})`,
};
