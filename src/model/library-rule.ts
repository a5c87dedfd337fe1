import { leastDf, leastVariance, mostDf, mostVariance } from "../data/spreads/limits.ts";
import { between, each, type Rule, text } from "../results/options.ts";
import type { MeterRecord } from "./lenders.ts";

/**
 * What records of meters of other logs must be: each with the name or class of its product, or null, and for each spread null or
 * a variance above zero with its degrees of freedom. OptionError names the record and the figure.
 */
export const libraryRule: Rule<readonly MeterRecord[]> = (option, records) => {
  each<MeterRecord>(() => {})(option, records);
  records.forEach((record, place) => {
    const { product, spread, scatter } = Object(record);
    const name = `${option}[${place}]`;
    if (product !== null) text(`${name}.product`, product);
    requireEstimated(`${name}.spread`, spread);
    requireEstimated(`${name}.scatter`, scatter);
  });
};

function requireEstimated(name: string, estimated: unknown): void {
  if (estimated === null) return;
  const { variance, df } = Object(estimated);
  between(leastVariance, mostVariance)(`${name}.variance`, variance);
  between(leastDf, mostDf)(`${name}.df`, df);
}
