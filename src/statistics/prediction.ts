import { max } from "simple-statistics";
import { at } from "../errors/at.ts";
import { NumericalError } from "../errors/errors.ts";
import { studentTQuantile } from "../numeric/distributions/student-t.ts";
import { requireFinite } from "../numeric/domain.ts";
import { innerProduct, quadraticForm } from "../numeric/linear-algebra.ts";
import type { Regression } from "./regression.ts";

/** What a regression expects at a new place. Errors and intervals are null without scatter to judge them by. */
export interface Prediction {
  readonly value: number;
  /** Of the regression's own height there. */
  readonly standardError: number | null;
  readonly meanLower: number | null;
  readonly meanUpper: number | null;
  /** For one new observation. */
  readonly newLower: number | null;
  readonly newUpper: number | null;
  /** Leverage the place would have: how far it lies from the data, in the data's own terms. */
  readonly leverage: number;
  /** Largest leverage among the observations; above it the place is outside what the data span. */
  readonly largestLeverage: number;
  readonly extrapolates: boolean;
}

/**
 * What is expected at a place not tried yet, and how sure is that? Fitted value with its t interval and that of a new
 * observation. A place whose leverage is above every observation's is outside the data, also where each variable by
 * itself is within its range.
 *
 * @param row values of the variables, in the order of the fit
 * @throws NumericalError when there are not as many as variables or one is not finite
 * Source Draper and Smith 1998, Applied Regression Analysis, 3rd edition, section 5.5; Montgomery, Peck and Vining
 *   2012, Introduction to Linear Regression Analysis, 5th edition, section 3.8 (hidden extrapolation)
 */
export function predict(fit: Regression, row: readonly number[]): Prediction {
  if (row.length !== fit.names.length) {
    throw new NumericalError(`predict: ${row.length} values for ${fit.names.length} variables.`);
  }
  row.forEach((value, j) => {
    requireFinite("predict", at(fit.names, j), value);
  });
  const place = [1, ...row.map((value, j) => value - at(fit.origin, j))];
  const coefficients = [fit.centre, ...fit.slopes].map(({ value }) => value);
  const value = innerProduct(place, coefficients);
  const leverage = quadraticForm(fit.unscaledCovariance, place);
  const largestLeverage = max(fit.points.map((point) => point.leverage));
  const sd = fit.residualStandardDeviation;
  const factor = sd === null ? null : sd * studentTQuantile((1 + fit.level) / 2, fit.df);
  const half = (variance: number) => (factor === null ? null : factor * Math.sqrt(variance));
  const [ofMean, ofNew] = [half(leverage), half(1 + leverage)];
  return {
    value,
    standardError: sd === null ? null : sd * Math.sqrt(leverage),
    meanLower: ofMean === null ? null : value - ofMean,
    meanUpper: ofMean === null ? null : value + ofMean,
    newLower: ofNew === null ? null : value - ofNew,
    newUpper: ofNew === null ? null : value + ofNew,
    leverage,
    largestLeverage,
    // A place among the observations has exactly their leverage; rounding must not turn it into an extrapolation.
    extrapolates: leverage > largestLeverage * (1 + 1e-9),
  };
}
