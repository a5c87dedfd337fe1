import type { CatchLog } from "../data/types.ts";
import { type Meter, newestFill } from "../model/meters.ts";
import { type Caution, caution } from "../results/caution.ts";

/** A newest fill whose every catch is left out: what is answered is the fill before, which must not go unsaid. */
export function newestFillLeftOut(meter: Meter, log: CatchLog): readonly Caution[] {
  const { bin, product } = meter;
  const newest = newestFill(meter).fill;
  const later = log.catches
    .filter((row) => row.bin === bin && row.product === product && row.fill > newest)
    .map(({ fill }) => fill);
  if (later.length === 0) return [];
  const facts = { leftOutFill: Math.max(...later) };
  return [caution("newest-fill-left-out", { bin, product, fill: newest }, facts)];
}
