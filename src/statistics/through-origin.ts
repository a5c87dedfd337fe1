import { sum } from "simple-statistics";
import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { finiteResult } from "../numeric/domain.ts";
import { wholePower } from "../numeric/powers.ts";

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface FittedPoint extends Point {
  readonly fitted: number;
  readonly residual: number;
  /** Share of the line this point decides by itself; over all points they sum to 1. */
  readonly leverage: number;
}

/**
 * How the error variance grows with x: "constant" (ordinary least squares, Σxy/Σx²), "proportional"
 * (variance ∝ x, ratio of sums Σy/Σx) or "squared" (variance ∝ x², mean of ratios).
 */
export type VarianceLaw = "constant" | "proportional" | "squared";

export interface ThroughOriginFit {
  readonly law: VarianceLaw;
  readonly slope: number;
  /** n − 1. */
  readonly df: number;
  /** Σ residual²/x^power. */
  readonly residualSumOfSquares: number;
  /** Error variance at x = 1; null with a single point. */
  readonly residualVariance: number | null;
  /** Standard error that trusts the variance law; null with a single point. */
  readonly modelStandardError: number | null;
  /** Standard error that does not trust it (HC3); null with a single point. */
  readonly robustStandardError: number | null;
  readonly points: readonly FittedPoint[];
}

/** Exponent p of the law variance ∝ x^p. */
export const variancePowers: Readonly<Record<VarianceLaw, 0 | 1 | 2>> = {
  constant: 0,
  proportional: 1,
  squared: 2,
};

/**
 * Straight line through the origin by weighted least squares: slope = Σwxy/Σwx², w = 1/x^power.
 *
 * @param points  n >= 1, every x above zero
 * @param law     how the error variance grows with x; default "proportional", the ratio of sums
 * @returns       slope in units of y per x, its classical standard error √(s²/Σwx²) with s² = Σwr²/(n−1), and the
 *                heteroscedasticity-consistent one, √Σ(wxr/(1−h))² / Σwx²
 * @throws        NumericalError when there is no point, an x is not above zero, or a value or a result is not finite
 * Source         Cochran, Sampling Techniques, 3rd ed., ch. 6 (ratio estimators); Long & Ervin, The American
 *                Statistician 54 (2000) 217 (HC3)
 * @example
 *   const points = [{ x: 20, y: 6.36 }, { x: 20, y: 6.48 }, { x: 40, y: 12.9 }];
 *   fitThroughOrigin(points).slope // -> 0.32175
 */
export function fitThroughOrigin(
  points: readonly Point[],
  law: VarianceLaw = "proportional",
): ThroughOriginFit {
  checkPoints(points);
  const power = variancePowers[law];
  const information = ({ x }: Point) => wholePower(x, 2 - power);
  const totalInformation = sum(points.map(information));
  const weighted = sum(points.map(({ x, y }) => y * wholePower(x, 1 - power)));
  const slope = finiteResult("fitThroughOrigin", weighted / totalInformation);

  // Written out: a copy that is added to takes twenty times as long, and a log has as many points as catches.
  const fittedPoints = points.map((point) => ({
    x: point.x,
    y: point.y,
    fitted: slope * point.x,
    residual: point.y - slope * point.x,
    leverage: information(point) / totalInformation,
  }));
  const residualSumOfSquares = finiteResult(
    "fitThroughOrigin",
    sum(fittedPoints.map(({ x, residual }) => residual ** 2 / wholePower(x, power))),
  );
  const df = points.length - 1;
  const residualVariance = df === 0 ? null : residualSumOfSquares / df;
  const influences = fittedPoints.map(
    ({ x, residual, leverage }) => (residual * wholePower(x, 1 - power)) / (1 - leverage),
  );
  const robust = () =>
    finiteResult(
      "fitThroughOrigin",
      Math.sqrt(sum(influences.map((value) => value ** 2))) / totalInformation,
    );
  return {
    law,
    slope,
    df,
    residualSumOfSquares,
    points: fittedPoints,
    residualVariance,
    modelStandardError:
      residualVariance === null ? null : Math.sqrt(residualVariance / totalInformation),
    robustStandardError: residualVariance === null ? null : robust(),
  };
}

function checkPoints(points: readonly Point[]): void {
  if (points.length === 0)
    throw new NumericalError("A line through the origin needs at least 1 point; got none.");
  for (let i = 0; i < points.length; i++) {
    const { x, y } = at(points, i);
    if (!(x > 0 && Number.isFinite(x)))
      throw new NumericalError(`points[${i}].x is ${x}; it must be a finite number above zero.`);
    if (!Number.isFinite(y))
      throw new NumericalError(`points[${i}].y is ${y}; it must be a finite number.`);
  }
}
