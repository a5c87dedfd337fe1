import { at } from "../errors/at.ts";
import { chiMean } from "../numeric/distributions/chi-mixture.ts";
import { normalLowerTail } from "../numeric/distributions/normal.ts";
import { requireFinite, requirePositive, requireWhole } from "../numeric/domain.ts";
import { realPower } from "../numeric/powers.ts";
import { gaussLegendreRule } from "../numeric/quadrature.ts";
import type { Limits } from "./equivalence.ts";

/** A contrast as it will be judged: its standard error if the spread is as assumed, and the df it will have. */
export interface PlannedContrast {
  readonly standardError: number;
  readonly df: number;
}

/** Values of S at which the room left between the limits changes its character, in shares of its greatest. */
const roomBreaks = [0.05, 0.15, 0.3, 0.5, 0.7, 0.85, 0.95, 1];

/**
 * Chance that two one-sided tests find equivalence: the mean over the estimated standard error S of the chance that
 * the estimate falls where both tests reject, between lower + t·S and upper − t·S.
 *
 * @param trueDifference any number; 0 when the two are equal
 * @param limits lower below upper
 * @param criticalValue of each one-sided test, above 0: the t quantile of the level
 * @throws NumericalError when an argument is out of range
 * Source Phillips 1990, Journal of Pharmacokinetics and Biopharmaceutics 18, 137–144
 */
export function equivalencePower(
  trueDifference: number,
  { standardError, df }: PlannedContrast,
  limits: Limits,
  criticalValue: number,
): number {
  requireFinite("equivalencePower", "trueDifference", trueDifference);
  requirePositive("equivalencePower", "standardError", standardError);
  requirePositive("equivalencePower", "criticalValue", criticalValue);
  const [lower, upper] = [limits.lower, limits.upper].map(
    (limit) => (limit - trueDifference) / standardError,
  ) as [number, number];
  const chance = (deviation: number) =>
    Math.max(
      0,
      normalLowerTail(upper - criticalValue * deviation) -
        normalLowerTail(lower + criticalValue * deviation),
    );
  const room = (upper - lower) / (2 * criticalValue);
  return Math.min(
    1,
    chiMean(
      chance,
      df,
      roomBreaks.map((share) => share * room),
    ),
  );
}

/** One of the degrees of freedom that a test may turn out to have, with its share of the chance. */
export interface PossibleDf {
  readonly df: number;
  /** The weights sum to 1. */
  readonly weight: number;
}

/**
 * Degrees of freedom that Welch's formula will give two groups of `n` values with one true variance. The share of one
 * group in the sum of the two sample variances is a beta variable independent of that sum; written as sin²(φ/2) its
 * density is proportional to sin(φ)^(n − 2), and df = (n − 1)/(1 − ½ sin² φ). So the power of Welch's test is the mean
 * of the power at 2(n − 1) degrees of freedom with the critical values of these.
 *
 * @param n values in each group, whole number of at least 2
 * @param points how many, default 12, which leaves nothing to be seen; 5 leave less than 1e-3 of a smooth function
 * @throws NumericalError when n or points is out of range
 */
export function welchDfs(n: number, points = 12): readonly PossibleDf[] {
  requireWhole("welchDfs", "n", n, 2);
  const { nodes, weights } = gaussLegendreRule(points);
  const places = Array.from(nodes, (node, i) => {
    const sine = Math.sin((Math.PI / 4) * (1 + node));
    return {
      df: (n - 1) / (1 - 0.5 * sine ** 2),
      weight: at(weights, i) * realPower(sine, n - 2),
    };
  });
  const total = places.reduce((sum, { weight }) => sum + weight, 0);
  return places.map(({ df, weight }) => ({ df, weight: weight / total }));
}
