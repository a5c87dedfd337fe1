import { type Meter, newestFill } from "../model/meters.ts";
import { type Caution, caution } from "../results/caution.ts";

/**
 * A newest fill whose every catch is left out: what is answered is the fill before, which must not go unsaid.
 *
 * @param highestFill  the highest number of a fill that the log has of the meter, catches that are left out included
 */
export function newestFillLeftOut(meter: Meter, highestFill: number): readonly Caution[] {
  const { bin, product } = meter;
  const newest = newestFill(meter).fill;
  if (highestFill <= newest) return [];
  return [
    caution("newest-fill-left-out", { bin, product, fill: newest }, { leftOutFill: highestFill }),
  ];
}
