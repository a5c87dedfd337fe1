import type { EstimatedConstant } from "../../data/spreads/schema.ts";
import type { Counts, Facts } from "./facts.ts";

type Estimated = Facts<"estimate" | "from" | "to" | "level" | "declared"> &
  Counts<"sources"> & { readonly name: EstimatedConstant; readonly differs: boolean };

const meters = (count: number) => (count === 1 ? "1 meter" : `${count} meters`);
const named = (f: Facts<never, "productClass" | "meterType">) =>
  [f.productClass ?? "No class told", ...(f.meterType === null ? [] : [f.meterType])].join(", ");

/** By constant: what it is about, and of what so many are behind it. */
const about: Readonly<Record<EstimatedConstant, readonly [what: string, sources: string]>> = {
  between_meters_spread: ["How much fills differ, from meter to meter", "meters"],
  between_meters_scatter: ["How much catches scatter, from meter to meter", "meters"],
  between_fills_scatter: ["How much catches scatter, from fill to fill of one meter", "fills"],
  typical_spread: ["How much fills differ at a typical meter", "meters"],
  typical_scatter: ["How much a catch of 20 turns scatters at a typical meter", "meters"],
};

const judged = (f: Estimated) =>
  f.differs
    ? "lies outside and does not fit these meters; it is used all the same, as long as it is declared."
    : "lies within; nothing here speaks against it.";

/** What is said of a library of spreads, and of constants that pooled logs estimate anew. */
export const spreads = {
  made: (f: Counts<"meters" | "logs"> & Facts<"file">) =>
    `${f.file}: how much ${meters(f.meters)} of ${f.logs === 1 ? "1 log" : `${f.logs} logs`} scatter, without a name of any.`,
  class: (f: Facts<never, "productClass" | "meterType"> & Counts<"meters">) =>
    `- ${named(f)}: ${meters(f.meters)}.`,
  leftOut: (f: Facts<never, "productClass" | "meterType"> & Counts<"bins" | "needed">) =>
    `- ${named(f)}: left out, as ${f.bins === 1 ? "it is only 1 bin" : `they are only ${f.bins} bins`}; a class needs ${f.needed}, so that nobody's meter is told by itself.`,
  /** Of a factor: 95 in 100 lie within it either way. */
  factor: (f: Estimated & Facts<"factor" | "declaredFactor">) =>
    `${about[f.name][0]}: 95 in 100 within a factor ${f.factor} of the middle (standard deviation of the logarithm ${f.estimate}, ${f.level} interval ${f.from} to ${f.to}, from ${f.sources} ${about[f.name][1]}). The declared ${f.declared}, a factor ${f.declaredFactor}, ${judged(f)}`,
  /** Estimated as none. */
  alike: (f: Estimated & Facts<"declaredFactor">) =>
    `${about[f.name][0]}: no more unlike than chance makes them, which does not say that they are alike (standard deviation of the logarithm ${f.level} interval ${f.from} to ${f.to}, from ${f.sources} ${about[f.name][1]}). The declared ${f.declared}, a factor ${f.declaredFactor}, ${judged(f)}`,
  size: (f: Estimated) =>
    `${about[f.name][0]}: ${f.estimate} (${f.level} interval ${f.from} to ${f.to}, from ${f.sources} ${about[f.name][1]}). The declared ${f.declared} ${judged(f)}`,
  notEstimated: (needed: number) =>
    `Nothing that is declared was estimated anew: that takes ${needed} meters.`,
};
