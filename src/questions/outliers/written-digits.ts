import type { Catch, MassUnit } from "../../data/types.ts";
import { at } from "../../errors/at.ts";
import { convert } from "../../units/convert.ts";

/** A scale reading as somebody wrote it down. */
export interface WrittenReading {
  readonly text: string;
  /** What the text says, kg. */
  readonly kg: number;
  readonly unit: MassUnit;
}

const mostDecimals = 6;
/** A number is taken to be written with so many decimals when it differs from them by less than this share. */
const closeness = 1e-9;

/**
 * The reading behind a catch in the file's own unit: gross where the file has it, else net, with as many decimals as
 * the readings beside it show, because "12.40" and "12.4" are one number but not the same digits.
 */
export function writtenReading(
  row: Catch,
  fellows: readonly Catch[],
  unit: MassUnit,
): WrittenReading {
  const inUnit = (one: Catch) => convert(readingKg(one), "kg", unit);
  const decimals = fellows.reduce(
    (most, one) => Math.max(most, decimalsOf(inUnit(one))),
    decimalsOf(inUnit(row)),
  );
  return { text: inUnit(row).toFixed(decimals), kg: readingKg(row), unit };
}

/** Every reading, kg, that becomes this one when two neighbouring digits change places; the decimal mark stays. */
export function swappedReadings({ text, unit }: WrittenReading): readonly number[] {
  const places = [...text].flatMap((character, i) => (/\d/.test(character) ? i : []));
  const swapped = places.slice(1).flatMap((later, i) => swap(text, at(places, i), later));
  return [...new Set(swapped)].map((value) => convert(Number(value), unit, "kg"));
}

function readingKg({ grossKg, netKg }: Catch): number {
  return grossKg ?? netKg;
}

// Nobody writes 0 first in "12.4": a swap that needs a leading zero before another digit cannot have happened.
function swap(text: string, earlier: number, later: number): readonly string[] {
  const characters = [...text];
  const [a = "", b = ""] = [characters[earlier], characters[later]];
  characters[earlier] = b;
  characters[later] = a;
  const result = characters.join("");
  return a === b || /^0\d/.test(result) ? [] : [result];
}

function decimalsOf(value: number): number {
  for (let decimals = 0; decimals < mostDecimals; decimals++) {
    const rounded = Number(value.toFixed(decimals));
    if (Math.abs(value - rounded) <= closeness * Math.max(1, Math.abs(value))) return decimals;
  }
  return mostDecimals;
}
