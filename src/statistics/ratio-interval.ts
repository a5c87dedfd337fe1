import { NumericalError } from "../errors/errors.ts";
import { requireFinite } from "../numeric/domain.ts";

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
