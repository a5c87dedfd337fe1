import { type Meter, newestFill, sharesBin } from "../model/meters.ts";
import { bySeasonAndNumber, instantOf } from "../model/time-order.ts";

/**
 * Whether a meter's product is the one in its bin now: no other product of the bin was filled later, by date where both
 * fills have one, else by number where the products share one numbering. Where it cannot be told, it counts as in the bin.
 */
export function isInTheBin(meter: Meter, meters: readonly Meter[]): boolean {
  return !meters.some(
    (other) => other !== meter && sharesBin(other, meter) && isLater(other, meter),
  );
}

function isLater(other: Meter, meter: Meter): boolean {
  const [theirs, ours] = [newestFill(other), newestFill(meter)];
  const [at, now] = [instantOf(theirs.takenAt), instantOf(ours.takenAt)];
  if (at !== null && now !== null && at !== now) return at > now;
  const numbers = new Set(meter.fills.map(({ fill }) => fill));
  const shared = other.fills.every(({ fill }) => !numbers.has(fill));
  return shared && bySeasonAndNumber(ours, theirs) < 0;
}
