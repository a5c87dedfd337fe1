import { type Meter, newestFill } from "../model/meters.ts";
import { type Caution, caution } from "../results/caution.ts";
import type { FillName } from "../results/fill-name.ts";

/**
 * A newest fill whose every catch is left out: what is answered is the fill before, which must not go unsaid.
 *
 * @param leftOutFill  the last of such fills after the newest that counts; null: none
 */
export function newestFillLeftOut(meter: Meter, leftOutFill: FillName | null): readonly Caution[] {
  if (leftOutFill === null) return [];
  const { bin, product } = meter;
  const { fill } = newestFill(meter);
  return [caution("newest-fill-left-out", { bin, product, fill }, { leftOutFill })];
}
