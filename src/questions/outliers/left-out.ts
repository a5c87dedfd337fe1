import type { MeterModel, ModelOptions } from "../../model/model.ts";
import { deliveryNow, deliveryWith } from "./refit.ts";
import type { LeftOutOfFill } from "./result.ts";

/** What the person left out of each fill, in whose words, and the delivery with and without it. */
export function leftOutOf(meter: MeterModel, options: ModelOptions): readonly LeftOutOfFill[] {
  return meter.fills
    .filter(({ leftOut }) => leftOut.length > 0)
    .map((fill) => {
      const without = deliveryNow(meter, fill, options);
      const all = [...fill.catches, ...fill.leftOut].sort((a, b) => a.catch - b.catch);
      const withThem = deliveryWith(meter, fill, all, options);
      return {
        fill: fill.fill,
        catches: fill.leftOut.map((row) => ({
          row: row.row,
          catch: row.catch,
          reason: row.leftOut ?? "",
        })),
        without,
        withThem,
        relativeChange: without.value / withThem.value - 1,
      };
    });
}
