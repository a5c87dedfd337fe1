import { convert } from "../../units/convert.ts";
import { massUnits } from "../column-kinds.ts";
import type { MassUnit } from "../types.ts";

/** Bins, fills and book values of one meter differ by some ten percent; the closest two units, kg and lb, by 2.2 times. */
const near = 1.15;

/** Fewer times than this too large or too small, no unit explains it. */
export const leastTimes: number = convert(1, "kg", "lb") / near;

/**
 * The unit that masses may have been written in, by how many times too large they are when read in another; null: no mix-up of
 * two units has this factor.
 */
export function unitMeant(times: number, read: MassUnit): MassUnit | null {
  return (
    massUnits.find((meant) => {
      if (meant === read) return false;
      const factor = convert(1, read, meant);
      return times < factor * near && times > factor / near;
    }) ?? null
  );
}

/** Whether something is so many times what it is held against, or that part of it. */
export function isTimes(times: number, most: number): boolean {
  return times >= most || times <= 1 / most;
}
