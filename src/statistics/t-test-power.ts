import {
  noncentralTLowerTail,
  noncentralTUpperTail,
} from "../numeric/distributions/noncentral-t.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { requireFinite, requirePositive, requireProbability } from "../numeric/domain.ts";
import { findRoot } from "../numeric/roots.ts";

/**
 * Chance that a two-sided t test finds an effect, on either side: noncentral t.
 *
 * @param effect        true effect over its standard error, of either sign
 * @param df            degrees of freedom of that standard error, above 0
 * @param criticalValue |t| from which the test rejects, above 0; simultaneous or not
 * @throws NumericalError when an argument is out of range
 * Source Cohen 1988, Statistical Power Analysis for the Behavioral Sciences, 2nd edition, chapter 2
 */
export function tTestPower(effect: number, df: number, criticalValue: number): number {
  requireFinite("tTestPower", "effect", effect);
  requirePositive("tTestPower", "criticalValue", criticalValue);
  const noncentrality = Math.abs(effect);
  return Math.min(
    1,
    noncentralTUpperTail(criticalValue, df, noncentrality) +
      noncentralTLowerTail(-criticalValue, df, noncentrality),
  );
}

/**
 * The effect, in standard errors, that the two-sided t test at 1 − level finds with the chance asked for.
 *
 * @param df    degrees of freedom of the standard error, above 0
 * @param power chance of finding it, above the chance of a false alarm and below 1
 * @throws NumericalError when an argument is out of range
 */
export function detectableEffect(df: number, power: number, level: number): number {
  requireProbability("detectableEffect", "power", power);
  const criticalValue = studentTQuantile((1 + level) / 2, df);
  const missing = (effect: number) => tTestPower(effect, df, criticalValue) - power;
  let upper = 4;
  while (missing(upper) < 0) upper *= 2;
  return findRoot(missing, 0, upper);
}
