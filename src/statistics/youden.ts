import { fQuantile } from "../numeric/distributions/f.ts";
import { requireProbability } from "../numeric/domain.ts";
import { median, sampleStandardDeviation } from "./summary.ts";

export interface YoudenPoint {
  readonly x: number;
  readonly y: number;
}

/** Pairs about their medians, with the circle that would hold a share of them if only chance moved either. */
export interface YoudenCircle {
  readonly center: YoudenPoint;
  readonly radius: number;
}

/**
 * Youden's circle of two measurements of the same things: about both medians, radius s·√(2F(level; 2, n − 1)·(1 + 1/n)), so
 * that one more pair lies within at the level though s is known from n pairs only; s = s_d/√2 from the differences x − y,
 * which hold no difference between the things. Both measurements are taken to scatter alike. A thing far out along the diagonal is different itself; one
 * far off it was measured differently the two times.
 *
 * @returns null with fewer than three pairs, or where all differences agree exactly
 * Source   Youden 1959, Industrial Quality Control 15(11), 24; standard deviation and F in place of mean difference and χ²
 */
export function youdenCircle(pairs: readonly YoudenPoint[], level: number): YoudenCircle | null {
  requireProbability("youdenCircle", "level", level);
  const n = pairs.length;
  if (n < 3) return null;
  const spread = sampleStandardDeviation(pairs.map(({ x, y }) => x - y)) / Math.SQRT2;
  if (!(spread > 0)) return null;
  return {
    center: { x: median(pairs.map(({ x }) => x)), y: median(pairs.map(({ y }) => y)) },
    radius: Math.sqrt(2 * fQuantile(level, 2, n - 1) * (1 + 1 / n)) * spread,
  };
}
