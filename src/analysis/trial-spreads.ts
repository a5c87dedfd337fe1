import { sum } from "simple-statistics";
import type { MeterModel, Model } from "../model/model.ts";
import { blockTable, productGroups } from "../model/product-groups.ts";
import type { FoundSpreads } from "../questions/trial-plan/result.ts";
import { defaults } from "../results/defaults.ts";
import { blockAnova } from "../statistics/block-anova.ts";
import { completeBlocks } from "../statistics/comparison-layout.ts";
import { mean } from "../statistics/summary.ts";

/** A relative variance with the degrees of freedom it is known with. */
interface Known {
  readonly variance: number;
  readonly df: number;
}

/**
 * How much fills of one product, and catches of one fill, differ in a log: for the plan of a trial to rest on. Variances are
 * pooled with their degrees of freedom, as the trial itself will pool them. Fills: within stretches of one level, so that what
 * has moved is no spread, or, of a log in complete blocks, what is left beside products and blocks; what catch scatter adds
 * to the deliveries of fills is taken out, s_b² = s² − s_w²·mean(1/T).
 *
 * @param products  of the plan: their meters speak; every meter where none of them is in the log
 * @param blocks    what makes a block in the log, as for a comparison of products; null: nothing
 * @param source    name of the log
 * Source           Cochran & Cox, Experimental Designs, 2nd ed., ch. 4 (error of a trial from earlier ones)
 */
export function spreadsForTrial(
  model: Model,
  products: readonly string[],
  blocks: string | null,
  source: string,
): FoundSpreads {
  const planned = model.meters.filter(({ product }) => products.includes(product));
  const meters = planned.length > 0 ? planned : model.meters;
  const fills = meters.flatMap((meter) => meter.fills);
  const within = blocks === null ? null : besideBlocks({ ...model, meters }, blocks);
  const seen = within ?? pooled(meters.flatMap(({ record }) => record.spread ?? []));
  const between = seen === null ? null : seen.variance - catchPart(meters, within !== null);
  const scatter = pooled(meters.flatMap(({ record }) => record.scatter ?? []));
  const { turns } = defaults.assumedScatter;
  return {
    source,
    speaking: planned.length > 0 ? "planned products" : "every product",
    products: new Set(meters.map(({ product }) => product)).size,
    fills: fills.length,
    fillSpread:
      seen === null || between === null || between <= 0
        ? null
        : { value: Math.sqrt(between), df: seen.df },
    untold:
      seen === null
        ? "too few fills"
        : between !== null && between > 0
          ? null
          : "within catch scatter",
    withinBlocks: within !== null,
    catchScatter:
      scatter === null
        ? null
        : { relative: Math.sqrt(scatter.variance / turns), turns, df: scatter.df },
  };
}

/** Residual variance of ln delivery beside products and blocks; null without two complete blocks of two products. */
function besideBlocks(model: Model, by: string): Known | null {
  const groups = productGroups(model, by);
  if (
    groups.length < 2 ||
    groups.some(({ fills }) => fills.some(({ fill }) => !(fill.delivery > 0)))
  )
    return null;
  const { rows } = blockTable(groups, ({ delivery }) => Math.log(delivery));
  const complete = completeBlocks(rows);
  if (complete.length < 2) return null;
  const { errorMeanSquare: variance, errorDf: df } = blockAnova(complete);
  return { variance, df };
}

function pooled(known: readonly Known[]): Known | null {
  const df = sum(known.map((one) => one.df));
  return df > 0 ? { variance: sum(known.map((one) => one.df * one.variance)) / df, df } : null;
}

/** What catch scatter adds to the relative variance of a fill's delivery: over fills, or as the fills' spreads are pooled. */
function catchPart(meters: readonly MeterModel[], evenly: boolean): number {
  const parts = meters.flatMap(({ fills, scatter, record }) => {
    const df = evenly ? fills.length : (record.spread?.df ?? 0);
    if (scatter.relative === null || df === 0) return [];
    return { df, variance: scatter.relative * mean(fills.map(({ totals }) => 1 / totals.turns)) };
  });
  return pooled(parts)?.variance ?? 0;
}
