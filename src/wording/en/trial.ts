import type { ComparisonVerdict } from "../../statistics/mean-comparison.ts";
import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";

const { catches, fills } = nouns;
const pairs = (count: number) => (count === 1 ? "1 pair" : `${count} pairs`);

/** What is said of a log that is a planned trial. */
export const trial = {
  labels: {
    heading: "The trial",
    toSettle: "To be settled before the trial is relied on:",
    chart: {
      title: "The products of the trial",
      ratio: "Percent of the mean of all products",
      product: "Product",
    },
    /** Of the chart of products with their own intervals, where no ends exist that could be compared by eye. */
    ownIntervals:
      "Each line is the product's own interval. Which products differ is read off the pairs, not off whether lines overlap.",
    detail: "The trial in figures",
  },
  inBlocks: (f: Counts<"products" | "blocks" | "complete" | "fills" | "catches"> & Facts<"by">) =>
    `${f.products} products compared within ${f.blocks === 1 ? "1 block" : `${f.blocks} blocks`} (${f.by}${f.complete === f.blocks ? "" : `; ${f.complete} with every product compared`}): ${fills(f.fills)}, ${catches(f.catches)}.`,
  byFill: (f: Counts<"products" | "fills" | "catches">) =>
    `${f.products} products compared fill by fill, without blocks: ${fills(f.fills)}, ${catches(f.catches)}.`,
  /** Where no pair could be compared. */
  caught: (f: Counts<"products" | "fills" | "catches">) =>
    `Caught so far: ${f.products === 1 ? "1 product" : `${f.products} products`}, ${fills(f.fills)}, ${catches(f.catches)}.`,
  listed: (products: string) => `In the order planned: ${products}.`,
  inFile: (products: string) => `In the order of the log: ${products}.`,
  bySize: (products: string) => `The heaviest first: ${products}.`,
  reference: (product: string) => `Each is compared with ${product}.`,
  complete: (f: Counts<"fills">) => `All ${fills(f.fills)} planned of each product are caught.`,
  behind: (f: Counts<"fills"> & Facts<"products">) =>
    `Planned are ${fills(f.fills)} of each product; fewer are caught of ${f.products}.`,
  ofProduct: (f: Counts<"fills"> & Facts<"product">) => `${f.product} (${f.fills})`,
  notCaught: (products: string) => `Planned and not caught yet: ${products}.`,
  notPlanned: (products: string) => `In the log, and no part of the trial: ${products}.`,
  margin: (f: Facts<"margin" | "limits">) =>
    `Equivalent means equal within ${f.margin}: the first of a pair at ${f.limits} of the second. A margin has to be fixed before the catches.`,
  noMargin:
    "No margin was given within which products count as equal, so none can be found equivalent: a pair is different or undecided.",
  judged: (f: Facts<"method" | "level">) =>
    `Judged by: ${f.method}; ${f.level} for all pairs together.`,
  /** How pairs came out; the heading of those that came out so. */
  outcomes: {
    different: () => "Different",
    "different within the margin": (f: Facts<never, "margin">) =>
      `Different, but by less than the margin${f.margin === null ? "" : ` of ${f.margin}`}`,
    equivalent: (f: Facts<never, "margin">) =>
      `Equivalent${f.margin === null ? "" : ` within ${f.margin}`}`,
    undecided: () => "Undecided: neither a difference nor equality is shown",
    untested: () => "Not tested",
  } satisfies Record<ComparisonVerdict, (f: Facts<never, "margin">) => string>,
  outcome: (f: Counts<"count" | "of"> & Facts<"outcome">) =>
    `${f.outcome}: ${f.count} of ${pairs(f.of)}`,
  /** Where spreads not assumed alike judge otherwise. */
  judgedOtherwise: (count: number) =>
    `With spreads not assumed alike, ${count === 1 ? "1 pair comes" : `${count} pairs come`} out otherwise, as is said beside.`,
  overlap: (level: string) =>
    `Two products differ exactly where their lines do not overlap (${level} for all pairs together); a line is no confidence interval of its product.`,
  standingsDescription: (f: Facts<"all">) =>
    `Each product in percent of the mean of all, with ends that overlap those of another where no difference is found: ${f.all}.`,
  standing: (f: Facts<"product" | "ratio" | "ends">) => `${f.product} ${f.ratio} (${f.ends})`,
  bins: "Cards and chapters of the single bins are in the full edition (--edition full); --bin NAME adds one here.",
};
