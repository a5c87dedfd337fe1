import type { Interval } from "../../results/estimate.ts";
import type { Format } from "../format.ts";

/** "−1.0 % to +2.0 %"; null: no interval, or an end that is unbounded. */
export function limits(
  interval: Pick<Interval, "lower" | "upper"> | null,
  shown: (end: number) => string,
  format: Format,
): string | null {
  if (interval === null || interval.lower === null || interval.upper === null) return null;
  return format.range(shown(interval.lower), shown(interval.upper));
}
