import { at } from "../errors/at.ts";
import type { FillName } from "../results/fill-name.ts";
import { median } from "../statistics/summary.ts";
import { type Fill, type Meter, sharesBin } from "./meters.ts";
import { bySeasonAndNumber, instantOf } from "./time-order.ts";

/** A place in the order of fills where some are not in the log, or where much time passed. */
export interface FillGap {
  readonly afterFill: FillName;
  readonly beforeFill: FillName;
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
  readonly productChangedBefore: readonly FillName[];
  readonly gaps: readonly FillGap[];
  /** False when fill numbers, or seasons, and dates disagree about the order; the dates are followed. */
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
    .filter((other) => sharesBin(other, meter) && other.product !== meter.product)
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
      ({ fill }, i) => i === 0 || bySeasonAndNumber(at(ordered, i - 1).fill, fill) < 0,
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
  const inOrder = (a: Placed, b: Placed) => bySeasonAndNumber(a.fill, b.fill) < 0;
  return sharedNumbers && inOrder(earlier, other) && inOrder(other, later);
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
  // A season may count from 1 or on from the last: neither a number nor the winter between says that something is missing.
  if (earlier.fill.season !== later.fill.season)
    return { afterFill, beforeFill, missingFills: 0, days: null };
  const used = others.filter(
    ({ fill }) =>
      bySeasonAndNumber(earlier.fill, fill) < 0 && bySeasonAndNumber(fill, later.fill) < 0,
  ).length;
  const [from, to] = [earlier.instant, later.instant];
  return {
    afterFill,
    beforeFill,
    missingFills: Math.max(0, later.fill.number - earlier.fill.number - 1 - used),
    days: from === null || to === null ? null : (to - from) / millisecondsPerDay,
  };
}
