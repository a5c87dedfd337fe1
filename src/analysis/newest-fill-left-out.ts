import { type Fill, type Meter, newestFill } from "../model/meters.ts";
import { bySeasonAndNumber } from "../model/time-order.ts";
import { type Caution, caution } from "../results/caution.ts";

/**
 * A newest fill whose every catch is left out: what is answered is the fill before, which must not go unsaid.
 *
 * @param last  the last fill of the meter in the log, fills that are left out included
 */
export function newestFillLeftOut(
  meter: Meter,
  last: Pick<Fill, "fill" | "number" | "seasonRank">,
): readonly Caution[] {
  const { bin, product } = meter;
  const newest = newestFill(meter);
  if (bySeasonAndNumber(newest, last) >= 0) return [];
  return [
    caution(
      "newest-fill-left-out",
      { bin, product, fill: newest.fill },
      { leftOutFill: last.fill },
    ),
  ];
}
