import type { Words } from "../wording/words.ts";
import { type KeyEntry, keyed } from "./key.ts";
import { themed } from "./looks.ts";
import { chartStyles } from "./theme.ts";

/** Points down at what costs least, without words that would run into its neighbours. */
const shape = "triangle-down";
const color = themed(chartStyles.reference.color);

/** @param height  the chart's vertical channel */
export function cheapestLayer(values: readonly object[], x: object, height: object): object {
  return {
    data: { values },
    mark: { type: "point", color, shape, size: 64, yOffset: -10, aria: false },
    encoding: { x, y: height },
  };
}

export function cheapestKey({ charts }: Words): readonly KeyEntry[] {
  return keyed({ shape, fill: color }, charts.cheapest);
}
