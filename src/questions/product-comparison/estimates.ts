import { sum } from "simple-statistics";
import { standardDeviationInterval } from "../../model/catch-scatter.ts";
import type { ProductGroup } from "../../model/product-groups.ts";
import { tEstimate } from "../../model/t-estimate.ts";
import type { Estimate } from "../../results/estimate.ts";
import { sampleOf, varianceOfMean } from "../../statistics/sample.ts";
import { mean } from "../../statistics/summary.ts";
import type { ProductComparisonOptions, ProductEstimate } from "./result.ts";

/** The estimate of one product and the fills it rests on. */
export function productEstimate(
  group: ProductGroup,
  options: ProductComparisonOptions,
): ProductEstimate {
  const deliveries = group.fills.map(({ fill }) => fill.delivery);
  return {
    product: group.product,
    bins: group.bins,
    fills: group.fills.length,
    catches: sum(group.fills.map(({ fill }) => fill.totals.catches)),
    estimate: meanEstimate(deliveries, options),
    spread: spreadEstimate(deliveries, options.level),
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

function meanEstimate(
  deliveries: readonly number[],
  { level, scale }: ProductComparisonOptions,
): Estimate<"kg/turn"> {
  const values = scale === "log" ? deliveries.map(Math.log) : deliveries;
  const sample = values.length < 2 ? null : sampleOf(values);
  const center = sample?.mean ?? mean(values);
  const error = sample === null ? null : Math.sqrt(varianceOfMean(sample));
  const found = tEstimate(center, "kg/turn", error, values.length - 1, level, "mean over fills");
  return scale === "log" ? backTransformed(found) : found;
}

/** From logarithms: geometric mean, its interval's ends, and the standard error to first order. */
function backTransformed(onLog: Estimate<"kg/turn">): Estimate<"kg/turn"> {
  const value = Math.exp(onLog.value);
  const end = (limit: number | null) => (limit === null ? null : Math.exp(limit));
  return {
    ...onLog,
    value,
    standardError: onLog.standardError === null ? null : value * onLog.standardError,
    interval:
      onLog.interval === null
        ? null
        : {
            ...onLog.interval,
            lower: end(onLog.interval.lower),
            upper: end(onLog.interval.upper),
          },
  };
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
