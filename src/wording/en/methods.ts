import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";

const meters = (count: number) => (count === 1 ? "1 meter" : `${count} meters`);

/** A paragraph on the methods of a report, for a paper: a sentence for each method that the report used. */
export const methods = {
  labels: {
    heading: "Methods, ready to paste",
    references: "References",
    /** Between two authors. */
    and: "and",
  },
  catches: (f: Counts<"catches" | "fills" | "meters"> & Facts<"version" | "level">) =>
    `Delivery (mass per turn of the meter) was estimated from ${nouns.catches(f.catches)} of ${nouns.fills(f.fills)} and ${meters(f.meters)} with evencatch ${f.version}; intervals are two-sided with ${f.level} confidence.`,
  delivery: {
    proportional: (f: Facts<"ratio">) =>
      `The delivery of a fill is the ratio of total mass to total turns, the fit of a line through the origin whose variance grows with turns (${f.ratio}).`,
    constant: (f: Facts<"ratio">) =>
      `The delivery of a fill is the slope of a line through the origin fitted by least squares with equal variances (${f.ratio}).`,
    squared: (f: Facts<"ratio">) =>
      `The delivery of a fill is the mean of mass per turn, the fit of a line through the origin whose standard deviation grows with turns (${f.ratio}).`,
  },
  scatter: {
    lent: (f: Facts<"lenders" | "moderated">) =>
      `The variance of catches was moderated by that of ${f.lenders} (${f.moderated}), whose heterogeneity was declared and not estimated: 95 % of meters within a factor 2.7, fills of one meter within 1.5. Deliveries were never shared.`,
    lenders: {
      fills: "the meter's other fills",
      meters: "the other meters",
      both: "the meter's other fills and of the other meters",
      assumed: "a typical meter",
    },
    own: "The variance of catches was taken from each fill alone.",
  },
  division: (f: Facts<"division" | "gum">) =>
    `The error of reading a scale with divisions of ${f.division} was added to every interval (${f.gum}).`,
  divisionOfCatches: (f: Facts<"gum">) =>
    `The error of reading the scale was added to every interval (${f.gum}).`,
  noDivision:
    "The scale's division was not known, so that the error of reading it is not in the intervals.",
  screening: (f: Facts<"outliers">) =>
    `All catches of the log were screened together for outliers by studentised deleted residuals, at 5 % for all of them by Bonferroni (${f.outliers}).`,
  acrossFills: (f: Facts<"interval">) =>
    `The next fill was predicted from the fills of the level in force, its spread pooled within levels (${f.interval}).`,
  widened:
    "The mean over fills in order of time was widened so that it holds with a correlation of neighbouring fills up to 0.5.",
  drift: (f: Facts<"shift">) =>
    `Whether a meter had moved was asked after every fill by the evidence for a lasting shift, averaged over its possible times (${f.shift}). Its limits were found by simulation for 5 % of false alarms in twelve fills.`,
  catchesNeeded: (f: Facts<"assurance" | "tolerance">) =>
    `The number of further catches is the smallest that ends within ${f.tolerance} of the delivery with a chance of at least 80 % (${f.assurance}).`,
  budget: (f: Facts<"gum">) =>
    `The uncertainty of the setting was propagated by its variance and checked by Monte Carlo (${f.gum}).`,
  products: {
    blocksAll: (f: Facts<"multiple">) =>
      `Products in blocks were compared by an additive analysis of variance of the logarithms with one residual variance, and simultaneous intervals of ratios (${f.multiple}).`,
    blocksApart: (f: Facts<"multiple">) =>
      `Products in blocks were compared pair by pair by the differences within blocks, adjusted by Bonferroni (${f.multiple}).`,
    groups: (f: Facts<"multiple">) =>
      `Products were compared by the means of their fills with simultaneous intervals (${f.multiple}).`,
    margin: (f: Facts<"margin" | "equivalence">) =>
      `Equivalence within ± ${f.margin} was shown by two one-sided tests for each pair (${f.equivalence}).`,
  },
  fleet: (f: Facts<"discovery">) =>
    `Among many meters the share of false findings was held to 5 % on average (${f.discovery}).`,
};
