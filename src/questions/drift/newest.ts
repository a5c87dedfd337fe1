import type { Fill } from "../../model/meters.ts";
import { tEstimate } from "../../model/t-estimate.ts";
import type { Estimate } from "../../results/estimate.ts";
import { type AgainstEarlier, againstEarlier } from "./as-they-came.ts";

/** The fill in the bin now, against the band of the earlier ones: one look. */
export interface NewestFill extends AgainstEarlier {
  readonly fill: number;
  readonly takenAt: string | null;
  readonly earlierFills: number;
  readonly delivery: number;
  /** Distance from the mean of the earlier fills, relative to it; interval about "difference". */
  readonly difference: Estimate<"fraction">;
}

/** @returns null below three fills, and where the earlier ones agree exactly */
export function newestFillOf(fills: readonly Fill[], level: number): NewestFill | null {
  const deliveries = fills.map(({ delivery }) => delivery);
  const [newest, judged] = [fills.at(-1), againstEarlier(deliveries, level).at(-1)];
  if (newest === undefined || judged === undefined || judged === null) return null;
  const { mean, statistic, df } = judged;
  const relative = (newest.delivery - mean) / mean;
  return {
    ...judged,
    fill: newest.fill,
    takenAt: newest.takenAt,
    earlierFills: fills.length - 1,
    delivery: newest.delivery,
    difference: tEstimate(
      relative,
      "fraction",
      statistic === 0 ? null : relative / statistic,
      df,
      level,
      "difference",
    ),
  };
}
