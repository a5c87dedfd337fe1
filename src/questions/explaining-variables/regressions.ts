import { sum } from "simple-statistics";
import { at } from "../../errors/at.ts";
import { NumericalError } from "../../errors/errors.ts";
import type { Fill } from "../../model/meters.ts";
import type { ProductGroup } from "../../model/product-groups.ts";
import { tEstimate } from "../../model/t-estimate.ts";
import { studentTTwoSided } from "../../numeric/distributions/student-t.ts";
import { groupBy } from "../../numeric/group-by.ts";
import { noScatter } from "../../numeric/rounding-dust.ts";
import { type Regression, regression } from "../../statistics/regression.ts";
import { sampleOf, varianceOfMean } from "../../statistics/sample.ts";
import { weightedLine } from "../../statistics/straight-line.ts";
import { mean, squaresWithin } from "../../statistics/summary.ts";
import { ofFill, ofProduct, type VariableReader } from "./records.ts";
import type { DeliveryRegression, Effect, WithinFillEffect } from "./result.ts";

/** One point of a regression: a product's means, or a fill. */
interface Observation {
  readonly delivery: number;
  readonly values: readonly number[];
}

/**
 * Delivery of products against variables, one point a product: what is common to all fills of a product counts once,
 * however many fills there are.
 *
 * @returns null with fewer products than coefficients plus one, or when the variables cannot be told apart
 */
export function overProducts(
  groups: readonly ProductGroup[],
  readers: readonly VariableReader[],
  level: number,
): { readonly fit: Regression; readonly answer: DeliveryRegression } | null {
  const observations = groups.flatMap((group): Observation[] => {
    const values = readers.flatMap((reader) => ofProduct(group, reader) ?? []);
    const delivery = mean(group.fills.map(({ fill }) => fill.delivery));
    return values.length === readers.length ? [{ delivery, values }] : [];
  });
  if (observations.length < readers.length + 2) return null;
  const names = readers.map(({ name }) => name);
  const fit = fitOrNull(names, observations, level);
  return fit === null ? null : { fit, answer: answerOf(fit, "products", observations, names) };
}

/**
 * Delivery of fills against variables, each product at a level of its own: what goes with a variable from fill to fill of
 * the same product.
 *
 * @returns null when the fills leave no degree of freedom, or the variables cannot be told apart
 */
export function withinProducts(
  groups: readonly ProductGroup[],
  readers: readonly VariableReader[],
  level: number,
): DeliveryRegression | null {
  const centred = groups.flatMap((group) => centredFills(group, readers));
  const products = new Set(centred.map(({ product }) => product));
  const names = readers.map(({ name }) => name);
  const observations = centred.map(({ delivery, values, product }) => {
    const others = [...products].slice(1).map((other) => (other === product ? 1 : 0));
    return { delivery, values: [...others, ...values] };
  });
  const width = products.size - 1 + names.length;
  if (names.length === 0 || observations.length < width + 2) return null;
  const columns = [...[...products].slice(1), ...names];
  const fit = fitOrNull(columns, observations, level);
  if (fit === null) return null;
  const answer = answerOf(fit, "fills within products", observations, names);
  return { ...answer, rSquared: shareWithin(fit, groupDeliveries(centred)) };
}

interface FillObservation extends Observation {
  readonly product: string;
}

function centredFills(
  { product, fills }: ProductGroup,
  readers: readonly VariableReader[],
): readonly FillObservation[] {
  return fills.flatMap(({ fill }) => {
    const values = readers.flatMap((reader) => ofFill(fill, reader) ?? []);
    return values.length === readers.length ? [{ product, delivery: fill.delivery, values }] : [];
  });
}

function groupDeliveries(fills: readonly FillObservation[]): readonly (readonly number[])[] {
  const byProduct = groupBy(fills, ({ product }) => product);
  return Array.from(byProduct.values(), (own) => own.map(({ delivery }) => delivery));
}

/** Share of the variation about the products' own means that a fit explains; null when there is none. */
function shareWithin(fit: Regression, groups: readonly (readonly number[])[]): number | null {
  const total = sum(groups.map((values) => squaresWithin(values).squares));
  return noScatter(total, groups.flat()) ? null : Math.max(0, 1 - fit.residualSumOfSquares / total);
}

/**
 * Relative change of delivery with a variable that was changed between catches of the same fill. One weighted slope a
 * fill (weights turns), over the fill's delivery; the mean of the slopes with t on fills − 1.
 *
 * @returns null when no fill tried two values
 */
export function withinFills(
  groups: readonly ProductGroup[],
  reader: VariableReader,
  level: number,
): WithinFillEffect | null {
  const slopes = groups.flatMap(({ fills }) =>
    fills.flatMap(({ fill }) => relativeSlope(fill, reader) ?? []),
  );
  if (slopes.length === 0) return null;
  const sample = slopes.length < 2 ? null : sampleOf(slopes);
  const error = sample === null || sample.variance === 0 ? null : Math.sqrt(varianceOfMean(sample));
  const center = mean(slopes);
  const df = slopes.length - 1;
  return {
    variable: reader.name,
    fills: slopes.length,
    perUnit: tEstimate(center, "fraction", error, df, level, "coefficient"),
    pValue: error === null ? null : studentTTwoSided(center / error, df),
  };
}

function relativeSlope(fill: Fill, { ofCatch }: VariableReader): number | null {
  const points = fill.catches.flatMap((row) => {
    const x = ofCatch(row);
    return x === null ? [] : [{ x, turns: row.turns, delivery: row.netKg / row.turns }];
  });
  if (new Set(points.map(({ x }) => x)).size < 2) return null;
  const line = weightedLine(
    points.map(({ x }) => x),
    points.map(({ delivery }) => delivery),
    points.map(({ turns }) => turns),
  );
  return line.slope / fill.delivery;
}

/** A regression, or null where its variables cannot be told apart: the caller names them in a caution. */
function fitOrNull(
  names: readonly string[],
  observations: readonly Observation[],
  level: number,
): Regression | null {
  try {
    return regression(
      names,
      observations.map(({ values }) => values),
      observations.map(({ delivery }) => delivery),
      level,
    );
  } catch (error) {
    if (error instanceof NumericalError) return null;
    throw error;
  }
}

function answerOf(
  fit: Regression,
  units: DeliveryRegression["units"],
  observations: readonly Observation[],
  variables: readonly string[],
): DeliveryRegression {
  const center = mean(observations.map(({ delivery }) => delivery));
  const first = fit.slopes.length - variables.length;
  return {
    units,
    points: observations.length,
    df: fit.df,
    effects: fit.slopes.slice(first).map((slope, j): Effect => {
      const { name, value, standardError, pValue, lower, upper } = slope;
      const middle = mean(observations.map(({ values }) => at(values, first + j)));
      return {
        variable: name,
        perUnit: {
          value,
          unit: "kg/turn",
          standardError,
          df: standardError === null ? null : fit.df,
          interval:
            lower === null || upper === null
              ? null
              : { lower, upper, level: fit.level, about: "coefficient" },
        },
        elasticity: (value * middle) / center,
        pValue,
      };
    }),
    residualStandardDeviation: fit.residualStandardDeviation,
    rSquared: fit.rSquared,
  };
}
