import { at } from "../errors/at.ts";
import { median } from "../statistics/summary.ts";
import type { Fill, Meter } from "./meters.ts";
import { instantOf } from "./time-order.ts";

/** A place in the order of fills where some are not in the log, or where much time passed. */
export interface FillGap {
  readonly afterFill: number;
  readonly beforeFill: number;
  /** Fill numbers in between that the log does not have. */
  readonly missingFills: number;
  /** Days from one fill to the next; null when one of them has no date. */
  readonly days: number | null;
}

/** What lay between a meter's fills. */
export interface FillOrder {
  /** Products that were in the bin between this meter's first fill and its newest. */
  readonly otherProducts: readonly string[];
  /** Fills before which another product was in the bin. */
  readonly productChangedBefore: readonly number[];
  readonly gaps: readonly FillGap[];
  /** False when fill numbers and dates disagree about the order; the dates are followed. */
  readonly numbersFollowDates: boolean;
  /** Whether it can be told what was in the bin between two fills. */
  readonly productsInOrder: boolean;
}

const daysOfLongPause = 7;
const timesUsualPause = 3;
const millisecondsPerDay = 86_400_000;

/**
 * What lay between the fills of a meter: other products, missing fills, pauses.
 *
 * Another product's fill lies between two fills by its date where all three have one, else by its number, provided that
 * the products of the bin share one numbering.
 *
 * @param meters  meters of the log; those of other bins are passed over
 */
export function fillOrderOf(meter: Meter, meters: readonly Meter[]): FillOrder {
  const others = meters
    .filter(({ bin, product }) => bin === meter.bin && product !== meter.product)
    .flatMap(({ fills }) => fills.map(placed));
  const numbers = new Set(meter.fills.map(({ fill }) => fill));
  const shared = others.every(({ fill }) => !numbers.has(fill.fill));
  const ordered = meter.fills.map(placed);
  const between = ordered.slice(1).map((later, i) => {
    const earlier = at(ordered, i);
    return others.filter((other) => liesBetween(earlier, other, later, shared));
  });
  return {
    otherProducts: [...new Set(between.flat().map(({ fill }) => fill.product))],
    productChangedBefore: between.flatMap((found, i) =>
      found.length > 0 ? at(ordered, i + 1).fill.fill : [],
    ),
    gaps: gapsIn(ordered, shared ? others : []),
    numbersFollowDates: ordered.every(
      ({ fill }, i) => i === 0 || fill.fill > at(ordered, i - 1).fill.fill,
    ),
    productsInOrder: shared || [...ordered, ...others].every(({ instant }) => instant !== null),
  };
}

/** A fill with its moment; null without a date. */
interface Placed {
  readonly fill: Fill;
  readonly instant: number | null;
}

function placed(fill: Fill): Placed {
  return { fill, instant: instantOf(fill.takenAt) };
}

/** By date, unless a date is missing or does not tell the two apart; then by number. */
function liesBetween(
  earlier: Placed,
  other: Placed,
  later: Placed,
  sharedNumbers: boolean,
): boolean {
  const [from, then, to] = [earlier.instant, other.instant, later.instant];
  const toldByDate = from !== null && then !== null && to !== null && then !== from && then !== to;
  if (toldByDate) return from < then && then < to;
  const [first, middle, last] = [earlier.fill.fill, other.fill.fill, later.fill.fill];
  return sharedNumbers && first < middle && middle < last;
}

function gapsIn(fills: readonly Placed[], others: readonly Placed[]): readonly FillGap[] {
  const steps = fills.slice(1).map((later, i) => stepBetween(at(fills, i), later, others));
  const pauses = steps.flatMap(({ days }) => days ?? []);
  const long =
    pauses.length === 0 ? 0 : Math.max(daysOfLongPause, timesUsualPause * median(pauses));
  return steps.filter(
    ({ missingFills, days }) => missingFills > 0 || (days !== null && days > long),
  );
}

function stepBetween(earlier: Placed, later: Placed, others: readonly Placed[]): FillGap {
  const [afterFill, beforeFill] = [earlier.fill.fill, later.fill.fill];
  const used = others.filter(({ fill }) => fill.fill > afterFill && fill.fill < beforeFill).length;
  const [from, to] = [earlier.instant, later.instant];
  return {
    afterFill,
    beforeFill,
    missingFills: Math.max(0, beforeFill - afterFill - 1 - used),
    days: from === null || to === null ? null : (to - from) / millisecondsPerDay,
  };
}
