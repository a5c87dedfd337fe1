import { sampleVariance } from "simple-statistics";
import { at } from "../../errors/at.ts";
import {
  type ComparisonDesign,
  compareProducts,
  pairsOfProducts,
} from "../../model/compare-products.ts";
import { designed } from "../../model/comparison-design.ts";
import type { Fill } from "../../model/meters.ts";
import type { ProductGroup } from "../../model/product-groups.ts";
import { tEstimate } from "../../model/t-estimate.ts";
import type { MeanContrast } from "../../statistics/mean-comparison.ts";
import { type NestedTest, nestedTest } from "../../statistics/nested-test.ts";
import { regression } from "../../statistics/regression.ts";
import { sampleOf, varianceOfMean } from "../../statistics/sample.ts";
import { weightedLine } from "../../statistics/straight-line.ts";
import { mean } from "../../statistics/summary.ts";
import { densityOf } from "./records.ts";
import type {
  DensityExplanation,
  ExplainingVariablesOptions,
  ProductVolume,
  VolumeContrast,
} from "./result.ts";

const fewestFills = 2;

/**
 * Does bulk density alone explain why products differ? A meter that gives every product the same volume delivers mass in
 * proportion to density; so volumes per turn are compared as deliveries are, with fills as the units.
 *
 * @param groups  fills with a recorded density only
 * @returns       null when there are none
 */
export function densityExplanation(
  groups: readonly ProductGroup[],
  options: ExplainingVariablesOptions,
): DensityExplanation | null {
  if (groups.length === 0) return null;
  const usable = groups.filter(({ fills }) => fills.length >= fewestFills);
  const design = designed(usable, {
    ...options,
    reference: null,
    scale: "by design",
    equivalenceMargin: null,
  });
  const comparable = pairsOfProducts(usable, null).length > 0;
  const volumes = comparable ? compareProducts(usable, design, volumeOf) : null;
  const deliveries = comparable
    ? compareProducts(usable, design, ({ delivery }) => delivery)
    : null;
  const contrasts = (volumes?.contrasts ?? []).map((one) => volumeContrast(one, usable, design));
  return {
    verdict: verdictOf(deliveries?.contrasts ?? [], contrasts),
    products: groups.map((group) => productVolume(group, options.level)),
    method: volumes?.method ?? null,
    contrasts,
    overallDelivery: deliveries?.overall ?? null,
    overallVolume: volumes?.overall ?? null,
    productAfterDensity: productAfterDensity(usable),
    shareExplained: shareExplained(groups),
  };
}

/** Delivery over bulk density, m³/turn; the fill's density must be recorded. */
export function volumeOf(fill: Fill): number {
  return fill.delivery / (densityOf(fill) ?? Number.NaN);
}

function verdictOf(
  deliveries: readonly MeanContrast[],
  volumes: readonly VolumeContrast[],
): DensityExplanation["verdict"] {
  if (volumes.length === 0 || volumes.every(({ pValue }) => pValue === null)) return "unknown";
  if (volumes.some(({ differenceFound }) => differenceFound)) return "not all";
  const differ = deliveries.some(({ differenceFound }) => differenceFound);
  return differ ? "no more found" : "nothing to explain";
}

function productVolume({ product, fills }: ProductGroup, level: number): ProductVolume {
  const volumes = fills.map(({ fill }) => volumeOf(fill));
  const sample = volumes.length < 2 ? null : sampleOf(volumes);
  const error = sample === null ? null : Math.sqrt(varianceOfMean(sample));
  return {
    product,
    fills: fills.length,
    densityKgPerM3: mean(fills.map(({ fill }) => densityOf(fill) ?? 0)),
    deliveryKgPerTurn: mean(fills.map(({ fill }) => fill.delivery)),
    volume: tEstimate(
      mean(volumes),
      "m³/turn",
      error,
      volumes.length - 1,
      level,
      "mean over fills",
    ),
  };
}

function volumeContrast(
  contrast: MeanContrast,
  groups: readonly ProductGroup[],
  { scale, level }: ComparisonDesign,
): VolumeContrast {
  const { difference, standardError, df, lower, upper, ratio, ratioSet } = contrast;
  return {
    first: at(groups, contrast.first).product,
    second: at(groups, contrast.second).product,
    difference:
      scale === "log"
        ? null
        : {
            value: difference,
            unit: "m³/turn",
            standardError,
            df,
            interval:
              lower === null || upper === null
                ? null
                : { lower, upper, level, about: "difference" },
          },
    ratio: { value: ratio, unit: "ratio", level, set: ratioSet },
    pValue: contrast.pValue,
    differenceFound: contrast.differenceFound,
  };
}

/** F test of a level for each product after one straight line on density; null where it cannot be made. */
function productAfterDensity(groups: readonly ProductGroup[]): NestedTest | null {
  const points = groups.flatMap(({ product, fills }) =>
    fills.map(({ fill }) => ({ product, x: densityOf(fill) ?? 0, y: fill.delivery })),
  );
  const varies = (values: readonly number[]) => new Set(values).size > 1;
  const within = groups.some(({ fills }) => varies(fills.map(({ fill }) => densityOf(fill) ?? 0)));
  if (groups.length < 2 || !within || points.length < groups.length + 2) return null;
  const others = groups.slice(1).map(({ product }) => product);
  const y = points.map((point) => point.y);
  const line = weightedLine(
    points.map(({ x }) => x),
    y,
  );
  const rows = points.map(({ product, x }) => [
    ...others.map((other) => (other === product ? 1 : 0)),
    x,
  ]);
  return nestedTest(line, regression([...others, "density"], rows, y), y);
}

/** 1 − variance of ln volume over variance of ln delivery, between products; null with one product or no difference. */
function shareExplained(groups: readonly ProductGroup[]): number | null {
  if (groups.length < 2) return null;
  const between = (value: (fill: Fill) => number) =>
    sampleVariance(groups.map(({ fills }) => Math.log(mean(fills.map(({ fill }) => value(fill))))));
  const ofDelivery = between(({ delivery }) => delivery);
  return ofDelivery > 0 ? 1 - between(volumeOf) / ofDelivery : null;
}
