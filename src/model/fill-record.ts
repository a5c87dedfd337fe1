import { type FillingPlace, fillKey, type MeterPlace, meterKey } from "../data/identity.ts";
import { type LogNames, logNames } from "../data/log-names.ts";
import type { Catch } from "../data/types.ts";
import { at } from "../errors/at.ts";
import { groupBy } from "../numeric/group-by.ts";
import { type FillSums, mergeSums, sumsOf } from "./fill-sums.ts";
import { earliestOf, type Fill, type Meter, metersOf } from "./meters.ts";
import { requireListOf } from "./require-list.ts";
import { inTimeOrder } from "./time-order.ts";
import { deliveryOf } from "./totals.ts";

/** One fill as its totals tell it, called as the catches call it. */
export interface FillRecord extends MeterPlace, FillingPlace {
  /** Earliest time of its catches; null: none is known. */
  readonly takenAt: string | null;
  readonly sums: FillSums;
}

/** A fill of which only the sums are at hand. */
export interface SummedFill extends Fill {
  readonly sums: FillSums;
}

/** A meter of which only the sums of its fills are at hand. */
export interface SummedMeter extends Meter {
  readonly fills: readonly SummedFill[];
}

/**
 * The totals of every fill of some catches. Catches that are left out do not count; nothing is screened, which takes the
 * single catches of all meters.
 *
 * @returns one record a fill, in the order of the meters and of time
 * @throws  OptionError for what is no list of catches
 */
export function fillTotals(catches: readonly Catch[]): readonly FillRecord[] {
  requireListOf("catches", catches);
  return metersOf(catches).flatMap(({ place, product, fills }) =>
    fills.map(({ season, number, takenAt, catches: counted }) => ({
      ...place,
      product,
      season,
      fill: number,
      takenAt,
      sums: sumsOf(counted),
    })),
  );
}

/** Totals from several places together: records of the same fill become one. Weighings of one catch must not be parted. */
export function mergeFillTotals(
  ...parts: readonly (readonly FillRecord[])[]
): readonly FillRecord[] {
  const fills = groupBy(parts.flat(), (one) => JSON.stringify([fillKey(one), one.product]));
  return [...fills.values()].map((records) => ({
    ...at(records, 0),
    takenAt: earliestOf(records),
    sums: records.map(({ sums }) => sums).reduce(mergeSums),
  }));
}

/** The meters that records are of, as `metersOf` sorts catches. */
export function summedMeters(records: readonly FillRecord[]): readonly SummedMeter[] {
  const names = logNames(records);
  return [...groupBy(mergeFillTotals(records), meterKey).values()].map((own) => {
    const { farm, machine, bin, product } = at(own, 0);
    const place = { farm, machine, bin };
    return {
      bin: names.bin(place),
      place,
      product,
      fills: inTimeOrder(own.map((one) => summedFill(one, names))),
    };
  });
}

function summedFill(record: FillRecord, names: LogNames): SummedFill {
  const { product, season, takenAt, sums } = record;
  return {
    bin: names.bin(record),
    product,
    fill: names.fill(record),
    number: record.fill,
    season,
    seasonRank: names.seasonRank(season),
    takenAt,
    catches: [],
    weighings: [],
    leftOut: [],
    notLent: [],
    totals: sums,
    scatterTotals: sums,
    sums,
    delivery: deliveryOf(sums),
  };
}
