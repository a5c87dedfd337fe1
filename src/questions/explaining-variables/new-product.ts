import { max, min } from "simple-statistics";
import type { ProductGroup } from "../../model/product-groups.ts";
import { tEstimate } from "../../model/t-estimate.ts";
import type { Estimate } from "../../results/estimate.ts";
import { predict } from "../../statistics/prediction.ts";
import type { Regression } from "../../statistics/regression.ts";
import { mean, sampleStandardDeviation } from "../../statistics/summary.ts";
import { volumeOf } from "./density.ts";
import { densityOf } from "./records.ts";
import type { DensityLinePoint, NewProductPrediction } from "./result.ts";

const placesOnLine = 25;
/** How far beyond the densities tried the line is drawn, as a share of their range. */
const beyond = 0.15;

/**
 * Delivery of a product not tried yet, if the meter gives it about the volume it gives the others: mean volume of the
 * products × density, ± t·s·√(1 + 1/P)·density on P − 1 degrees of freedom, s the standard deviation of the products'
 * volumes. It is the rule for the next fill, one step up: the next product.
 */
function proportional(
  groups: readonly ProductGroup[],
  density: number,
  level: number,
): Estimate<"kg/turn"> {
  const volumes = groups.map(({ fills }) => mean(fills.map(({ fill }) => volumeOf(fill))));
  const products = volumes.length;
  const error =
    products < 2 ? null : sampleStandardDeviation(volumes) * Math.sqrt(1 + 1 / products) * density;
  const value = mean(volumes) * density;
  return tEstimate(value, "kg/turn", error, products - 1, level, "new product");
}

/** @param groups fills with a recorded density only; at least one product */
export function predictNewProduct(
  groups: readonly ProductGroup[],
  density: number,
  fit: Regression | null,
  level: number,
): NewProductPrediction {
  const densities = productDensities(groups);
  const [lowest, highest] = [min(densities), max(densities)];
  const line = fit === null ? null : lineAt(fit, density, level);
  return {
    densityKgPerM3: density,
    lowest,
    highest,
    products: groups.length,
    proportional: proportional(groups, density, level),
    line,
    extrapolates: density < lowest || density > highest,
  };
}

/** Points of the proportional prediction over the densities tried and a little beyond, ready to draw. */
export function densityLine(
  groups: readonly ProductGroup[],
  wanted: number | null,
  level: number,
): readonly DensityLinePoint[] {
  const densities = [...productDensities(groups), ...(wanted === null ? [] : [wanted])];
  const [lowest, highest] = [min(densities), max(densities)];
  if (!(highest > lowest)) return [];
  const margin = beyond * (highest - lowest);
  const start = Math.max(0, lowest - margin);
  const step = (highest + margin - start) / (placesOnLine - 1);
  return Array.from({ length: placesOnLine }, (_, i) => {
    const { value, interval } = proportional(groups, start + i * step, level);
    return {
      densityKgPerM3: start + i * step,
      fittedKgPerTurn: value,
      lowerKgPerTurn: interval?.lower ?? null,
      upperKgPerTurn: interval?.upper ?? null,
    };
  });
}

function lineAt(
  fit: Regression,
  density: number,
  level: number,
): NonNullable<NewProductPrediction["line"]> {
  const at = predict(fit, [density]);
  const { newLower, newUpper, residualStandardDeviation } = {
    ...at,
    residualStandardDeviation: fit.residualStandardDeviation,
  };
  const known = newLower !== null && newUpper !== null && residualStandardDeviation !== null;
  return {
    estimate: {
      value: at.value,
      unit: "kg/turn",
      standardError: known ? residualStandardDeviation * Math.sqrt(1 + at.leverage) : null,
      df: known ? fit.df : null,
      interval: known ? { lower: newLower, upper: newUpper, level, about: "new product" } : null,
    },
    leverage: at.leverage,
    largestLeverage: at.largestLeverage,
  };
}

function productDensities(groups: readonly ProductGroup[]): readonly number[] {
  return groups.map(({ fills }) => mean(fills.map(({ fill }) => densityOf(fill) ?? 0)));
}
