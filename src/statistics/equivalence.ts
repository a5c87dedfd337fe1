import { NumericalError } from "../errors/errors.ts";
import { studentTLowerTail, studentTUpperTail } from "../numeric/distributions/student-t.ts";
import { requireFinite } from "../numeric/domain.ts";

/** Limits between which two things count as equivalent; set before the data are seen. */
export interface Limits {
  readonly lower: number;
  readonly upper: number;
}

export interface EquivalenceTest {
  readonly estimate: number;
  readonly limits: Limits;
  /** t statistic of the estimate against each limit. */
  readonly lowerStatistic: number;
  readonly upperStatistic: number;
  /** Chance of such data when the true value is at or below the lower limit. */
  readonly lowerPValue: number;
  /** Chance of such data when the true value is at or above the upper limit. */
  readonly upperPValue: number;
  /** The larger of the two: equivalence is shown when it is below 1 − level. */
  readonly pValue: number;
  readonly equivalent: boolean;
}

/** t statistic, with its degrees of freedom, of the hypothesis that the true value is the given limit. */
export type TestOfLimit = (limit: number) => { readonly statistic: number; readonly df: number };

/**
 * Does an estimate lie within given limits beyond doubt? Two one-sided t tests (TOST), one against each limit, both
 * at 1 − level. With one standard error for both it is the same as asking whether the interval of level 2·level − 1
 * (90 % for 0.95) lies within the limits.
 *
 * @param limits lower below upper, given before the data are seen; there is no default
 * @param test t statistic of each limit
 * @param level 0.5 < level < 1, default 0.95
 * @throws NumericalError when an argument is out of range
 * Source Schuirmann 1987, Journal of Pharmacokinetics and Biopharmaceutics 15, 657–680
 */
export function twoOneSidedTests(
  estimate: number,
  limits: Limits,
  test: TestOfLimit,
  level = 0.95,
): EquivalenceTest {
  check(estimate, limits, level);
  const [lower, upper] = [test(limits.lower), test(limits.upper)];
  const lowerPValue = studentTUpperTail(lower.statistic, lower.df);
  const upperPValue = studentTLowerTail(upper.statistic, upper.df);
  const pValue = Math.max(lowerPValue, upperPValue);
  return {
    estimate,
    limits,
    lowerStatistic: lower.statistic,
    upperStatistic: upper.statistic,
    lowerPValue,
    upperPValue,
    pValue,
    equivalent: pValue < 1 - level,
  };
}

function check(estimate: number, { lower, upper }: Limits, level: number): void {
  requireFinite("twoOneSidedTests", "estimate", estimate);
  requireFinite("twoOneSidedTests", "lower limit", lower);
  requireFinite("twoOneSidedTests", "upper limit", upper);
  if (!(lower < upper)) {
    throw new NumericalError(
      `twoOneSidedTests: the lower limit ${lower} must be below the upper ${upper}.`,
    );
  }
  if (!(level > 0.5 && level < 1)) {
    throw new NumericalError(
      `twoOneSidedTests: level is ${String(level)}; it must be above 0.5 and below 1.`,
    );
  }
}
