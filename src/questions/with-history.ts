import { acrossFills } from "../model/across-fills.ts";
import { nothingPooled } from "../model/catch-scatter.ts";
import type { Meter } from "../model/meters.ts";
import { newestFill } from "../model/meters.ts";
import type { Estimate } from "../results/estimate.ts";
import { combineScaledT } from "../statistics/combined-t.ts";
import type { Delivery } from "./delivery/result.ts";

/** Why today's catches and the earlier fills are not put together. */
export type WithHistoryRefusal =
  | "too few earlier fills"
  | "the meter has moved"
  | "no interval today"
  | "today contradicts the earlier fills";

/** Today's delivery with the earlier fills taken into account: a named option, never the default. */
export interface WithHistory {
  readonly kind: "with-history";
  readonly bin: string;
  readonly product: string;
  readonly fill: number;
  readonly earlierFills: number;
  /** null when refused. */
  readonly estimate: Estimate<"kg/turn"> | null;
  readonly refused: WithHistoryRefusal | null;
}

const fewestEarlierFills = 6;

/**
 * What does the fill in the bin deliver, when the earlier fills are believed to speak about it too? Product of the
 * prediction for a new fill (t on fills − 1) and of today's catches (t on the scatter's df), equal tails.
 *
 * By default evencatch does not do this: a catch test exists to find the fill that differs, and when it differs by 8 %
 * such an interval holds the truth 77 % of the time.
 *
 * @param moved  whether a drift finding is open for this meter
 * @returns      estimate with interval about this fill's delivery; refused below six earlier fills, with an open drift
 *               finding, without an interval for today, or when the two leave no value in common
 * Source        Box & Tiao 1973, section 9.2
 */
export function withHistory(meter: Meter, today: Delivery, moved: boolean): WithHistory {
  const earlier = meter.fills.filter(({ fill }) => fill < newestFill(meter).fill);
  const common = {
    kind: "with-history",
    bin: meter.bin,
    product: meter.product,
    fill: today.fill,
    earlierFills: earlier.length,
  } as const;
  const refuse = (refused: WithHistoryRefusal): WithHistory => ({
    ...common,
    estimate: null,
    refused,
  });
  if (earlier.length < fewestEarlierFills) return refuse("too few earlier fills");
  if (moved) return refuse("the meter has moved");

  const { level } = today.options;
  // The prediction rests on the fills' own differences; the catch scatter plays no part in it.
  const { nextFill } = acrossFills(earlier, nothingPooled, level, null);
  const [past, now] = [scaledT(nextFill), scaledT(today.estimate)];
  if (past === null || now === null) return refuse("no interval today");
  const combined = combineScaledT(past, now, level);
  if (combined === null) return refuse("today contradicts the earlier fills");
  return {
    ...common,
    refused: null,
    estimate: {
      value: combined.mean,
      unit: "kg/turn",
      standardError: null,
      df: null,
      interval: {
        lower: combined.lower,
        upper: combined.upper,
        level,
        about: "this fill's delivery",
      },
    },
  };
}

function scaledT({ value, standardError, df }: Estimate) {
  return standardError === null || df === null ? null : { center: value, scale: standardError, df };
}
