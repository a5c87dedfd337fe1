import { sum } from "simple-statistics";
import { OptionError } from "../errors/errors.ts";
import type { Model } from "../model/model.ts";
import { blockNames, type ProductGroup, productGroups } from "../model/product-groups.ts";
import { requireModelOptions } from "../results/options.ts";
import { explainingCautions } from "./explaining-variables/cautions.ts";
import { densityExplanation, volumeOf } from "./explaining-variables/density.ts";
import { densityLine, predictNewProduct } from "./explaining-variables/new-product.ts";
import {
  densityName,
  densityOf,
  describeVariable,
  readersFor,
  type VariableReader,
} from "./explaining-variables/records.ts";
import { overProducts, withinFills, withinProducts } from "./explaining-variables/regressions.ts";
import type {
  DeliveryRegression,
  ExplainedFill,
  ExplainingVariables,
  ExplainingVariablesOptions,
  Variable,
} from "./explaining-variables/result.ts";

export type { ExplainingVariables, ExplainingVariablesOptions };

/**
 * What goes with the delivery per turn, and does bulk density alone explain how products differ?
 *
 * Each variable at the level at which it changes: between products over product means (one point a product, t on products
 * − variables − 1); between fills of a product by a regression with a level for each product; between catches of a fill
 * by one slope a fill. Density: volumes per turn (delivery ÷ bulk density) compared as deliveries are. A product not tried
 * yet: mean volume per turn × its density, with the prediction interval for one more product.
 *
 * @param model    as fitted; variables are the means of what the catches of a fill record
 * @param options  from `explainingVariablesOptions`
 * @returns        effects per unit with t intervals; kg/turn and m³/turn
 * Null when       no density is recorded (density, prediction; caution no-density when a prediction is asked for); products
 *                 or fills are too few for a regression; variables cannot be told apart (caution variables-not-told-apart)
 * @throws         OptionError when a variable or the blocks name no column of the file
 * Assumes         straight lines; variables measured well against how much they change. An effect found is not yet a cause:
 *                 what changed together with the variable is in it
 * Source          Draper & Smith 1998, Applied Regression Analysis, ch. 5 and 8; Hahn & Meeker, Statistical Intervals, ch. 4
 */
export function explainingVariables(
  model: Model,
  options: ExplainingVariablesOptions,
): ExplainingVariables {
  requireModelOptions(options);
  checkBlocks(model, options);
  const { level, newDensityKgPerM3 } = options;
  const groups = productGroups(model, options.blocks);
  const readers = readersFor(groups, options.variables);
  const described = readers.flatMap((reader) => {
    const variable = describeVariable(groups, reader);
    return variable === null ? [] : [{ reader, variable }];
  });
  const varying = (level: keyof Variable["varies"]) =>
    described.filter(({ variable }) => variable.varies[level]).map(({ reader }) => reader);
  const dense = withDensity(groups);
  const findings = {
    groups,
    variables: described.map(({ variable }) => variable),
    betweenProducts: betweenProducts(groups, varying("betweenProducts"), level),
    withinProducts: withinProducts(groups, varying("withinProducts"), level),
    prediction: predictionFor(dense, options),
    predictionAsked: newDensityKgPerM3 !== null,
  };
  return {
    kind: "explaining-variables",
    options,
    input: inputOf(groups),
    variables: findings.variables,
    fills: groups.flatMap(explainedFills),
    betweenProducts: findings.betweenProducts,
    withinProducts: findings.withinProducts,
    withinFills: varying("withinFills").flatMap(
      (reader) => withinFills(groups, reader, level) ?? [],
    ),
    density: densityExplanation(dense, options),
    densityLine: dense.length === 0 ? [] : densityLine(dense, newDensityKgPerM3, level),
    prediction: findings.prediction,
    cautions: explainingCautions(findings),
  };
}

/** Each variable by itself, then all together when there are two or more. */
function betweenProducts(
  groups: readonly ProductGroup[],
  readers: readonly VariableReader[],
  level: number,
): readonly DeliveryRegression[] {
  const sets = [...readers.map((reader) => [reader]), ...(readers.length > 1 ? [readers] : [])];
  return sets.flatMap((set) => overProducts(groups, set, level)?.answer ?? []);
}

function predictionFor(
  dense: readonly ProductGroup[],
  { newDensityKgPerM3: density, level }: ExplainingVariablesOptions,
): ExplainingVariables["prediction"] {
  if (density === null || dense.length === 0) return null;
  const readers = readersFor(dense, [densityName]);
  const line = overProducts(dense, readers, level)?.fit ?? null;
  return predictNewProduct(dense, density, line, level);
}

/** Fills with a recorded density, and the products that have any. */
function withDensity(groups: readonly ProductGroup[]): readonly ProductGroup[] {
  return groups
    .map((group) => ({
      ...group,
      fills: group.fills.filter(({ fill }) => densityOf(fill) !== null),
    }))
    .filter(({ fills }) => fills.length > 0);
}

function explainedFills({ product, fills }: ProductGroup): readonly ExplainedFill[] {
  return fills.map(({ fill }) => {
    const density = densityOf(fill);
    return {
      bin: fill.bin,
      product,
      fill: fill.fill,
      deliveryKgPerTurn: fill.delivery,
      volumeM3PerTurn: density === null ? null : volumeOf(fill),
      bulkDensityKgPerM3: density,
    };
  });
}

function inputOf(groups: readonly ProductGroup[]): ExplainingVariables["input"] {
  const fills = groups.flatMap((group) => group.fills.map(({ fill }) => fill));
  return {
    products: groups.length,
    fills: fills.length,
    catches: sum(fills.map(({ totals }) => totals.catches)),
  };
}

function checkBlocks(model: Model, { blocks }: ExplainingVariablesOptions): void {
  const names = blockNames(model);
  if (blocks !== null && !names.includes(blocks)) {
    throw new OptionError("blocks", blocks, { need: "listed", facts: { choices: names } });
  }
}
