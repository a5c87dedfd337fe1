import type { Meter } from "../../model/meters.ts";
import type { MeterModel } from "../../model/model.ts";
import { driftBy } from "./answer.ts";
import { looksAtOneFill } from "./looks.ts";
import type { Drift, DriftOptions } from "./result.ts";

/** The answer of `drift` about a meter with one fill. */
export function driftOfOneFill(
  meter: MeterModel,
  options: DriftOptions,
  meters: readonly Meter[],
  asked: number,
): Drift {
  return driftBy(looksAtOneFill, meter, options, meters, asked);
}
