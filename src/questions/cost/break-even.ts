import { catchingCost } from "./prices.ts";
import type { BreakEven, CostPoint, Prices } from "./result.ts";

/**
 * Cost of the catches ÷ (loss when skipping − loss with them), for every number of catches. The lower end of the area is
 * from the upper limit of the loss when skipping, the upper end from its lower limit, or open where that limit is no
 * more than the loss with catches. The loss with catches stays at its expected value.
 */
export function breakEvens(points: readonly CostPoint[], prices: Prices): readonly BreakEven[] {
  const skip = points.find(({ catches }) => catches === 0)?.loss;
  return points
    .filter(({ catches }) => catches > 0)
    .map(({ catches, loss }) => {
      const costs = catchingCost(catches, prices);
      const area = (skipped: number | null | undefined) => areaOf(costs, skipped, loss.perHectare);
      const unknown = costs === null || skip?.perHectare == null || loss.perHectare === null;
      const hectares = area(skip?.perHectare);
      return {
        catches,
        hectares,
        lowerHectares: area(skip?.upperPerHectare),
        upperHectares: area(skip?.lowerPerHectare),
        verdict: unknown ? "unknown" : hectares === null ? "does not pay" : "pays above",
      };
    });
}

/** The number of catches that pays on the smallest area. */
export function firstToPay(all: readonly BreakEven[]): BreakEven | null {
  return all.reduce<BreakEven | null>(
    (first, one) =>
      one.hectares !== null && (first?.hectares == null || one.hectares < first.hectares)
        ? one
        : first,
    null,
  );
}

function areaOf(
  costs: number | null,
  skipped: number | null | undefined,
  caught: number | null,
): number | null {
  if (costs === null || skipped == null || caught === null || skipped <= caught) return null;
  return costs / (skipped - caught);
}
