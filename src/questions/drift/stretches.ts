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
    .flatMap(({ fills }) => fills.map(placed));
  const numbers = new Set(meter.fills.map(({ fill }) => fill));
  const shared = others.every(({ fill }) => !numbers.has(fill.fill));
  const ordered = inTimeOrder(meter.fills.map(placed));
  const between = ordered.slice(1).map((later, i) => {
    const earlier = ordered[i] ?? later;
    return others.filter((other) => liesBetween(earlier, other, later, shared));
  });
  const starts = between.map((found) => found.length > 0 && productChange === "starts afresh");
  const stretches = cut(ordered, starts);
  return {
    stretches: stretches.map((one) => one.map(({ fill }) => fill)),
    otherProducts: [...new Set(between.flat().map(({ fill }) => fill.product))],
    gaps: gapsIn(stretches.at(-1) ?? [], shared ? others : []),
    numbersFollowDates: ordered.every(({ fill }, i) => fill === meter.fills[i]),
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

function inTimeOrder(fills: readonly Placed[]): readonly Placed[] {
  if (fills.some(({ instant }) => instant === null)) return fills;
  return fills.toSorted((a, b) => (a.instant ?? 0) - (b.instant ?? 0) || a.fill.fill - b.fill.fill);
}

/** By date, unless a date is missing or does not tell the two apart; then by number. */
function liesBetween(
  earlier: Placed,
  other: Placed,
  later: Placed,
  sharedNumbers: boolean,
): boolean {
  const [from, at, to] = [earlier.instant, other.instant, later.instant];
  const toldByDate = from !== null && at !== null && to !== null && at !== from && at !== to;
  if (toldByDate) return from < at && at < to;
  const [first, middle, last] = [earlier.fill.fill, other.fill.fill, later.fill.fill];
  return sharedNumbers && first < middle && middle < last;
}

function cut(fills: readonly Placed[], starts: readonly boolean[]): readonly (readonly Placed[])[] {
  const stretches: Placed[][] = [];
  fills.forEach((fill, i) => {
    if (i === 0 || starts[i - 1]) stretches.push([fill]);
    else stretches.at(-1)?.push(fill);
  });
  return stretches;
}

function gapsIn(fills: readonly Placed[], others: readonly Placed[]): readonly FillGap[] {
  const steps = fills.slice(1).map((later, i) => stepBetween(fills[i] ?? later, later, others));
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
