import { sum } from "simple-statistics";
import { fUpperTail } from "../numeric/distributions/f.ts";
import { groupBy } from "../numeric/group-by.ts";
import { noScatter } from "../numeric/rounding-dust.ts";
import { squaresWithin } from "./summary.ts";
import type { ThroughOriginFit } from "./through-origin.ts";

export interface LackOfFit {
  readonly levels: number;
  readonly statistic: number;
  readonly dfLackOfFit: number;
  readonly dfPureError: number;
  readonly lackOfFitSumOfSquares: number;
  readonly pureErrorSumOfSquares: number;
  readonly pValue: number;
}

/**
 * Does a line through the origin follow the level means? F test of lack of fit against pure error, with the
 * weights of the variance-proportional fit: F = (SS_lack/(levels−1)) / (SS_pure/(n−levels)).
 *
 * @param fit  fit with the law "proportional"
 * @returns    null when fewer than two levels of x exist, no level repeats, or repeats agree exactly (no pure
 *             error to compare with)
 * Source      Draper & Smith, Applied Regression Analysis, "lack of fit and pure error"; weighted as R's
 *             anova(lm(y ~ 0 + x, weights = 1/x), lm(y ~ 0 + factor(x), weights = 1/x))
 */
export function lackOfFit(fit: ThroughOriginFit): LackOfFit | null {
  const levels = [...groupBy(fit.points, ({ x }) => x)];
  const dfLackOfFit = levels.length - 1;
  const dfPureError = fit.points.length - levels.length;
  if (dfLackOfFit < 1 || dfPureError < 1) return null;

  const pureErrorSumOfSquares = sum(
    levels.map(([x, points]) => squaresWithin(points.map(({ y }) => y)).squares / x),
  );
  const lackOfFitSumOfSquares = Math.max(0, fit.residualSumOfSquares - pureErrorSumOfSquares);
  // Identical weighings leave 1e-32, not 0, once b·t has been rounded; an F over that would be fiction.
  const weighted = fit.points.map(({ x, y }) => y / Math.sqrt(x));
  if (noScatter(pureErrorSumOfSquares, weighted)) return null;

  const statistic = lackOfFitSumOfSquares / dfLackOfFit / (pureErrorSumOfSquares / dfPureError);
  return {
    levels: levels.length,
    statistic,
    dfLackOfFit,
    dfPureError,
    lackOfFitSumOfSquares,
    pureErrorSumOfSquares,
    pValue: fUpperTail(statistic, dfLackOfFit, dfPureError),
  };
}
