import type { PredictedRate } from "../../questions/field-check.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Counts, Facts, Numbers } from "./facts.ts";

type Correction = Counts<"checks"> & Facts<"factor">;

const over = (f: Correction) =>
  `Field against catches over ${f.checks} ${f.checks === 1 ? "check" : "checks"}: ${f.factor} of what the catches said`;

/** What is said of what the field used. */
export const fieldCheck = {
  labels: {
    heading: "Field checks",
    detail: "Field checks in figures",
    table: {
      caption: "Field checks in order",
      check: "Check",
      used: (unit: string) => `Used (${unit})`,
      area: (unit: string) => `Area (${unit})`,
      rate: (unit: string) => `Rate (${unit})`,
      intended: (unit: string) => `Intended (${unit})`,
      error: "Off the rate intended",
      predicted: (unit: string) => `Expected (${unit})`,
      bias: "Field against catches",
      normalisedError: "Normalised error",
      running: "Running correction",
      unknown: "not known",
    },
  },
  fill: (fill: FillName) => `fill ${fill}`,
  check: (place: number) => `check ${place}`,
  noCheck: (f: Facts<"bin" | "product">) => `Bin ${f.bin} (${f.product}): no field check.`,
  sentence: (f: Facts<"bin" | "product" | "check" | "rate", "compared">) =>
    `Bin ${f.bin} (${f.product}), ${f.check}: the field got ${f.rate}${f.compared === null ? "" : `, ${f.compared}`}.`,
  againstIntended: (error: string) => `${error} against the rate intended`,
  againstExpected: (error: string) => `${error} against what the catches said`,
  used: (f: Facts<"check" | "mass" | "area">) => `${f.check}: ${f.mass} on ${f.area}.`,
  areaTaken: (f: Facts<"field", "shut" | "overlap">) =>
    `That is the field of ${f.field}${f.shut === null ? "" : `, less ${f.shut} for rows shut in tramlines`}${f.overlap === null ? "" : `, plus ${f.overlap} drilled twice`}.`,
  predicted: (f: Facts<"rate" | "drive" | "delivery">) =>
    `Expected from the catches: ${f.rate}, ${f.drive}, from ${f.delivery}.`,
  drive: {
    "assumed delivery": "with the drive set for the delivery assumed then",
    "turns per hectare": "at the turns per area the drive is set to now",
    "drive ratio": "at the drive ratio set now",
  } satisfies Record<PredictedRate["basis"], string>,
  delivery: {
    "this fill": "the catches of that fill",
    "any fill": "what any fill of this bin delivers",
  } satisfies Record<PredictedRate["deliveryOf"], string>,
  agreement: (f: Facts<"error"> & { readonly agrees: boolean }) =>
    `Field and catches ${f.agrees ? "agree" : "disagree"}: normalised error ${f.error} (agreement is within ± 1).`,
  best: (rate: string) => `Best value of both together: ${rate}.`,
  notJudged: (f: { readonly inside: boolean }) =>
    `The rate found lies ${f.inside ? "within" : "outside"} the interval the catches give; whether the two agree cannot be judged while the field's own uncertainty is not known.`,
  correction: (f: Correction & Facts<"level" | "range"> & Numbers<"df">) =>
    `${over(f)} (${f.level} interval ${f.range}, Student's t on ${f.df.words} df).`,
  correctionOfOne: (f: Correction) => `${over(f)} (no interval with one check).`,
  whatTheFieldDoes:
    "This is what the moving field does; it is no part of catch scatter, and more catches do not change it.",
  chart: {
    check: "Field check",
    kind: "What it is",
    rate: (unit: string) => `Rate (${unit})`,
    kinds: {
      field: "found in the field",
      predicted: "expected from the catches",
      intended: "intended",
    },
  },
  chartTitle: (bin: string) => `Field checks, bin ${bin}`,
  chartDescription: (rates: string) =>
    `Rate found in the field beside the rate intended and the rate the catches give: ${rates}.`,
};
