import type { MoneyResponse } from "../../data/setup.ts";
import {
  type ErrorLaw,
  expectedExcess,
  expectedShortfall,
  expectedSquare,
  lawAtScaleLimit,
} from "../../statistics/expected-loss.ts";
import { productPerPercent } from "./prices.ts";
import type { LossOfError, Prices } from "./result.ts";

export const lossUnknown: LossOfError = {
  perHectare: null,
  lowerPerHectare: null,
  upperPerHectare: null,
  productWastedPerHectare: null,
};

const limitConfidence = 0.9;
const fewestDf = 2;

/** Expected loss under the response, and the value of product wasted; null where df or prices do not allow it. */
export function lossOf(law: ErrorLaw, prices: Prices): LossOfError {
  if (law.df < fewestDf) return lossUnknown;
  const { response } = prices;
  const heavy = expectedExcess(law);
  const product = productPerPercent(prices);
  const money = (one: ErrorLaw) => (response === null ? null : expectedLoss(one, response));
  return {
    perHectare: money(law),
    lowerPerHectare: money(lawAtScaleLimit(law, 1 - limitConfidence)),
    upperPerHectare: money(lawAtScaleLimit(law, limitConfidence)),
    productWastedPerHectare: heavy === null || product === null ? null : 100 * heavy * product,
  };
}

/**
 * Linear: so much for each percent on either side. Quadratic: curvature times the square of the percent, equal on both
 * sides about the economically best rate; product saved and product wasted are inside.
 */
function expectedLoss(law: ErrorLaw, response: MoneyResponse): number | null {
  if (response.kind === "quadratic") {
    const square = expectedSquare(law);
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
