import type { Estimate, Interval } from "../results/estimate.ts";
import { tEstimate } from "./t-estimate.ts";

/** Half of the cases, most of them, nearly all: more levels than these cannot be told apart in a picture. */
export const fanLevels = [0.5, 0.8, 0.95] as const;

/**
 * The interval of an estimate at every level of a fan, value ± t·standardError, narrowest first.
 *
 * @returns empty where the estimate has no interval
 */
export function fanOf({ value, unit, standardError, df, interval }: Estimate): readonly Interval[] {
  if (standardError === null || df === null || interval === null) return [];
  return fanLevels.flatMap(
    (level) => tEstimate(value, unit, standardError, df, level, interval.about).interval ?? [],
  );
}
