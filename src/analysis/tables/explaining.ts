import type { PlainRow } from "../../data/write-csv.ts";
import type { ExplainingVariables } from "../../questions/explaining-variables.ts";
import type { ProductAnswers } from "../products.ts";
import { estimateCells, setCells } from "./cells.ts";

/** What was recorded beside the catches and may explain why deliveries differ: one row a variable. */
export function variableTable({ variables }: ExplainingVariables): readonly PlainRow[] {
  return variables.map(({ name, unit, fills, lowest, highest, varies }) => ({
    variable: name,
    variable_unit: unit,
    fills,
    lowest,
    highest,
    varies_within_fills: varies.withinFills,
    varies_within_products: varies.withinProducts,
    varies_between_products: varies.betweenProducts,
  }));
}

function regressionsOf({ betweenProducts, withinProducts }: ExplainingVariables) {
  return [...betweenProducts, ...(withinProducts === null ? [] : [withinProducts])];
}

/** Effects of explaining variables: one row an effect, whichever level it was found at. */
export function effectTable(result: ExplainingVariables): readonly PlainRow[] {
  return [
    ...regressionsOf(result).flatMap(({ units, points, effects }) =>
      effects.map(
        ({ variable, perUnit, elasticity, pValue }): PlainRow => ({
          variable,
          between: units,
          together_with: othersOf(effects, variable),
          points,
          ...estimateCells(perUnit),
          elasticity,
          p: pValue,
        }),
      ),
    ),
    ...result.withinFills.map(
      ({ variable, fills, perUnit, pValue }): PlainRow => ({
        variable,
        between: "catches within fills",
        together_with: null,
        points: fills,
        ...estimateCells(perUnit),
        elasticity: null,
        p: pValue,
      }),
    ),
  ];
}

function othersOf(effects: readonly { readonly variable: string }[], variable: string) {
  const others = effects.map((effect) => effect.variable).filter((name) => name !== variable);
  return others.length === 0 ? null : others.join(", ");
}

/** The regressions that effects are of: one row a regression. */
export function regressionTable(result: ExplainingVariables): readonly PlainRow[] {
  return regressionsOf(result).map(
    ({ units, points, df, effects, residualStandardDeviation, rSquared }) => ({
      between: units,
      variables: effects.map(({ variable }) => variable).join(", "),
      points,
      df,
      residual_sd_kg_per_turn: residualStandardDeviation,
      r_squared: rSquared,
    }),
  );
}

/** F tests over all products: one row a test. */
export function productTestTable({ comparison, explaining }: ProductAnswers): readonly PlainRow[] {
  const { density } = explaining;
  const tests = [
    { test: "products differ in delivery", result: comparison.overall },
    { test: "products of recorded density differ in delivery", result: density?.overallDelivery },
    { test: "products differ in volume", result: density?.overallVolume },
    { test: "products differ after a line on density", result: density?.productAfterDensity },
  ];
  return tests.flatMap(({ test, result }) =>
    result == null
      ? []
      : [
          {
            test,
            statistic: result.statistic,
            df: result.df1,
            df_denominator: result.df2,
            p: result.pValue,
          },
        ],
  );
}

/** Whether bulk density alone explains how products differ: one row. */
export function densityTable({ density }: ExplainingVariables): readonly PlainRow[] {
  if (density === null) return [];
  const { verdict, shareExplained, method, products } = density;
  return [{ verdict, share_explained: shareExplained, method, products: products.length }];
}

/** Fills with what was recorded of them: one row a fill. */
export function densityFillTable({ fills }: ExplainingVariables): readonly PlainRow[] {
  return fills.map(
    ({ bin, product, fill, deliveryKgPerTurn, volumeM3PerTurn, bulkDensityKgPerM3 }) => ({
      bin,
      product,
      fill,
      bulk_density_kg_m3: bulkDensityKgPerM3,
      delivery_kg_per_turn: deliveryKgPerTurn,
      volume_m3_per_turn: volumeM3PerTurn,
    }),
  );
}

/** Volume per turn of each product: one row a product. */
export function densityVolumeTable({ density }: ExplainingVariables): readonly PlainRow[] {
  return (density?.products ?? []).map(
    ({ product, fills, densityKgPerM3, deliveryKgPerTurn, volume }) => ({
      product,
      fills,
      bulk_density_kg_m3: densityKgPerM3,
      delivery_kg_per_turn: deliveryKgPerTurn,
      ...estimateCells(volume),
    }),
  );
}

/** Products against each other in volume per turn: one row a pair. */
export function densityContrastTable({
  density,
  options: { level },
}: ExplainingVariables): readonly PlainRow[] {
  return (density?.contrasts ?? []).map(
    ({ first, second, difference, ratio, pValue, differenceFound }) => ({
      first,
      second,
      ...estimateCells(difference),
      ratio: ratio.value,
      ...setCells("ratio", ratio.set),
      level,
      p_adjusted: pValue,
      difference_found: differenceFound,
    }),
  );
}

/** Delivery of a product not tried yet, from its bulk density: one row a way to work it out. */
export function densityPredictionTable({ prediction }: ExplainingVariables): readonly PlainRow[] {
  if (prediction === null) return [];
  const { densityKgPerM3, lowest, highest, products, proportional, line, extrapolates } =
    prediction;
  const ways = [
    { by: "equal volume per turn", estimate: proportional },
    ...(line === null ? [] : [{ by: "straight line", estimate: line.estimate }]),
  ];
  return ways.map(({ by, estimate }) => ({
    bulk_density_kg_m3: densityKgPerM3,
    by,
    products,
    ...estimateCells(estimate),
    lowest,
    highest,
    extrapolates,
  }));
}
