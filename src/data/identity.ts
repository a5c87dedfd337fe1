import type { Catch } from "./types.ts";

/** What a meter sits under. */
export type BinPlace = Pick<Catch, "bin">;

/** What makes a meter: a bin with one product in it. */
export type MeterPlace = BinPlace & Pick<Catch, "product">;

/** What makes a fill of any product: the bin's number for it. */
export type FillPlace = BinPlace & Pick<Catch, "fill">;

/** The same for rows of one bin, and for no others. */
export function binKey({ bin }: BinPlace): string {
  return joined([bin]);
}

/** The same for rows of one meter, and for no others. */
export function meterKey({ bin, product }: MeterPlace): string {
  return joined([bin, product]);
}

/** The same for rows of one filling of a bin, and for no others. */
export function fillKey({ bin, fill }: FillPlace): string {
  return joined([bin, fill]);
}

/** Every part with its length before it, so that no two lists of names make one text; made for every row of a log. */
function joined(parts: readonly (string | number)[]): string {
  let key = "";
  for (const part of parts) {
    const text = String(part);
    key += `${text.length} ${text}`;
  }
  return key;
}
