import { basisOfExpectation, type NextFillError } from "../../model/rate-error.ts";
import { lossWhenSkipping } from "./loss.ts";
import type { CostPoint, Prices, SkippedLoss } from "./result.ts";

/**
 * What the loss at no catch counts as spread of fills, and the cautious figure beside it where catch scatter is most of the spread.
 *
 * @returns null when that loss is not known
 */
export function skippedLoss(
  error: NextFillError | null,
  points: readonly CostPoint[],
  prices: Prices,
): SkippedLoss | null {
  const stated = points[0]?.loss.perHectare ?? null;
  if (error === null || stated === null) return null;
  const counted = error.catchScatter?.isMost
    ? lossWhenSkipping({ ...error, catchScatter: null }, prices).perHectare
    : null;
  return {
    basis: basisOfExpectation(error),
    withScatter:
      counted === null || counted <= stated
        ? null
        : { lossPerHectare: counted, cheapestCatches: cheapestAt(counted, points) },
    toleranceTold: error.leastChance === null,
  };
}

/** Skipping costs no minutes, so its loss is its total. */
function cheapestAt(skipping: number, points: readonly CostPoint[]): number | null {
  const totals = points.flatMap(({ catches, totalPerHectare }) =>
    totalPerHectare === null
      ? []
      : [{ catches, total: catches === 0 ? skipping : totalPerHectare }],
  );
  const [first, ...others] = totals;
  if (first === undefined) return null;
  return others.reduce((least, one) => (one.total < least.total ? one : least), first).catches;
}
