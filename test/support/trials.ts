import { type Analysis, analyse } from "../../src/analysis/analyse.ts";
import type { AnalysisOptions } from "../../src/analysis/options.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import type { Catch, CatchLog } from "../../src/data/types.ts";
import { aFill } from "./catches.ts";
import { present } from "./reference.ts";

/** What is told of an invented trial in its setup, as the file writes it. */
export type ToldOfTrial = Readonly<Record<string, unknown>>;

const products = ["wheat", "pea", "barley", "rye"];

/** By block: wheat and rye are alike, pea is a little heavier, barley much lighter. */
const deliveries = [
  [0.4012, 0.4105, 0.3472, 0.4021],
  [0.3954, 0.409, 0.3461, 0.3949],
  [0.4061, 0.4182, 0.3543, 0.4052],
  [0.3983, 0.4091, 0.3441, 0.4003],
  [0.4044, 0.4123, 0.3512, 0.4029],
];

/**
 * Two catches of 20 turns for each fill of a trial in one bin, which lie as far above its delivery as below.
 *
 * @param rows   by block: the delivery of each product
 * @param apart  of a catch from the delivery, a fraction
 */
export function catchesInBlocks(
  rows: readonly (readonly number[])[],
  names: readonly string[],
  apart: number,
): readonly Catch[] {
  return rows.flatMap((row, block) =>
    row.flatMap((delivery, i) =>
      aFill(
        [
          [20, 20 * delivery * (1 + apart)],
          [20, 20 * delivery * (1 - apart)],
        ],
        {
          product: present(names[i]),
          fill: block * names.length + i + 1,
          extra: { block: String(block + 1) },
        },
      ),
    ),
  );
}

/** Catches of a trial in five blocks of four products, all in one bin, two catches a fill. */
export function trialCatches(): readonly Catch[] {
  return catchesInBlocks(deliveries, products, 0.004);
}

/** The same with a product of one fill, fills of pea in no block and alone in one. */
export const trialWithGaps: readonly Catch[] = trialCatches()
  .filter(({ product, extra }) =>
    product === "pea" ? true : product === "rye" ? extra.block === "1" : extra.block !== "5",
  )
  .map((row) =>
    row.product === "pea" && row.extra.block === "2" ? { ...row, extra: { block: "" } } : row,
  );

export function trialLog(catches: readonly Catch[] = trialCatches()): CatchLog {
  return {
    source: "sheet.csv",
    massUnit: "kg",
    catches,
    cautions: [],
  };
}

/** The analysis of an invented trial; what is told of it is its entry in the setup. */
export function inventedTrial(
  told: ToldOfTrial = {},
  options: Partial<AnalysisOptions> = {},
  catches: readonly Catch[] = trialCatches(),
): Analysis {
  return analyse(trialLog(catches), trialSetup(told), options);
}

export function trialSetup(told: ToldOfTrial = {}) {
  const text = JSON.stringify({ trial: { blocks: "block", ...told } });
  return readSetup({ name: "setup.json", text });
}

/** Trials that between them have everything said that can be said of one. */
export const trialsToTell: readonly ToldOfTrial[] = [
  {},
  { order: "size", fills: 5, equivalence_margin_percent: 3 },
  { products: ["rye", "wheat", "barley", "oats"], fills: 6, equivalence_margin_percent: 1 },
  { products: ["pea", "wheat"], reference: "wheat", spread: "separate" },
  { blocks: undefined },
];
