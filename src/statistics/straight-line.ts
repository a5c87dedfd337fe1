import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { requireAllFinite, requireFinite, requirePositive } from "../numeric/domain.ts";
import { accurateSum } from "../numeric/summation.ts";
import { weightedMean } from "./summary.ts";

/** A weighted straight line y = intercept + slope·x. */
export interface LineFit {
  readonly intercept: number;
  readonly slope: number;
  /** Null without degrees of freedom, as are the next two: the scatter about the line is then unknown. */
  readonly interceptStandardError: number | null;
  readonly slopeStandardError: number | null;
  /** Covariance of intercept and slope. */
  readonly covariance: number | null;
  /** Σ weight · residual². */
  readonly residualSumOfSquares: number;
  /** Scatter of an observation of weight 1 about the line; null without degrees of freedom. */
  readonly residualStandardDeviation: number | null;
  /** Observations minus 2. */
  readonly df: number;
  /** Weighted mean of x, Σwx/Σw. */
  readonly meanX: number;
  readonly sumOfWeights: number;
  /** Σ w (x − meanX)². */
  readonly sumOfSquaresX: number;
  /** Share of each fitted value that comes from its own observation; they sum to 2. */
  readonly leverages: readonly number[];
  /** y minus the line, not weighted. */
  readonly residuals: readonly number[];
}

/**
 * Straight line through points of unequal weight: weighted least squares, centred on the weighted means so that large
 * x or y cost no digits. slope = Σw(x − x̄)(y − ȳ)/Σw(x − x̄)², intercept = ȳ − slope·x̄.
 *
 * @param x at least 2 finite values, not all equal
 * @param y finite values, as many as x
 * @param weights inverse error variances up to a common factor, above 0; default all 1
 * @throws NumericalError when lengths disagree, a value is out of range, or all x are equal
 * Source Draper and Smith 1998, Applied Regression Analysis, 3rd edition, sections 1.2–1.4 and 9.2
 */
export function weightedLine(
  x: readonly number[],
  y: readonly number[],
  weights: readonly number[] = x.map(() => 1),
): LineFit {
  const sums = weightedSums(x, y, weights);
  const { sumOfWeights, meanX, meanY, slope, sumOfSquaresX, residualSumOfSquares, df } = sums;
  const dx = x.map((value) => value - meanX);
  const residuals = y.map((value, i) => value - meanY - slope * at(dx, i));
  const variance = df > 0 ? residualSumOfSquares / df : null;
  const scaled = (factor: number) => (variance === null ? null : variance * factor);
  return {
    intercept: meanY - slope * meanX,
    slope,
    interceptStandardError: root(scaled(1 / sumOfWeights + meanX ** 2 / sumOfSquaresX)),
    slopeStandardError: root(scaled(1 / sumOfSquaresX)),
    covariance: scaled(-meanX / sumOfSquaresX),
    residualSumOfSquares,
    residualStandardDeviation: root(variance),
    df,
    meanX,
    sumOfWeights,
    sumOfSquaresX,
    leverages: dx.map((d, i) => at(weights, i) * (1 / sumOfWeights + d ** 2 / sumOfSquaresX)),
    residuals,
  };
}

/** What a weighted line rests on. */
export interface LineSums {
  readonly sumOfWeights: number;
  readonly meanX: number;
  readonly meanY: number;
  readonly slope: number;
  /** Σw(x − x̄)². */
  readonly sumOfSquaresX: number;
  /** Σw·residual². */
  readonly residualSumOfSquares: number;
  /** Points less 2. */
  readonly df: number;
}

/** The sums of `weightedLine` alone, where many lines are wanted and nobody looks at their points; errors as there. */
export function weightedSums(
  x: readonly number[],
  y: readonly number[],
  weights: readonly number[],
): LineSums {
  check(x, y, weights);
  const sumOfWeights = accurateSum(weights);
  const meanX = weightedMean(x, weights);
  const meanY = weightedMean(y, weights);
  const sumOfSquaresX = accurateSum(weights.map((w, i) => w * (at(x, i) - meanX) ** 2));
  if (!(sumOfSquaresX > 0)) {
    throw new NumericalError("weightedLine: all x are equal; a slope cannot be told.");
  }
  const products = weights.map((w, i) => w * ((at(x, i) - meanX) * (at(y, i) - meanY)));
  const slope = accurateSum(products) / sumOfSquaresX;
  const squares = weights.map((w, i) => w * (at(y, i) - meanY - slope * (at(x, i) - meanX)) ** 2);
  const residualSumOfSquares = accurateSum(squares);
  return {
    sumOfWeights,
    meanX,
    meanY,
    slope,
    sumOfSquaresX,
    residualSumOfSquares,
    df: x.length - 2,
  };
}

/** Height of the line at `x`. Throws NumericalError when `x` is not finite. */
export function lineAt(fit: LineFit, x: number): number {
  requireFinite("lineAt", "x", x);
  return fit.intercept + fit.slope * x;
}

function root(value: number | null): number | null {
  return value === null ? null : Math.sqrt(value);
}

function check(x: readonly number[], y: readonly number[], weights: readonly number[]): void {
  if (x.length < 2) {
    throw new NumericalError(
      `weightedLine: a line needs at least 2 points; there are ${x.length}.`,
    );
  }
  if (y.length !== x.length || weights.length !== x.length) {
    throw new NumericalError(
      `weightedLine: ${x.length} x, ${y.length} y and ${weights.length} weights; they must be as many.`,
    );
  }
  requireAllFinite("weightedLine", "x", x);
  requireAllFinite("weightedLine", "y", y);
  weights.forEach((value, i) => {
    if (!(value > 0 && Number.isFinite(value)))
      requirePositive("weightedLine", `weight ${i + 1}`, value);
  });
}
