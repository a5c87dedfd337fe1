import { median } from "simple-statistics";
import type { Fill, Meter } from "../../model/meters.ts";
import { instantOf } from "./instant.ts";

/** What a fill of another product in the bin does to the comparison of fills before and after it. */
export type ProductChange = "starts afresh" | "carries on";

/** A place in the order of fills where some are not in the log, or where much time passed. */
export interface FillGap {
  readonly afterFill: number;
  readonly beforeFill: number;
  /** Fill numbers in between that the log does not have. */
  readonly missingFills: number;
  /** Days from one fill to the next; null when one of them has no date. */
  readonly days: number | null;
}

/** A meter's fills in time order, cut where another product was in the bin. */
export interface Stretches {
  /** Oldest first; each holds at least one fill. */
  readonly stretches: readonly (readonly Fill[])[];
  /** Products that were in the bin since this meter's first fill; those that started the newest stretch last. */
  readonly otherProducts: readonly string[];
  /** Within the newest stretch. */
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
 * Puts a meter's fills in order of time and cuts them into stretches of one product after another.
 *
 * Fills are ordered by date where all have one, else by number. Another product's fill lies between two fills by its
 * date where all three have one, else by its number, provided that the products of the bin share one numbering.
 *
 * @param meters  meters of the log; those of other bins are passed over
 */
export function stretchesOf(
  meter: Meter,
  meters: readonly Meter[],
  productChange: ProductChange,
): Stretches {
  const others = meters
    .filter(({ bin, product }) => bin === meter.bin && product !== meter.product)
    .flatMap(({ fills }) => fills);
  const numbers = new Set(meter.fills.map(({ fill }) => fill));
  const shared = others.every(({ fill }) => !numbers.has(fill));
  const ordered = inTimeOrder(meter.fills);
  const between = ordered.slice(1).map((later, i) => {
    const earlier = ordered[i] ?? later;
    return others.filter((other) => liesBetween(earlier, other, later, shared));
  });
  const starts = between.map((found) => found.length > 0 && productChange === "starts afresh");
  const stretches = cut(ordered, starts);
  return {
    stretches,
    otherProducts: [...new Set(between.flat().map(({ product }) => product))],
    gaps: gapsIn(stretches.at(-1) ?? [], shared ? others : []),
    numbersFollowDates: ordered.every(({ fill }, i) => fill === meter.fills[i]?.fill),
    productsInOrder:
      shared || [...meter.fills, ...others].every(({ takenAt }) => instantOf(takenAt) !== null),
  };
}

function inTimeOrder(fills: readonly Fill[]): readonly Fill[] {
  const dated = fills.map((fill) => ({ fill, instant: instantOf(fill.takenAt) }));
  if (dated.some(({ instant }) => instant === null)) return fills;
  return dated
    .sort((a, b) => (a.instant ?? 0) - (b.instant ?? 0) || a.fill.fill - b.fill.fill)
    .map(({ fill }) => fill);
}

function liesBetween(earlier: Fill, other: Fill, later: Fill, sharedNumbers: boolean): boolean {
  const [from, at, to] = [earlier, other, later].map(({ takenAt }) => instantOf(takenAt));
  const dated = typeof from === "number" && typeof at === "number" && typeof to === "number";
  if (dated && (from < at || at < to) && from !== at && at !== to) return from < at && at < to;
  return sharedNumbers && earlier.fill < other.fill && other.fill < later.fill;
}

function cut(fills: readonly Fill[], starts: readonly boolean[]): readonly (readonly Fill[])[] {
  const stretches: Fill[][] = [];
  fills.forEach((fill, i) => {
    if (i === 0 || starts[i - 1]) stretches.push([fill]);
    else stretches.at(-1)?.push(fill);
  });
  return stretches;
}

function gapsIn(fills: readonly Fill[], others: readonly Fill[]): readonly FillGap[] {
  const steps = fills.slice(1).map((later, i) => {
    const earlier = fills[i] ?? later;
    const [from, to] = [instantOf(earlier.takenAt), instantOf(later.takenAt)];
    const used = others.filter(({ fill }) => fill > earlier.fill && fill < later.fill).length;
    return {
      afterFill: earlier.fill,
      beforeFill: later.fill,
      missingFills: Math.max(0, later.fill - earlier.fill - 1 - used),
      days: from === null || to === null ? null : (to - from) / millisecondsPerDay,
    };
  });
  const pauses = steps.flatMap(({ days }) => days ?? []);
  const long =
    pauses.length === 0 ? 0 : Math.max(daysOfLongPause, timesUsualPause * median(pauses));
  return steps.filter(
    ({ missingFills, days }) => missingFills > 0 || (days !== null && days > long),
  );
}
