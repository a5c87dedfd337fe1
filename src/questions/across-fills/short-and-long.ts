import { max, min, sum } from "simple-statistics";
import type { Catch } from "../../data/types.ts";
import type { Fill } from "../../model/meters.ts";
import type { FillName } from "../../results/fill-name.ts";
import { type YoudenCircle, youdenCircle } from "../../statistics/youden.ts";

/** Delivery of every fill by its short and by its long catches, kg/turn. */
export interface ShortAndLong {
  readonly fills: readonly {
    readonly fill: FillName;
    readonly short: number;
    readonly long: number;
  }[];
  /** Youden's circle at the level; x are the short catches. */
  readonly circle: YoudenCircle;
  /** The circle as points to draw, and the ends of the line on which short and long agree. */
  readonly outline: readonly { readonly short: number; readonly long: number }[];
  readonly alike: readonly { readonly short: number; readonly long: number }[];
}

/** The longest catch of a fill is so many times its shortest. */
const apart = 1.5;
const pointsOfCircle = 48;

/**
 * Short catches against long ones, fill by fill: split at the geometric mean of the fill's shortest and longest. What is the
 * same in every catch, such as a tare left in, moves short catches more and takes all fills off the diagonal.
 *
 * @returns null with fewer than three fills with catches of both kinds
 */
export function shortAndLongOf(fills: readonly Fill[], level: number): ShortAndLong | null {
  const both = fills.flatMap(({ fill, catches }) => {
    const turns = catches.map((row) => row.turns);
    const [least, most] = [min(turns), max(turns)];
    if (most < apart * least) return [];
    const middle = Math.sqrt(least * most);
    const short = deliveryOf(catches.filter((row) => row.turns <= middle));
    return [{ fill, short, long: deliveryOf(catches.filter((row) => row.turns > middle)) }];
  });
  const circle = youdenCircle(
    both.map(({ short, long }) => ({ x: short, y: long })),
    level,
  );
  if (circle === null) return null;
  const { center, radius } = circle;
  const outline = Array.from({ length: pointsOfCircle + 1 }, (_, i) => {
    const angle = (2 * Math.PI * i) / pointsOfCircle;
    return {
      short: center.x + radius * Math.cos(angle),
      long: center.y + radius * Math.sin(angle),
    };
  });
  const all = [...both, ...outline].flatMap(({ short, long }) => [short, long]);
  const alike = [min(all), max(all)].map((end) => ({ short: end, long: end }));
  return { fills: both, circle, outline, alike };
}

function deliveryOf(catches: readonly Catch[]): number {
  return sum(catches.map(({ netKg }) => netKg)) / sum(catches.map(({ turns }) => turns));
}
