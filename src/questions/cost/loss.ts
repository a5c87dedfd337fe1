import type { MoneyResponse } from "../../data/setup.ts";
import {
  type ErrorLaw,
  expectedExcess,
  expectedShortfall,
  expectedSquare,
  lawAtScaleLimit,
} from "../../statistics/expected-loss.ts";
import { generalizedLimit, possibleLaws } from "../../statistics/generalized-interval.ts";
import type { NormalSample } from "../../statistics/normal-sample.ts";
import { productPerPercent } from "./prices.ts";
import type { LossOfError, Prices } from "./result.ts";

export const lossUnknown: LossOfError = {
  perHectare: null,
  lowerPerHectare: null,
  upperPerHectare: null,
  productWastedPerHectare: null,
};

const limitConfidence = 0.9;
/**
 * Of the lower limit when skipping. An error of the mean only adds to the loss where the true loss is near its least, so
 * possible losses lie high there and their 10 % quantile is above the truth in up to 28 % of logs, the 5 % quantile in
 * 19 %; with it the range holds the truth nearly as often as it says (reports/skipping-study.md).
 */
const lowerConfidence = 0.95;
const fewestDf = 2;
/**
 * For the mean of a square, ν/(ν − 2) times that of a known spread: at 2 it is infinite, and a lent spread may know hardly
 * more than 2.
 */
export const fewestDfForSquare = 3;

/**
 * Expected loss under the response, and the value of product wasted; null where df or prices do not allow it.
 *
 * @param fills  what mean and spread of the error rest on, both then uncertain; null: the location is known, as that of
 *               an error after catching is, and only the spread is uncertain
 */
export function lossOf(
  law: ErrorLaw,
  prices: Prices,
  fills: NormalSample | null = null,
): LossOfError {
  if (law.df < fewestDf) return lossUnknown;
  const { response } = prices;
  const heavy = expectedExcess(law);
  const product = productPerPercent(prices);
  const money = (one: ErrorLaw) => (response === null ? null : expectedLoss(one, response));
  return {
    perHectare: money(law),
    ...(fills === null ? rangeByScale(law, money) : rangeByFills(fills, money)),
    productWastedPerHectare: heavy === null || product === null ? null : 100 * heavy * product,
  };
}

/** A centred loss grows with the spread, so the χ² limits of the spread are those of the loss. */
function rangeByScale(law: ErrorLaw, money: (one: ErrorLaw) => number | null) {
  return {
    lowerPerHectare: money(lawAtScaleLimit(law, 1 - limitConfidence)),
    upperPerHectare: money(lawAtScaleLimit(law, limitConfidence)),
  };
}

function rangeByFills(fills: NormalSample, money: (one: ErrorLaw) => number | null) {
  const possible = possibleLaws(fills).flatMap((one) => money(one) ?? []);
  const limit = (confidence: number) =>
    possible.length === 0 ? null : generalizedLimit(possible, confidence);
  return {
    lowerPerHectare: limit(1 - lowerConfidence),
    upperPerHectare: limit(limitConfidence),
  };
}

/**
 * Linear: so much for each percent on either side. Quadratic: curvature times the square of the percent, equal on both
 * sides about the economically best rate; product saved and product wasted are inside.
 */
function expectedLoss(law: ErrorLaw, response: MoneyResponse): number | null {
  if (response.kind === "quadratic") {
    const square = law.df < fewestDfForSquare ? null : expectedSquare(law);
    return square === null
      ? null
      : response.curvaturePerHectarePerPercentSquared * 100 ** 2 * square;
  }
  const heavy = expectedExcess(law);
  const light = expectedShortfall(law);
  if (heavy === null || light === null) return null;
  return (
    100 * heavy * response.heavyCostPerHectarePerPercent +
    100 * light * response.lightCostPerHectarePerPercent
  );
}
