import { max, min } from "simple-statistics";
import type { Span } from "../../data/setup.ts";
import type { Interval } from "../../results/estimate.ts";
import type { SpeedLinePoint, SpeedSlope, SpeedsWithinTolerance } from "./result.ts";

const placesOnLine = 25;

/** The line and its band from the lowest to the highest speed caught. */
export function speedLine(
  { estimate }: SpeedSlope,
  reference: number,
  { from, to }: Span,
): readonly SpeedLinePoint[] {
  const { lower, upper } = endsOf(estimate.interval, estimate.value);
  return Array.from({ length: placesOnLine }, (_, i) => {
    const turnsPerMin = from + ((to - from) * i) / (placesOnLine - 1);
    const away = turnsPerMin - reference;
    const ends = [1 + lower * away, 1 + upper * away];
    return {
      turnsPerMin,
      relative: 1 + estimate.value * away,
      lower: min(ends),
      upper: max(ends),
    };
  });
}

/**
 * Speeds at which |slope × (speed − reference)| stays within the tolerance, cut at the speeds caught: beyond them nobody
 * has looked.
 */
export function speedsWithin(
  { estimate }: SpeedSlope,
  reference: number,
  caught: Span,
  tolerance: number,
): SpeedsWithinTolerance {
  const { lower, upper } = endsOf(estimate.interval, estimate.value);
  const around = (steepest: number): Span => {
    const reach = steepest > 0 ? tolerance / steepest : Number.POSITIVE_INFINITY;
    return {
      from: Math.max(caught.from, reference - reach),
      to: Math.min(caught.to, reference + reach),
    };
  };
  return {
    estimated: around(Math.abs(estimate.value)),
    sure: around(Math.max(Math.abs(lower), Math.abs(upper))),
  };
}

function endsOf(interval: Interval | null, value: number): { lower: number; upper: number } {
  return { lower: interval?.lower ?? value, upper: interval?.upper ?? value };
}
