import { type Caution, caution } from "../results/caution.ts";
import type { MeterHistory } from "./history.ts";
import type { Meter } from "./meters.ts";

/** What every answer must say that tells of the next fill from earlier ones while each delivers more, or less, than the last. */
export function stillMoving({
  bin,
  product,
  history,
}: Pick<Meter, "bin" | "product"> & {
  readonly history: Pick<MeterHistory, "trending">;
}): readonly Caution[] {
  if (history.trending === null) return [];
  const { perFill, fills, evidence, limit } = history.trending;
  return [
    caution("trending", { bin, product }, { perFill: perFill.value, fills, evidence, limit }),
  ];
}
