import { readFileSync } from "node:fs";
import { readCatches } from "../../src/data/read-catches.ts";
import type { Catch } from "../../src/data/types.ts";
import { fitModel, type Model, type ModelOptions } from "../../src/model/model.ts";

export const trialOptions: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.005 };

/** The catches of the demo set with four products on one meter. */
export async function productTrialCatches(): Promise<readonly Catch[]> {
  const file = new URL("../../data-demo/product-trial/catches.csv", import.meta.url);
  const log = await readCatches({ name: "catches.csv", text: readFileSync(file, "utf8") });
  return log.catches;
}

export async function productTrialModel(): Promise<Model> {
  return fitModel(await productTrialCatches(), trialOptions);
}
