import { max, min } from "simple-statistics";
import type { Span } from "../../data/setup.ts";
import type { Meter } from "../../model/meters.ts";
import type { FillName } from "../../results/fill-name.ts";

/** Lowest and highest meter speed of a fill's catches; null: not recorded. */
export function speedsCaught(meter: Meter, fill: FillName): Span | null {
  const speeds = meter.fills
    .filter((one) => one.fill === fill)
    .flatMap(({ catches }) => catches.flatMap(({ meterRpm }) => meterRpm ?? []));
  return speeds.length === 0 ? null : { from: min(speeds), to: max(speeds) };
}
