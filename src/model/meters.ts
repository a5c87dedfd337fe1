import { sum } from "simple-statistics";
import { type BinPlace, binKey, fillKey, meterKey } from "../data/identity.ts";
import { type LogNames, logNames } from "../data/log-names.ts";
import type { Catch } from "../data/types.ts";
import { at, lastOf } from "../errors/at.ts";
import { groupBy } from "../numeric/group-by.ts";
import type { FillName } from "../results/fill-name.ts";
import type { FillSums } from "./fill-sums.ts";
import { inTimeOrder } from "./time-order.ts";
import { deliveryOf, type FillTotals, totalsOf } from "./totals.ts";

/** One filling of a bin with one product. */
export interface Fill {
  /** As every surface calls it: with the machine or farm where the log holds several. */
  readonly bin: string;
  readonly product: string;
  /** As every surface calls it: with the season where the log holds several. */
  readonly fill: FillName;
  /** Its number in its season. */
  readonly number: number;
  /** null: the log names none. */
  readonly season: string | null;
  /** Place of the season among those of the log, from 0. */
  readonly seasonRank: number;
  /** Earliest time the file gives for it. */
  readonly takenAt: string | null;
  /** Catches that count, in catch order, without those the screening set aside; outlets of one catch are added up. */
  readonly catches: readonly Catch[];
  /** The same as weighed: one for each outlet where outlets were weighed apart. */
  readonly weighings: readonly Catch[];
  /** Catches the person asked to leave out, with the reason in `leftOut`. */
  readonly leftOut: readonly Catch[];
  /** Of the catches that count. */
  readonly totals: FillTotals;
  /** Catches that do not speak for the scatter of other fills, those set aside among them. */
  readonly notLent: readonly Catch[];
  /** Of the catches that do. */
  readonly scatterTotals: FillTotals;
  /** Σm/Σt, kg/turn. */
  readonly delivery: number;
  /** Where only totals are at hand: then there are no catches. */
  readonly sums?: FillSums;
}

/** One bin's meter with one product: the thing whose delivery per turn is asked for. */
export interface Meter {
  /** As every surface calls it: with the machine or farm where the log holds several. */
  readonly bin: string;
  /** What makes it another meter than the others, as the catches name it. */
  readonly place: BinPlace;
  readonly product: string;
  /** Fills with at least one catch that counts, in order of time: by date where all have one, else by number. */
  readonly fills: readonly Fill[];
}

/**
 * Sorts catches into bin × product, a bin being that of one machine, and within it into the fills of all seasons.
 *
 * Bins and products keep the order in which the file first names them. A fill all of whose catches are left out has
 * no delivery and does not appear.
 */
export function metersOf(catches: readonly Catch[]): readonly Meter[] {
  const names = logNames(catches);
  return [...groupBy(catches, meterKey).values()]
    .map((rows) => {
      const { farm, machine, bin, product } = at(rows, 0);
      const place = { farm, machine, bin };
      return {
        bin: names.bin(place),
        place,
        product,
        fills: inTimeOrder(
          [...groupBy(rows, fillKey).values()].flatMap((fillRows) => fillOf(fillRows, names) ?? []),
        ),
      };
    })
    .filter(({ fills }) => fills.length > 0);
}

/** Whether two meters are one bin's, with two products. */
export function sharesBin(one: Pick<Meter, "place">, other: Pick<Meter, "place">): boolean {
  return binKey(one.place) === binKey(other.place);
}

/** Whether fills are of several seasons, so that a number alone names none of them. */
export function severalSeasons(fills: readonly Pick<Fill, "fill">[]): boolean {
  return fills.some(({ fill }) => typeof fill === "string");
}

/** Fills of one level parted where a season begins: over a winter a meter may be worn, cleaned or refitted. */
export function withinSeasons(fills: readonly Fill[]): readonly (readonly Fill[])[] {
  return [...groupBy(fills, ({ season }) => season).values()];
}

/** The newest fill of a meter: the one that is in the bin now. */
export function newestFill(meter: Meter): Fill {
  return lastOf(meter.fills);
}

/** The fill had it these catches only; what it lends to others stays. */
export function withCatches(fill: Fill, catches: readonly Catch[]): Fill {
  const totals = totalsOf(catches);
  return { ...fill, catches, totals, delivery: deliveryOf(totals) };
}

function fillOf(rows: readonly Catch[], names: LogNames): Fill | null {
  const ordered = inCatchOrder(rows);
  const weighings = ordered.every(isCounted) ? ordered : ordered.filter(isCounted);
  if (weighings.length === 0) return null;
  const catches = addUpOutlets(weighings);
  const first = at(ordered, 0);
  const totals = totalsOf(catches);
  return {
    bin: names.bin(first),
    product: first.product,
    fill: names.fill(first),
    number: first.fill,
    season: first.season,
    seasonRank: names.seasonRank(first.season),
    takenAt: earliestOf(ordered),
    catches,
    weighings,
    leftOut:
      weighings.length === ordered.length
        ? noCatches
        : ordered.filter(({ leftOut }) => leftOut !== null),
    totals,
    notLent: noCatches,
    scatterTotals: totals,
    delivery: deliveryOf(totals),
  };
}

function isCounted({ leftOut }: Catch): boolean {
  return leftOut === null;
}

function inCatchOrder(rows: readonly Catch[]): readonly Catch[] {
  const isOrdered = rows.every((row, i) => i === 0 || at(rows, i - 1).catch <= row.catch);
  return isOrdered ? rows : rows.toSorted((a, b) => a.catch - b.catch);
}

/** The earliest time that any of them gives; null: none does. */
export function earliestOf(rows: readonly Pick<Catch, "takenAt">[]): string | null {
  let earliest: string | null = null;
  for (const { takenAt } of rows)
    if (takenAt != null && (earliest === null || takenAt < earliest)) earliest = takenAt;
  return earliest;
}

/** One for all fills: of a log of a million catches each would otherwise hold several empty lists. */
const noCatches: readonly Catch[] = [];

// Outlets share the meter's turns: each by itself would pass for a small catch of the whole meter.
function addUpOutlets(weighings: readonly Catch[]): readonly Catch[] {
  if (weighings.every((row, i) => row.catch !== weighings[i + 1]?.catch)) return weighings;
  const byCatch = groupBy(weighings, (row) => JSON.stringify([row.catch, row.turns]));
  return [...byCatch.values()].flatMap((rows) => {
    const apart = rows.length > 1 && rows.every(({ outlet }) => outlet !== null);
    return apart ? [{ ...at(rows, 0), ...together(rows), outlet: null }] : rows;
  });
}

function together(
  rows: readonly Catch[],
): Pick<Catch, "netKg" | "grossKg" | "tareKg" | "divisionKg"> {
  const added = (values: readonly (number | null)[]) => {
    const known = values.filter((value) => value !== null);
    return known.length < values.length ? null : sum(known);
  };
  return {
    netKg: sum(rows.map(({ netKg }) => netKg)),
    grossKg: added(rows.map(({ grossKg }) => grossKg)),
    tareKg: added(rows.map(({ tareKg }) => tareKg)),
    divisionKg: added(rows.map(({ divisionKg }) => divisionKg)),
  };
}

/** Delivery of each fill, kg/turn. */
export function deliveriesOf(fills: readonly Pick<Fill, "delivery">[]): number[] {
  return fills.map(({ delivery }) => delivery);
}
