import { isSameMeter } from "../data/identity.ts";
import type { LogNames } from "../data/log-names.ts";
import type { CatchLog } from "../data/types.ts";
import { type Meter, newestFill } from "../model/meters.ts";
import { bySeasonAndNumber } from "../model/time-order.ts";
import { type Caution, caution } from "../results/caution.ts";

/** A newest fill whose every catch is left out: what is answered is the fill before, which must not go unsaid. */
export function newestFillLeftOut(
  meter: Meter,
  log: CatchLog,
  names: LogNames,
): readonly Caution[] {
  const { bin, product, place } = meter;
  const newest = newestFill(meter);
  const last = log.catches
    .filter((row) => isSameMeter(row, { ...place, product }))
    .map((row) => ({
      fill: names.fill(row),
      number: row.fill,
      seasonRank: names.seasonRank(row.season),
    }))
    .filter((row) => bySeasonAndNumber(newest, row) < 0)
    .toSorted(bySeasonAndNumber)
    .at(-1);
  if (last === undefined) return [];
  return [
    caution(
      "newest-fill-left-out",
      { bin, product, fill: newest.fill },
      { leftOutFill: last.fill },
    ),
  ];
}
