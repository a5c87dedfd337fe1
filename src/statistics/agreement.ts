import { min, sum } from "simple-statistics";
import { NumericalError } from "../errors/errors.ts";
import { requireFinite, requirePositive } from "../numeric/domain.ts";
import { weightedMean } from "./summary.ts";

/** A value with what surrounds it at some level of confidence. */
export interface ExpandedValue {
  readonly value: number;
  /** Expanded uncertainty: half-width at the level both values share, at least 0. */
  readonly expanded: number;
}

/**
 * Do two independent values of the same thing agree? Normalised error E_n = (x − y)/√(U_x² + U_y²); they agree where
 * |E_n| <= 1.
 *
 * @throws NumericalError when a value is not finite, an uncertainty is negative, or both uncertainties are 0
 * Source  ISO/IEC 17043 and ISO 13528, E_n number
 */
export function normalisedError(x: ExpandedValue, y: ExpandedValue): number {
  for (const { value, expanded } of [x, y]) {
    requireFinite("normalisedError", "value", value);
    if (!(expanded >= 0 && Number.isFinite(expanded)))
      throw new NumericalError(
        `normalisedError: an expanded uncertainty is ${expanded}; it must be 0 or more.`,
      );
  }
  const joint = Math.hypot(x.expanded, y.expanded);
  if (joint === 0) throw new NumericalError("normalisedError: both uncertainties are 0.");
  return (x.value - y.value) / joint;
}

export interface StandardValue {
  readonly value: number;
  /** Above 0. */
  readonly standardUncertainty: number;
}

/**
 * Best value from independent ones of unequal uncertainty: Σ(x/u²)/Σ(1/u²), with u = 1/√Σ(1/u²).
 *
 * @param values at least 1
 * @throws NumericalError when there is none, or one is out of range
 * Source  JCGM 100:2008 (GUM) and ISO 5725-4, weighted mean of independent results
 */
export function inverseVarianceMean(values: readonly StandardValue[]): StandardValue {
  if (values.length === 0) throw new NumericalError("inverseVarianceMean: there are no values.");
  for (const { value, standardUncertainty } of values) {
    requireFinite("inverseVarianceMean", "value", value);
    requirePositive("inverseVarianceMean", "standardUncertainty", standardUncertainty);
  }
  // Weights relative to the sharpest value: squares of tiny uncertainties would overflow.
  const smallest = min(values.map(({ standardUncertainty }) => standardUncertainty));
  const weights = values.map(({ standardUncertainty }) => (smallest / standardUncertainty) ** 2);
  return {
    value: weightedMean(
      values.map(({ value }) => value),
      weights,
    ),
    standardUncertainty: smallest / Math.sqrt(sum(weights)),
  };
}
