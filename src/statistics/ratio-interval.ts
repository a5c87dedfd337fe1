import { NumericalError } from "../errors/errors.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { requireFinite, requireProbability } from "../numeric/domain.ts";
import { combinedDf, type Sample, varianceOfMean } from "./sample.ts";

/**
 * The ratios that data cannot rule out. When the denominator is well away from zero they are an interval; when it is
 * not, large ratios of either sign stay possible: all but an interval, or every ratio there is.
 */
export type RatioSet =
  | { readonly shape: "interval"; readonly lower: number; readonly upper: number }
  /** Every ratio up to `below` and every ratio from `above`. */
  | { readonly shape: "two half-lines"; readonly below: number; readonly above: number }
  | { readonly shape: "whole line" };

/** Two means, or other normal estimates, with their squared standard errors and covariance. */
export interface RatioParts {
  readonly numerator: number;
  readonly denominator: number;
  readonly numeratorVariance: number;
  readonly denominatorVariance: number;
  /** Default 0: independent. */
  readonly covariance?: number;
}

/**
 * Which ratios of two means agree with the data? Fieller's set: all θ with
 * (a − θb)² <= c²·(v_a − 2θ·v_ab + θ²·v_b), c the critical value of the test of one θ.
 *
 * @param parts variances at least 0
 * @param criticalValue of the two-sided test, above 0: a t quantile, or a simultaneous one
 * @throws NumericalError when an argument is out of range, or the denominator is 0 and known exactly
 * Source Fieller 1954, Journal of the Royal Statistical Society B 16, 175–185
 */
export function fiellerSet(parts: RatioParts, criticalValue: number): RatioSet {
  const { numerator, denominator, numeratorVariance, denominatorVariance } = parts;
  const covariance = parts.covariance ?? 0;
  check(parts, covariance, criticalValue);
  const square = criticalValue ** 2;
  // The condition is a·θ² − 2·b·θ + c <= 0.
  const a = denominator ** 2 - square * denominatorVariance;
  const b = numerator * denominator - square * covariance;
  const c = numerator ** 2 - square * numeratorVariance;
  const discriminant = Math.max(0, b * b - a * c);
  // At a = 0 the set is one half-line; the whole line contains it and needs no fourth shape.
  if (a === 0 || (a < 0 && discriminant === 0)) return { shape: "whole line" };
  const [lower, upper] = quadraticRoots(a, b, c, Math.sqrt(discriminant));
  return a > 0
    ? { shape: "interval", lower, upper }
    : { shape: "two half-lines", below: lower, above: upper };
}

/** A ratio of two means with the set of ratios that the data cannot rule out. */
export interface RatioOfMeans {
  readonly ratio: number;
  readonly df: number;
  readonly set: RatioSet;
}

/**
 * Ratio of the means of two independent groups with spreads of their own: Fieller's set, the critical value taken on
 * Satterthwaite's degrees of freedom of ȳ₁ − θ·ȳ₂ at the estimated ratio.
 *
 * @param criticalValue half-width in standard errors for given df; default the two-sided t quantile of `level`
 * @param level 0 < level < 1, default 0.95; passed over when a critical value is given
 * @throws NumericalError when level is out of range, the second mean is 0, or neither group scatters
 * Source Fieller 1954, Journal of the Royal Statistical Society B 16, 175–185
 * @example ratioOfMeans(sampleOf([6.4, 6.5, 6.6]), sampleOf([3.1, 3.2, 3.3])).ratio // -> 2.03125
 */
export function ratioOfMeans(
  first: Sample,
  second: Sample,
  level = 0.95,
  criticalValue: (df: number) => number = (df) => studentTQuantile((1 + level) / 2, df),
): RatioOfMeans {
  requireProbability("ratioOfMeans", "level", level);
  if (second.mean === 0) throw new NumericalError("ratioOfMeans: the second mean is 0.");
  const ratio = first.mean / second.mean;
  const df = combinedDf([
    { variance: varianceOfMean(first), df: first.n - 1 },
    { variance: ratio ** 2 * varianceOfMean(second), df: second.n - 1 },
  ]);
  const parts = {
    numerator: first.mean,
    denominator: second.mean,
    numeratorVariance: varianceOfMean(first),
    denominatorVariance: varianceOfMean(second),
  };
  return { ratio, df, set: fiellerSet(parts, criticalValue(df)) };
}

/** Roots of aθ² − 2bθ + c in ascending order; the root of larger size first, the other from it without cancelling. */
function quadraticRoots(
  a: number,
  b: number,
  c: number,
  root: number,
): readonly [lower: number, upper: number] {
  const large = b >= 0 ? b + root : b - root;
  const first = large / a;
  const second = large === 0 ? 0 : c / large;
  return first < second ? [first, second] : [second, first];
}

function check(parts: RatioParts, covariance: number, criticalValue: number): void {
  const values = { ...parts, covariance, criticalValue };
  for (const [name, value] of Object.entries(values)) requireFinite("fiellerSet", name, value);
  if (!(parts.numeratorVariance >= 0 && parts.denominatorVariance >= 0 && criticalValue > 0)) {
    throw new NumericalError(
      "fiellerSet: variances must be at least 0 and the critical value above 0.",
    );
  }
  if (parts.denominator === 0 && parts.denominatorVariance === 0) {
    throw new NumericalError("fiellerSet: the denominator is 0 and known exactly.");
  }
}
