import { sum } from "simple-statistics";
import { standardDeviationInterval } from "../../model/catch-scatter.ts";
import type { ProductGroup } from "../../model/product-groups.ts";
import { tEstimate } from "../../model/t-estimate.ts";
import type { Estimate } from "../../results/estimate.ts";
import { sampleOf, varianceOfMean } from "../../statistics/sample.ts";
import { mean } from "../../statistics/summary.ts";
import type { ProductEstimate } from "./result.ts";

/** The estimate of one product and the fills it rests on. */
export function productEstimate(group: ProductGroup, level: number): ProductEstimate {
  const deliveries = group.fills.map(({ fill }) => fill.delivery);
  return {
    product: group.product,
    bins: group.bins,
    fills: group.fills.length,
    catches: sum(group.fills.map(({ fill }) => fill.totals.catches)),
    estimate: meanEstimate(deliveries, level),
    spread: spreadEstimate(deliveries, level),
    points: group.fills.map(({ fill, block }) => ({
      bin: fill.bin,
      fill: fill.fill,
      takenAt: fill.takenAt,
      block,
      catches: fill.totals.catches,
      delivery: fill.delivery,
    })),
  };
}

/** As for one bin, whatever scale products are compared on. */
function meanEstimate(deliveries: readonly number[], level: number): Estimate<"kg/turn"> {
  const sample = deliveries.length < 2 ? null : sampleOf(deliveries);
  const error = sample === null ? null : Math.sqrt(varianceOfMean(sample));
  const center = sample?.mean ?? mean(deliveries);
  return tEstimate(center, "kg/turn", error, deliveries.length - 1, level, "mean over fills");
}

function spreadEstimate(deliveries: readonly number[], level: number): Estimate<"fraction"> | null {
  if (deliveries.length < 2) return null;
  const { mean: center, variance, n } = sampleOf(deliveries);
  const value = Math.sqrt(variance) / center;
  const interval = standardDeviationInterval(value, n - 1, level, "fill-to-fill spread");
  return {
    value,
    unit: "fraction",
    standardError: null,
    df: n - 1,
    interval: value > 0 ? interval : null,
  };
}
