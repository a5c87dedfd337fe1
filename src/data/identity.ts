import type { Catch } from "./types.ts";

/** The bin of one machine: what a meter sits under. */
export type BinPlace = Pick<Catch, "farm" | "machine" | "bin">;

/** What makes a meter: a bin of one machine with one product in it. */
export type MeterPlace = BinPlace & Pick<Catch, "product">;

/** What makes a fill of any product: the bin's number for it, within its season. */
export type FillingPlace = BinPlace & Pick<Catch, "season" | "fill">;

/** The same for rows of one bin, and for no others. */
export function binKey({ farm, machine, bin }: BinPlace): string {
  return JSON.stringify([farm, machine, bin]);
}

/** The same for rows of one meter, and for no others. */
export function meterKey(row: MeterPlace): string {
  return JSON.stringify([binKey(row), row.product]);
}

/** The same for rows of one filling of a bin, and for no others. */
export function fillKey(row: FillingPlace): string {
  return JSON.stringify([binKey(row), row.season, row.fill]);
}

export function isSameMeter(one: MeterPlace, other: MeterPlace): boolean {
  return (
    one.bin === other.bin &&
    one.product === other.product &&
    one.machine === other.machine &&
    one.farm === other.farm
  );
}
